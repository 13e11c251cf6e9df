import { type Finding, finding } from '../findings/index.ts';
import type { SourcedOrder } from '../schema/index.ts';
import { cubicMetres, type Formatter } from '../units/index.ts';
import type { Build, BuildItem } from './build.ts';

/** Items whose mass is the sum of their parts, and one of those weighs nothing, or what was bought is no part. */
export const checkWeighed = (items: readonly BuildItem[]): readonly Finding[] =>
  items
    .filter(({ massGiven }) => !massGiven)
    .flatMap(({ parts, otherCost, mass, name, place }) => {
      const lack = parts.filter(({ unitMass, stage }) => !unitMass && stage !== 'water-trial');
      if (lack.length === 0 && !(otherCost && mass === 0)) return [];
      const what = lack.map(({ description }) => description).join(', ');
      return [finding('MASS_NOT_KNOWN', place, { received: what ? `${name}: ${what}` : name })];
    });

/** More fuel than the tanks of the order hold, or fuel and no tank. */
export function checkFuel(
  order: SourcedOrder,
  { builtIn, portable }: Build['tank'],
  format: Formatter,
): readonly Finding[] {
  const { fuel = cubicMetres(0) } = order.value;
  const holds = cubicMetres(builtIn + portable);
  // Rounding of litres that were added.
  if (fuel <= holds * (1 + 1e-9)) return [];
  return [
    finding('FUEL_OVER_TANK', order.place(['fuel']), {
      received: format.volume(fuel),
      expected: holds > 0 ? `at most ${format.volume(holds)}` : 'a tank in the order',
    }),
  ];
}
