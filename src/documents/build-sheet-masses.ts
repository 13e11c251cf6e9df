import type { Figures } from '../figures/index.ts';
import type { Stage } from '../schema/index.ts';
import { createFormatter, decimalToNumber, type Kilograms, kilograms } from '../units/index.ts';
import type { TargetMass } from './build-sheet-types.ts';
import { percentText } from './quote-price.ts';

interface Target {
  readonly after: Stage;
  readonly condition: string;
  readonly contains: string;
  readonly mass: Kilograms;
}

/** What the boat must weigh on the way, and what she did weigh. */
export function targetMasses(figures: Figures): readonly TargetMass[] {
  const { yard, order } = figures.build;
  const format = createFormatter(yard.locale, yard.units);
  const share = decimalToNumber(yard.massContingency);
  return targets(figures).map(({ after, condition, contains, mass }) => {
    const weighed = order.record?.masses.findLast(({ stage }) => stage === after);
    const least = format.mass(kilograms(mass * (1 - share)));
    const most = format.mass(kilograms(mass * (1 + share)));
    return {
      condition,
      contains,
      target: format.mass(mass),
      band: `${least} to ${most}`,
      measured: weighed === undefined ? '' : format.mass(weighed.mass),
    };
  });
}

/** How the targets were found and how far to trust them. */
export function massMethod({ build }: Figures): string {
  const share = percentText(build.yard.massContingency);
  return `Targets are estimated: the sum of the items, with ${share} contingency on everything after the bare shell; verify by weighing. Outside the band (${share} either way): stop and ask the office.`;
}

function targets({ build, mass }: Figures): readonly Target[] {
  const { outboard, order, yard } = build;
  const format = createFormatter(yard.locale, yard.units);
  const fuel = order.fuel === undefined || order.fuel === 0 ? undefined : format.volume(order.fuel);
  const afloat = [
    ...(outboard ? [`outboard (${format.mass(outboard.mass)})`] : []),
    ...(fuel === undefined ? [] : [`${fuel} of fuel`]),
  ];
  return [
    {
      after: 'release',
      condition: 'Bare shell',
      contains: 'Out of the mould, trimmed, nothing fitted',
      mass: mass.bareHull.mass,
    },
    {
      after: 'wiring',
      condition: 'Completed',
      contains: 'Everything fitted and wired; no outboard, no fuel, no loose gear',
      mass: mass.completed.mass,
    },
    ...(afloat.length === 0
      ? []
      : [
          {
            after: 'engine',
            condition: 'Ready to launch',
            contains: `Completed, with ${afloat.join(' and ')}; nobody aboard`,
            mass: mass.ready.mass,
          } as const,
        ]),
  ];
}
