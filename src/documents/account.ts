import type { FiguredVariation, Figures } from '../figures/index.ts';
import type { IssuedQuote } from '../issued/index.ts';
import { addMoney, type Money, moneyOf, subtractMoney, sumMoney } from '../money/index.ts';

/** What the boat costs in the end: the quote, what was agreed since, and what has been paid. */
export interface Account {
  /** Drive-away price as accepted. */
  readonly quoted: Money;
  /** One for each variation that was agreed. */
  readonly agreed: readonly { readonly name: string; readonly change: Money }[];
  readonly total: Money;
  readonly received: Money;
  /** total - received; below zero when too much was paid. */
  readonly toPay: Money;
}

/**
 * The account of an order.
 *
 * @param quoted - figures of the boat as quoted, whose price counts when no quote was issued
 * @param issued - the quote that was accepted
 */
export function accountOf(
  quoted: Figures,
  issued: IssuedQuote | undefined,
  variations: readonly FiguredVariation[],
): Account {
  const { currency } = quoted.build;
  const accepted = issued?.figures.price.driveAway ?? quoted.price.driveAway;
  const agreed = variations.flatMap((one) => {
    const change = priceChange(one, quoted);
    return one.variation.agreed && change ? [{ name: one.variation.name, change }] : [];
  });
  const total = addMoney(
    accepted,
    sumMoney(
      agreed.map(({ change }) => change),
      currency,
    ),
  );
  const received = addMoney(quoted.price.tradeIn, quoted.price.paid);
  return { quoted: accepted, agreed, total, received, toPay: subtractMoney(total, received) };
}

/** What a variation adds to the drive-away price: as signed, else as computed; undefined when it cannot be built. */
export function priceChange(
  { variation, differences }: FiguredVariation,
  { build }: Pick<Figures, 'build'>,
): Money | undefined {
  const signed = variation.agreed?.price;
  return signed ? moneyOf(signed, build.currency) : differences?.driveAway;
}
