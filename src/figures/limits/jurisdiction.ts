import type { MethodId } from '../../limits/index.ts';
import type { Build } from '../../resolve/index.ts';
import type { Yard } from '../../schema/index.ts';
import type { Jurisdiction } from '../../tow/index.ts';

const PLACES: Readonly<Record<string, Jurisdiction>> = {
  AU: 'AU',
  NZ: 'NZ',
  US: 'US',
  GB: 'UK-EU',
  IE: 'UK-EU',
};

/** What people, load and power are estimated by where a shop names no method. */
const METHODS: Readonly<Record<Jurisdiction, readonly MethodId[]>> = {
  AU: ['australian', 'iso'],
  NZ: ['australian', 'iso'],
  'UK-EU': ['iso'],
  US: ['cfr-183', 'iso'],
};

/** Whose rules for trailers are read: the order's, the yard's, or those of the region of its locale; else Australia's. */
export const placeOf = ({ order, yard }: Build): Jurisdiction =>
  order.tow?.place ?? placeOfYard(yard);

/** The methods of the yard file, or those of the place that it sells in. */
export const methodsOf = (yard: Yard): readonly MethodId[] =>
  yard.limits.methods ?? METHODS[placeOfYard(yard)];

const placeOfYard = ({ tow, locale }: Yard): Jurisdiction =>
  tow.place ?? PLACES[new Intl.Locale(locale).region ?? ''] ?? 'AU';
