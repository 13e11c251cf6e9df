import { type Finding, finding, type Place } from '../../findings/index.ts';
import type { LaminateMass } from '../../laminate/index.ts';
import type { Build } from '../../resolve/index.ts';
import {
  formatterOf,
  type Formatter,
  type Kilograms,
  kilograms,
  partUnitText,
} from '../../units/index.ts';
import type { InfusionFigures } from './infusion.ts';
import type { KitFigures, KitLine } from './kit.ts';
import type { LaminateFigures } from './shell.ts';
import type { ResolvedPanel } from './input.ts';
import type { PartLayUp } from './parts.ts';
import type { MixingFigures } from './mixing.ts';
import type { Figures } from '../types.ts';

/** How far a lay-up may be from what the catalogue says of its item's mass and materials; common practice, no source. */
const MASS_SHARE = 0.05;
const KIT_SHARE = 0.03;

/** What is checked of any lay-up, of the shell or of a part. */
interface Checked {
  /** "of the shell"; the item's name of a part. */
  readonly whose: string;
  readonly place: Place;
  readonly panels: readonly ResolvedPanel[];
  readonly mass: LaminateMass;
  readonly kit: Pick<KitFigures, 'lines'>;
  /** What is in the mass of the item beside its lay-up. */
  readonly rest: Kilograms;
  readonly itemMass: Kilograms;
}

/** Lay-ups that cannot be, panels worked too hard, resin that gels too soon, and what does not agree with the lists. */
export function checkLaminate(
  figures: Pick<Figures, 'build' | 'laminate' | 'partLayUps' | 'mixing'>,
): readonly Finding[] {
  const { build, laminate, partLayUps, mixing } = figures;
  const format = formatterOf(build.yard);
  return [
    ...('notComputed' in laminate ? [] : checkShell(build, laminate, format)),
    ...partLayUps.flatMap((part) => checkPart(part, format)),
    ...mixing.flatMap((one) => checkMixing(one, placeOfShell(build), format)),
  ];
}

function checkShell(
  build: Build,
  laminate: LaminateFigures,
  format: Formatter,
): readonly Finding[] {
  const place = placeOfShell(build);
  const itemMass = build.hull.shell.mass;
  const shell = { whose: 'the shell', place, rest: kilograms(0), itemMass };
  return [
    ...checkLayUp({ ...laminate, ...shell }, format),
    ...checkScreening(laminate, place, format),
    ...(laminate.infusion ? checkInfusion(laminate.infusion, place, format) : []),
  ];
}

const placeOfShell = (build: Build): Place =>
  build.items.find(({ kind }) => kind === 'shell')?.place ?? build.place(['hull']);

function checkPart(part: PartLayUp, format: Formatter): readonly Finding[] {
  const { item, withoutArea } = part;
  const { name, place, mass: itemMass } = item;
  return [
    ...withoutArea.map((one) =>
      finding('LAYUP_IMPOSSIBLE', place, { received: `${name}, ${one.name}: ${one.reason}` }),
    ),
    ...checkLayUp({ ...part, whose: name, place, itemMass }, format),
  ];
}

function checkLayUp(one: Checked, format: Formatter): readonly Finding[] {
  return [
    ...impossible(one),
    ...checkMass(one, format),
    ...one.kit.lines.flatMap((line) => checkLine(line, one, format)),
  ];
}

function impossible({ whose, panels, mass, place }: Checked): readonly Finding[] {
  const missing = panels.flatMap(({ name, missing: codes }) =>
    codes.map((code) => `${name} of ${whose}: nothing is known of ${code}`),
  );
  const refused = mass.refused.map(({ panel, reason }) => `${panel.name} of ${whose}: ${reason}`);
  return [...missing, ...refused].map((received) =>
    finding('LAYUP_IMPOSSIBLE', place, { received }),
  );
}

function checkMass(
  { whose, mass, rest, itemMass, place }: Checked,
  format: Formatter,
): readonly Finding[] {
  if (Math.abs((mass.total + rest) / itemMass - 1) <= MASS_SHARE) return [];
  const beside = rest > 0 ? ` with the ${format.mass(rest)} of its list beside it` : '';
  return [
    finding('LAYUP_MASS_OFF', place, {
      received: `${whose}: ${format.mass(kilograms(mass.total + rest))} by the lay-up${beside}`,
      expected: `${format.mass(itemMass)}, within ${format.percent(MASS_SHARE, 0)}`,
    }),
  ];
}

function checkLine(
  line: KitLine,
  { whose, place }: Checked,
  format: Formatter,
): readonly Finding[] {
  const { part, unit, listed } = line;
  const taken = line.inBoat + line.lost;
  if (listed !== undefined && Math.abs(taken - listed) <= KIT_SHARE * listed) return [];
  const print = (quantity: number): string =>
    `${format.number(quantity, 2)} ${partUnitText(unit)}`.trim();
  return [
    finding('KIT_DIFFERS', place, {
      received: `${print(taken)} of ${part} by the lay-up of ${whose}`,
      expected:
        listed === undefined
          ? 'a line for it in that list'
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
  const gel =
    typeof gelMinutes === 'number' ? `, of a gel time of ${format.minutes(gelMinutes * 60)}` : '';
  return slow(
    `${format.minutes(asLaid.fillSeconds)} with ${asLaid.feedLines} feed lines`,
    `at most ${format.minutes(plan.limitSeconds)}${gel}: ${plan.feedLines} feed lines`,
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
