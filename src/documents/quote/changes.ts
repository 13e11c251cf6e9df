import type { Drift } from '../../issued/index.ts';
import { formatMoney, isZero, type Money } from '../../money/index.ts';
import type { CustomerBuild } from '../../figures/index.ts';
import { formatDate, type IsoDate } from '../../units/index.ts';
import { column, heads, part, type Part, row, table } from '../blocks/block.ts';

/** The revision that a quote takes the place of, and what became of its price. */
export interface EarlierRevision {
  readonly revision: number;
  readonly issuedOn: IsoDate;
  readonly drift: Pick<Drift, 'was' | 'now'> & {
    readonly rows: readonly Pick<Drift['rows'][number], 'name' | 'was' | 'now'>[];
  };
}

/** What changed since the revision before: rows with their old and new price, never why. */
export function quoteChanges(
  { revision, issuedOn, drift }: EarlierRevision,
  yard: CustomerBuild['yard'],
): readonly Part[] {
  const print = (amount: Money): string => (isZero(amount) ? '' : formatMoney(amount, yard.locale));
  return part(
    'changes',
    `What changed since Revision ${revision}, ${formatDate(issuedOn, yard.locale)}`,
    ...table(
      [column('head', 'What'), ...heads('num', 'Before', 'Now')],
      [
        ...drift.rows.map(({ name, was, now }) => row('part', name, print(was), print(now))),
        row(
          'whole',
          '{Final price}',
          formatMoney(drift.was, yard.locale),
          formatMoney(drift.now, yard.locale),
        ),
      ],
    ),
  );
}
