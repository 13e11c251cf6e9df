import {
  fractionOfMoney,
  type Money,
  moneyOf,
  roundToMinorUnit,
  sumMoney,
  timesDecimal,
} from '../money/index.ts';
import type { Currency } from '../money/index.ts';
import {
  addDecimals,
  type Decimal,
  multiplyDecimals,
  ONE,
  ZERO,
  sumDecimals,
} from '../units/index.ts';
import type { LoadedWage, PriceItem, PriceRules } from './types.ts';

export interface Labour {
  readonly hours: Decimal;
  readonly costedHours: Decimal;
  readonly labour: Money;
}

/**
 * What an hour in a boat costs: wage x (1 + on-costs) / productive share, in whole minor units, so that the rate
 * that is shown is the one that is multiplied.
 *
 * @param wage - productive above 0
 * @source derived: paid hours x loaded wage = productive hours x rate
 */
export function loadedRate({ wage, onCosts, productive }: LoadedWage, currency: Currency): Money {
  const loaded = timesDecimal(moneyOf(wage, currency), addDecimals(ONE, onCosts));
  return fractionOfMoney(loaded, ONE, productive, 'half-up');
}

/**
 * The cost of an hour of a stage; zero for a stage without a rate.
 *
 * @source derived: the plain rate, or `loadedRate`
 */
export function rateOf(stage: string, { rates, currency }: PriceRules): Money {
  const rate = rates[stage] ?? ZERO;
  return 'wage' in rate ? loadedRate(rate, currency) : moneyOf(rate, currency);
}

/**
 * Hours of an item and what they cost: hours x learning of the stage x (1 + rework) x rate.
 *
 * @source common practice, no source
 */
export function labourOf({ hours }: Pick<PriceItem, 'hours'>, rules: PriceRules): Labour {
  const allowed = addDecimals(ONE, rules.rework ?? ZERO);
  const worked = hours.map((work) => ({
    stage: work.stage,
    hours: multiplyDecimals(
      multiplyDecimals(work.hours, rules.learning?.[work.stage] ?? ONE),
      allowed,
    ),
  }));
  const pay = worked.map((work) => timesDecimal(rateOf(work.stage, rules), work.hours));
  return {
    hours: sumOfHours(hours),
    costedHours: sumOfHours(worked),
    labour: roundToMinorUnit(sumMoney(pay, rules.currency)),
  };
}

const sumOfHours = (work: readonly { readonly hours: Decimal }[]): Decimal =>
  sumDecimals(work.map((one) => one.hours));
