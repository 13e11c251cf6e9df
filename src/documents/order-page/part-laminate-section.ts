import type { Figures, PartLayUp } from '../../figures/index.ts';
import { type Formatter, kilograms } from '../../units/index.ts';
import { captioned, figureColumns, heads, row, type Row, type Table } from '../blocks/block.ts';

const PARTS = ['fibre', 'resin', 'gelcoat', 'core', 'total'] as const;
type Masses = Readonly<Record<(typeof PARTS)[number], number>>;

/** Fibre, resin, gelcoat, core and all together, in cells. */
export const massCells =
  (format: Formatter) =>
  (one: Masses): readonly string[] =>
    PARTS.map((part) => format.fineMass(one[part]));

/** Headings of the figures of a panel, the last of them those of `massCells`. */
export const panelFigures = (format: Formatter): readonly string[] => [
  'Area',
  `Thickness, ${format.unit('thickness')}`,
  '{Fibre}',
  'Resin',
  'Gelcoat',
  'Core',
  'Mass',
];

/** Panels of structure and options, and what all that is laminated weighs; nothing without such a lay-up. */
export function partTables(figures: Figures, format: Formatter): readonly Table[] {
  const { partLayUps } = figures;
  if (partLayUps.length === 0) return [];
  return [
    captioned(
      'Panels of structure and options',
      [...heads('text', 'Panel', 'Of'), ...heads('num', ...panelFigures(format))],
      partLayUps.flatMap((part) => rowsOf(part, format)),
    ),
    togetherTable(figures, format),
  ];
}

function rowsOf({ item, mass, withoutArea }: PartLayUp, format: Formatter): readonly Row[] {
  const masses = massCells(format);
  return [
    ...mass.panels.map(({ panel, layUp, ...each }) =>
      row(
        'plain',
        panel.name,
        item.name,
        format.area(panel.area),
        layUp.thickness > 0 ? format.bare('thickness', layUp.thickness) : 'coat',
        ...masses(each),
      ),
    ),
    ...[
      ...withoutArea,
      ...mass.refused.map(({ panel: { name }, reason }) => ({ name, reason })),
    ].map(({ name, reason }) =>
      row('flag', `${name}, not computed: ${reason}`, item.name, '', '', '', '', '', '', ''),
    ),
  ];
}

/** Lay-ups against the masses that the catalogue gives their items. */
function togetherTable({ laminate, partLayUps, build }: Figures, format: Formatter): Table {
  const masses = massCells(format);
  const shell =
    'notComputed' in laminate
      ? []
      : [
          {
            name: 'Shell',
            mass: laminate.mass,
            rest: kilograms(0),
            itemMass: build.hull.shell.mass,
          },
        ];
  const all = [
    ...shell,
    ...partLayUps.map(({ item, mass, rest }) => ({
      name: item.name,
      mass,
      rest,
      itemMass: item.mass,
    })),
  ];
  const sum = (of: (one: (typeof all)[number]) => number): number =>
    all.reduce((total, one) => total + of(one), 0);
  const together: Masses = {
    fibre: sum(({ mass }) => mass.fibre),
    resin: sum(({ mass }) => mass.resin),
    gelcoat: sum(({ mass }) => mass.gelcoat),
    core: sum(({ mass }) => mass.core),
    total: sum(({ mass }) => mass.total),
  };
  const { fineMass: print } = format;
  return captioned(
    'All that is laminated, with what else is in the mass of each',
    figureColumns(
      'Part',
      '{Fibre}',
      'Resin',
      'Gelcoat',
      'Core',
      'Laminate',
      'Else',
      'By the catalogue',
    ),
    [
      ...all.map(({ name, mass, rest, itemMass }) =>
        row('plain', name, ...masses(mass), print(rest), print(itemMass)),
      ),
      row(
        'sum',
        'Together',
        ...masses(together),
        print(sum(({ rest }) => rest)),
        print(sum(({ itemMass }) => itemMass)),
      ),
    ],
  );
}
