import { type Finding, finding } from '../findings/index.ts';
import type { Catalogue, SourcedOrder } from '../schema/index.ts';
import { unknownId } from './check-compatibility.ts';

/** What is wrong with the parts that an order says are ordered already. */
export function checkBought(order: SourcedOrder, catalogue: Catalogue): readonly Finding[] {
  const { suppliers } = catalogue.yard.value;
  return [...checkLines(order, catalogue), ...checkOneOffs(order, Object.keys(suppliers))];
}

function checkOneOffs(order: SourcedOrder, suppliers: readonly string[]): readonly Finding[] {
  return order.value.extras.flatMap(({ supplier }, index) =>
    supplier === undefined || suppliers.includes(supplier)
      ? []
      : [unknownId('supplier', supplier, suppliers, order.place(['extras', index, 'supplier']))],
  );
}

function checkLines(order: SourcedOrder, catalogue: Catalogue): readonly Finding[] {
  const { suppliers } = catalogue.yard.value;
  return order.value.bought.flatMap(({ supplier, date, arrives, parts = [] }, index) => [
    ...(supplier in suppliers
      ? []
      : [
          unknownId(
            'supplier',
            supplier,
            Object.keys(suppliers),
            order.place(['bought', index, 'supplier']),
          ),
        ]),
    ...parts.flatMap((code, which) =>
      catalogue.parts.has(code)
        ? []
        : [
            unknownId(
              'part',
              code,
              catalogue.parts.keys(),
              order.place(['bought', index, 'parts', which]),
            ),
          ],
    ),
    ...(arrives === undefined || arrives >= date
      ? []
      : [
          finding('DATES_OUT_OF_ORDER', order.place(['bought', index, 'arrives']), {
            received: `arrives ${arrives}`,
            expected: `not before it was ordered, ${date}`,
          }),
        ]),
  ]);
}

/** Hulls that are made in the mould of a hull that is not there. */
export function checkMoulds({ hulls }: Catalogue, broken: ReadonlySet<string>): readonly Finding[] {
  return [...hulls.values()].flatMap((hull) => {
    const { mouldOf } = hull.value;
    return mouldOf === undefined || hulls.has(mouldOf) || broken.has(mouldOf)
      ? []
      : [unknownId('hull', mouldOf, hulls.keys(), hull.place(['mouldOf']))];
  });
}
