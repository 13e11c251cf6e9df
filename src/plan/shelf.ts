import {
  compareDecimals,
  type Decimal,
  type IsoDate,
  subtractDecimals,
  ZERO,
} from '../units/index.ts';
import type { WorkCalendar } from './calendar.ts';
import { addTo, type PartNeed, startsOf, stageKey } from './purchase-list.ts';
import type { Plan } from './types.ts';

/** What one part's needs take from the shelf. */
export interface ShelfLine {
  readonly code: string;
  readonly quantity: Decimal;
  /** The day of the first stage that takes it. */
  readonly needBy: IsoDate;
  readonly orders: readonly string[];
}

export interface StockAllocation {
  /** What is left to buy; needs that the shelf meets in full are left out. */
  readonly needs: readonly PartNeed[];
  readonly taken: readonly ShelfLine[];
  /** Keys of needs that the shelf meets in full: nobody waits for their supplier. See `needKey`. */
  readonly met: ReadonlySet<string>;
  /** What is on it afterwards. */
  readonly left: ReadonlyMap<string, Decimal>;
}

/** A part that a stage of an order takes, as a key; what several items of the stage take of it is one need. */
export const needKey = ({ order, stage, code }: PartNeed): string =>
  `${stageKey(order, stage)} ${code}`;

/**
 * Lets the shelf meet the needs of the planned stages, the earliest stage first; what it holds is used once.
 *
 * @param plan - by which stages are first
 * @param held - on the shelf, by part code, in the part's unit
 * @param dates - the plan whose days are told; left out: the same
 * @returns needs of what is in the plan
 */
export function takeFromShelf(
  plan: Pick<Plan, 'orders'>,
  needs: readonly PartNeed[],
  held: ReadonlyMap<string, Decimal>,
  calendar: Pick<WorkCalendar, 'dateOf'>,
  dates = plan,
): StockAllocation {
  const starts = startsOf(plan, calendar);
  const told = dates === plan ? starts : startsOf(dates, calendar);
  const dated = needs.flatMap((need) => {
    const needBy = starts.get(stageKey(need.order, need.stage));
    return needBy === undefined ? [] : [{ need, needBy }];
  });
  const left = new Map(held);
  const taken = new Map<string, ShelfLine>();
  const open: PartNeed[] = [];
  for (const { need, needBy } of dated.toSorted((a, b) => a.needBy.localeCompare(b.needBy))) {
    const { code, quantity, order } = need;
    const take = least(quantity, left.get(code) ?? ZERO);
    const rest = subtractDecimals(quantity, take);
    if (rest.amount > 0n) open.push({ ...need, quantity: rest });
    if (take.amount <= 0n) continue;
    left.set(code, subtractDecimals(left.get(code) ?? ZERO, take));
    const before = taken.get(code);
    const day = told.get(stageKey(order, need.stage)) ?? needBy;
    taken.set(code, {
      code,
      needBy: before && before.needBy < day ? before.needBy : day,
      ...addTo(before, take, order),
    });
  }
  const waiting = new Set(open.map(needKey));
  const met = dated.map(({ need }) => needKey(need)).filter((key) => !waiting.has(key));
  return {
    needs: open,
    met: new Set(met),
    left,
    taken: [...taken.values()].toSorted((a, b) => (a.code < b.code ? -1 : 1)),
  };
}

const least = (a: Decimal, b: Decimal): Decimal => (compareDecimals(a, b) < 0 ? a : b);
