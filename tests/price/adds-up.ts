import type { Money } from '../../src/money/index.ts';
import type { Price, PriceInput, PriceLine } from '../../src/price/index.ts';
import { cents, centsOf } from './small-orders.ts';

/** Notes what does not add up, so that one expectation can tell all of it. */
export class Ledger {
  readonly wrong: string[] = [];
  same(a: bigint, b: bigint, what: string): void {
    if (a !== b) this.wrong.push(`${what}: ${a} is not ${b}`);
  }
  within(off: bigint, most: bigint, what: string): void {
    if (off < -most || off > most) this.wrong.push(`${what}: off by ${off}, ${most} allowed`);
  }
}

/** Everything that must add up in a price, to the minor unit. */
export function whatDoesNotAddUp(input: PriceInput, price: Price): readonly string[] {
  const ledger = new Ledger();
  for (const line of price.lines) checkLine(line, ledger);
  checkTotals(price, ledger);
  checkPayments(price, ledger);
  checkTax(input, price, ledger);
  checkRounding(input, price, ledger);
  return ledger.wrong;
}

function checkLine(line: PriceLine, ledger: Ledger): void {
  const { materials, packs, freight, labour, overhead, other } = line;
  const parts = [materials, packs, freight, labour, overhead, other];
  ledger.same(cents(parts), centsOf(line.cost), 'cost');
  ledger.same(cents([line.calculated, line.rounding]), cents([line.price, line.saving]), 'price');
  ledger.same(cents([line.price, line.tax]), centsOf(line.priceWithTax), 'with tax');
  ledger.same(cents([line.net, line.discount]), centsOf(line.price), 'net');
  ledger.same(cents([line.cost, line.margin]), centsOf(line.net), 'margin');
}

function checkTotals(price: Price, ledger: Ledger): void {
  const { lines, rounding } = price;
  const of = (amount: (line: PriceLine) => Money): bigint => cents(lines.map(amount));
  const costs = of((line) => line.cost);
  const list = of((line) => line.price);
  const net = of((line) => line.net);
  const margin = of((line) => line.margin);
  const tax = of((line) => line.tax);
  const withTax = of((line) => line.priceWithTax);
  const classes = price.classes.reduce((sum, one) => sum + centsOf(one.net), 0n);
  const rounded = centsOf(rounding.before);
  const taxed = cents([price.tax, price.discountTax, price.tradeInTax]);
  const boat = cents([price.boatWithTax, price.discountWithTax, price.tradeInTax]);
  ledger.same(costs, centsOf(price.cost), 'cost of all');
  ledger.same(list, centsOf(price.listPrice), 'list');
  ledger.same(net + rounded, centsOf(price.taxable), 'taxable');
  ledger.same(margin + rounded, centsOf(price.margin), 'margin of all');
  ledger.same(tax + centsOf(rounding.tax), taxed, 'tax of all');
  ledger.same(withTax + centsOf(rounding.withTax), boat, 'boat with tax');
  ledger.same(classes, net, 'classes');
}

function checkPayments(price: Price, ledger: Ledger): void {
  const whole = centsOf(price.driveAway);
  const charged = cents([price.charges, price.chargesTax]);
  ledger.same(cents([price.taxable, price.tax]) + charged, whole, 'drive-away');
  ledger.same(cents(price.chargeLines.map(({ withTax }) => withTax)), charged, 'charges');
  ledger.same(
    cents(price.chargeLines.map(({ tax }) => tax)),
    centsOf(price.chargesTax),
    'tax of charges',
  );
  ledger.same(cents(price.payments.map(({ amount }) => amount)), whole, 'payments');
  ledger.same(cents([price.tradeIn, price.paid, price.toPay]), whole, 'to pay');
}

/** The tax of a document, its taxed charges among it, is rounded once: no further from the exact tax than its rule allows. */
function checkTax({ rules, charges }: PriceInput, price: Price, ledger: Ledger): void {
  if (rules.taxRounding !== 'document' || rules.tradeInReducesTax) return;
  const { amount, scale } = rules.taxRate;
  const within = rules.rounding?.tax === 'after';
  const taxed = cents(charges.flatMap((one) => (one.taxed && !within ? [one.amount] : [])));
  const base = (centsOf(within ? price.boatWithTax : price.taxable) + taxed) * amount;
  // A boat of less than the rounding, beside charges that cannot be rounded.
  if (base < 0n) return;
  const whole = 10n ** scale + (within ? amount : 0n);
  const tax = cents(within ? [price.tax] : [price.tax, price.chargesTax]);
  const rest = base - tax * whole;
  const allowed = {
    'half-up': 2n * rest < whole && -2n * rest <= whole,
    'half-down': 2n * rest <= whole && -2n * rest < whole,
    down: rest >= 0n && rest < whole,
  };
  if (!allowed[rules.taxRule ?? 'half-up'])
    ledger.wrong.push(`${rest} of ${whole} is left of the tax`);
}

function checkRounding(
  { rules: { rounding }, packages }: PriceInput,
  price: Price,
  ledger: Ledger,
) {
  if (!rounding) return;
  const step = rounding.to * 100n;
  const after = rounding.tax === 'after';
  if (rounding.on === 'total') {
    const seen = after ? price.driveAway : price.taxable;
    ledger.same(centsOf(seen) % step, 0n, 'rounded whole');
  } else if (!packages) {
    for (const line of price.lines.filter(({ fixed }) => !fixed)) {
      const shown = after ? line.priceWithTax : line.price;
      ledger.same(centsOf(shown) % step, 0n, 'rounded line');
    }
  }
}
