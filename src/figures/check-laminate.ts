import { type Finding, finding, type Place } from '../findings/index.ts';
import { createFormatter, type Formatter, kilograms } from '../units/index.ts';
import type { InfusionFigures } from './infusion-figures.ts';
import type { KitLine } from './kit-figures.ts';
import type { LaminateFigures } from './laminate-figures.ts';
import type { MixingFigures } from './mixing-figures.ts';
import type { Figures } from './types.ts';

/** How far the lay-up may be from what the hull's file says of its mass and its materials; common practice, no source. */
const MASS_SHARE = 0.05;
const KIT_SHARE = 0.03;

/** Lay-ups that cannot be, panels worked too hard, resin that gels too soon, and what does not agree with the hull's file. */
export function checkLaminate({ build, laminate }: Omit<Figures, 'findings'>): readonly Finding[] {
  if ('notComputed' in laminate) return [];
  const { yard, hull, items } = build;
  const format = createFormatter(yard.locale, yard.units);
  const place = items.find(({ kind }) => kind === 'shell')?.place ?? build.place(['hull']);
  return [
    ...impossible(laminate, place),
    ...checkMass(laminate, hull.shell.mass, place, format),
    ...laminate.kit.lines.flatMap((line) => checkLine(line, place, format)),
    ...checkScreening(laminate, place, format),
    ...(laminate.infusion ? checkInfusion(laminate.infusion, place, format) : []),
    ...laminate.mixing.flatMap((one) => checkMixing(one, place, format)),
  ];
}

function impossible({ panels, mass }: LaminateFigures, place: Place): readonly Finding[] {
  const missing = panels.flatMap(({ name, missing: codes }) =>
    codes.map((code) => `${name}: nothing is known of ${code}`),
  );
  const refused = mass.refused.map(({ panel, reason }) => `${panel.name}: ${reason}`);
  return [...missing, ...refused].map((received) =>
    finding('LAYUP_IMPOSSIBLE', place, { received }),
  );
}

function checkMass(
  { mass }: LaminateFigures,
  shell: number,
  place: Place,
  format: Formatter,
): readonly Finding[] {
  if (Math.abs(mass.total / shell - 1) <= MASS_SHARE) return [];
  return [
    finding('LAYUP_MASS_OFF', place, {
      received: `${format.mass(mass.total)} by the lay-up`,
      expected: `${format.mass(kilograms(shell))}, within ${format.percent(MASS_SHARE, 0)}`,
    }),
  ];
}

function checkLine(line: KitLine, place: Place, format: Formatter): readonly Finding[] {
  const { part, unit, listed } = line;
  const taken = line.inBoat + line.lost;
  if (listed !== undefined && Math.abs(taken - listed) <= KIT_SHARE * listed) return [];
  const print = (quantity: number): string => `${format.number(quantity, 2)} ${unit}`;
  return [
    finding('KIT_DIFFERS', place, {
      received: `${print(taken)} of ${part} by the lay-up`,
      expected:
        listed === undefined
          ? 'a line for it in the list of the shell'
          : `${print(listed)}, within ${format.percent(KIT_SHARE, 0)}`,
    }),
  ];
}

function checkScreening(
  { screening }: LaminateFigures,
  place: Place,
  format: Formatter,
): readonly Finding[] {
  if (!screening || 'notComputed' in screening) return [];
  return screening.rows
    .filter(({ use }) => use > 1)
    .map(({ what, use }) =>
      finding('PANEL_SCREENING_OVER', place, {
        received: `${what} at ${format.percent(use, 0)} of what half the ultimate strength carries, estimated to ISO 12215-5`,
        expected: `at most ${format.percent(1, 0)}; verify by a designer’s calculation and by test`,
      }),
    );
}

function checkInfusion(
  { plan, asLaid, gelMinutes }: InfusionFigures,
  place: Place,
  format: Formatter,
): readonly Finding[] {
  const slow = (received: string, expected?: string): readonly Finding[] => [
    finding('INFUSION_TOO_SLOW', place, { received, ...(expected !== undefined && { expected }) }),
  ];
  if ('notComputed' in plan) return slow(`not computed: ${plan.notComputed}`);
  if (!asLaid || asLaid.fillSeconds <= plan.limitSeconds) return [];
  const minutes = (seconds: number): string => `${format.number(seconds / 60, 0)} min`;
  const gel =
    typeof gelMinutes === 'number' ? `, of a gel time of ${minutes(gelMinutes * 60)}` : '';
  return slow(
    `${minutes(asLaid.fillSeconds)} with ${asLaid.feedLines} feed lines`,
    `at most ${minutes(plan.limitSeconds)}${gel}: ${plan.feedLines} feed lines`,
  );
}

function checkMixing(
  { part, share, table }: MixingFigures,
  place: Place,
  format: Formatter,
): readonly Finding[] {
  if (!('notComputed' in table)) return [];
  return [
    finding('CATALYST_OUT_OF_RANGE', place, {
      received: `${part} with ${format.percent(share, 1)}: ${table.notComputed}`,
    }),
  ];
}
