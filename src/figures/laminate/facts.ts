import { type Fact, factsOf } from '../facts/fact.ts';
import type { Figures } from '../types.ts';
import type { KitFigures } from './kit.ts';

const PARTS = ['total', 'fibre', 'resin', 'gelcoat', 'core'] as const;

const laminate = factsOf('laminate');
const PART = laminate('workshop', 'mass', '*', 'Mass of a lay-up', 'layUp');
const IN_KIT = laminate('workshop', 'amount', '*', 'In the boat, without offcuts', 'layUp');
const CUT = laminate('workshop', 'area', 'cut.*', 'Cut off the roll', 'cutting');
const SAVING = laminate('workshop', 'area', 'saving.*', 'Saved by cutting so', 'cutting');
const infusion = factsOf('infusion');
const LINES = infusion('workshop', 'feed lines', 'feed-lines', 'Feed lines', 'infusion');
const FILL = infusion('workshop', 'minutes', 'fill', 'Full in', 'infusion');
const LIMIT = infusion('workshop', 'minutes', 'limit', 'Full at the latest', 'infusion');
const RESIN = infusion('workshop', 'mass', 'resin', 'Resin with mesh and lines', 'infusion');
const bottom = factsOf('bottom');
const PRESSURE = bottom('office', 'pressure', 'pressure', 'Bottom pressure', 'screening');
const USE = bottom('office', 'share', '*', 'Used of what the panel carries', 'screening');

/** Lay-ups of shell, structure and options, the infusion, and the screening of the bottom. */
export function laminateFacts({
  laminate: shell,
  partLayUps,
}: Pick<Figures, 'laminate' | 'partLayUps'>): readonly Fact[] {
  const parts = partLayUps.flatMap(({ item, mass, kit }) =>
    layUpFacts(`${item.key.replace(':', '.')}.`, mass, kit),
  );
  if ('notComputed' in shell) return parts;
  const { mass, kit, infusion: filled, screening } = shell;
  const plan = filled && 'feedLines' in filled.plan ? filled.plan : undefined;
  return [
    ...parts,
    ...layUpFacts('', mass, kit),
    ...kit.cuts.flatMap(({ part: of, list }) => [
      CUT(list.cutArea, { of }),
      SAVING(list.saving, { of }),
    ]),
    ...(plan
      ? [LINES(plan.feedLines), FILL(plan.fillSeconds), LIMIT(plan.limitSeconds), RESIN(plan.resin)]
      : []),
    ...(screening && 'rows' in screening
      ? [
          PRESSURE(screening.pressure.design),
          ...screening.rows.map(({ what, use }) => USE(use, { of: what.replace(' ', '-') })),
        ]
      : []),
  ];
}

function layUpFacts(
  before: string,
  mass: Readonly<Record<(typeof PARTS)[number], number>>,
  { lines }: Pick<KitFigures, 'lines'>,
): readonly Fact<'workshop'>[] {
  return [
    ...PARTS.map((part) => PART(mass[part], { of: `${before}${part}` })),
    ...lines.map(({ part, inBoat, unit }) => IN_KIT(inBoat, { of: `${before}kit.${part}`, unit })),
  ];
}
