import { type Finding, finding } from '../findings/index.ts';
import type { Catalogue, SourcedOrder } from '../schema/index.ts';
import { unknownId } from './check-compatibility.ts';

/** Findings of what an order says of money against the yard: the class of its discount, an export without a law. */
export function checkMoney(order: SourcedOrder, { yard }: Catalogue): readonly Finding[] {
  const { discount, zeroRated } = order.value;
  const classes = Object.keys(yard.value.margins);
  const findings: Finding[] = [];
  if (discount?.class !== undefined && !classes.includes(discount.class)) {
    const place = order.place(['discount', 'class']);
    findings.push(unknownId('margin class', discount.class, classes, place));
  }
  if (zeroRated && yard.value.tax.zeroRated === undefined) {
    findings.push(
      finding('WRONG_VALUE', order.place(['zeroRated']), {
        received: `an export without ${yard.value.tax.name}`,
        expected: 'the law that allows it, as zeroRated: of the tax in the yard file',
      }),
    );
  }
  return findings;
}
