/** Read by `tsc` only: what the shop alone may know has no place in what a customer's composers take. */
import type { handoverView, quoteView, variationsView } from '../../src/documents/index.ts';
import type {
  CustomerAlternative,
  CustomerFigures,
  CustomerVariation,
  Fact,
  Figures,
} from '../../src/figures/index.ts';
import type { figureOf } from '../../src/documents/sections/fact-words.ts';
import type { CodeFacts } from '../../src/findings/index.ts';
import type { KeysOf } from './forbidden-keys.ts';

type Secret =
  | 'cost'
  | 'unitCost'
  | 'otherCost'
  | 'fixedPrice'
  | 'margin'
  | 'marginShare'
  | 'marginClass'
  | 'marginFloor'
  | 'margins'
  | 'class'
  | 'classes'
  | 'rates'
  | 'trades'
  | 'overhead'
  | 'wastage'
  | 'labour'
  | 'materials'
  | 'purchases'
  | 'sensitivity'
  | 'stageHours'
  | 'parts'
  | 'part'
  | 'supplier'
  | 'suppliers'
  | 'moulds'
  | 'note'
  | 'allow'
  | 'leaveOutCharges'
  | 'place'
  | 'remedy';
type Hidden<T> = [Extract<KeysOf<T>, Secret>] extends [never] ? true : false;

// Afloat, a margin is one of stability and a place one in the boat; on the road, a place is where the law holds.
export const hidden: Hidden<Omit<CustomerFigures, 'float' | 'tow'>> = true;
export const hiddenInChanges: Hidden<CustomerAlternative | CustomerVariation> = true;
// The test itself sees a secret that is planted.
export const seenInPlanted: Hidden<CustomerFigures & { readonly more: { cost: 1 }[] }> = false;

declare const figures: CustomerFigures;
declare const yards: Fact<'office'>;
declare const all: Figures;

// @ts-expect-error -- a customer's price has no cost
export const cost: unknown = figures.price.cost;
// @ts-expect-error -- nor a margin
export const margin: unknown = figures.price.margin;
// @ts-expect-error -- an item has no parts
export const parts: unknown = figures.build.items[0]?.parts;
// @ts-expect-error -- the yard has no rates
export const rates: unknown = figures.build.yard.rates;
type Of<View extends (figures: never, ...more: never[]) => unknown> = Parameters<View>[0];
// @ts-expect-error -- figures of the yard are not a customer's
export const ofQuote: Of<typeof quoteView> = all;
// @ts-expect-error -- figures of the yard are not a customer's
export const ofPack: Of<typeof handoverView> = all;
// @ts-expect-error -- figures of the yard are not a customer's
export const ofVariations: Of<typeof variationsView>['quoted'] = all;

// @ts-expect-error -- nor is a fact of the yard a row of theirs
export const ofFigures: Parameters<typeof figureOf>[0] = yards;

type Fits<Audience, Safety, Told> = Pick<CodeFacts, 'severity' | 'means' | 'remedy'> & {
  readonly audience: Audience;
  readonly safety: Safety;
} & Told extends CodeFacts
  ? true
  : false;
interface Words {
  readonly toCustomer: string;
}
export const told: Fits<'customer', true, Words> = true;
// A finding of safety has words for the customer, and is for nobody less.
export const wordless: Fits<'customer', true, object> = false;
export const kept: Fits<'office', true, Words> = false;
export const keptWordless: Fits<'workshop', true, object> = false;
