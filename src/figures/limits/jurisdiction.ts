import type { MethodId } from '../../limits/index.ts';
import type { Build } from '../../resolve/index.ts';
import type { Yard } from '../../schema/index.ts';
import type { Jurisdiction } from '../../tow/index.ts';
import { type Computed, dataMissing } from '../../units/index.ts';

const PLACES: ReadonlyMap<string, Jurisdiction> = new Map([
  ['AU', 'AU'],
  ['NZ', 'NZ'],
  ['US', 'US'],
  ['GB', 'UK-EU'],
  ['IE', 'UK-EU'],
]);

/** What people, load and power are estimated by where a shop names no method. */
const METHODS: Readonly<Record<Jurisdiction, readonly MethodId[]>> = {
  AU: ['australian', 'iso'],
  NZ: ['australian', 'iso'],
  'UK-EU': ['iso'],
  US: ['cfr-183', 'iso'],
};

/** Whose rules for trailers are read: the order's, the yard's, or those of the region of its locale. Never a guess. */
export const placeOf = ({ order, yard }: Build): Computed<{ readonly place: Jurisdiction }> =>
  order.tow?.place === undefined ? placeOfYard(yard) : { place: order.tow.place };

/** The methods of the yard file, or those of the place that it sells in; of a place without rules here, ISO's. */
export function methodsOf(yard: Yard): readonly MethodId[] {
  const place = placeOfYard(yard);
  return yard.limits.methods ?? ('notComputed' in place ? ['iso'] : METHODS[place.place]);
}

function placeOfYard({ tow, locale }: Yard): Computed<{ readonly place: Jurisdiction }> {
  const { region = locale } = new Intl.Locale(locale);
  const place = tow.place ?? PLACES.get(region);
  return place === undefined
    ? dataMissing(
        `the road rules of ${region} are not known here, and no tow: place: is given`,
        'tow.place',
      )
    : { place };
}
