import { type Figures, type LaminateFigures, LAMINATE_BASIS } from '../../figures/index.ts';
import { createFormatter, formatDate, type Formatter } from '../../units/index.ts';
import { massCells, partTables } from './part-laminate-section.ts';
import {
  figureColumn,
  flagRow,
  plainRow,
  type Section,
  section,
  type SectionTable,
  sumRow,
  textColumn,
} from '../sections/section.ts';

/** Lay-ups of shell, structure and options: masses by panel, the bottom's screening, the kit against lists and shelf. */
export function laminateSection(figures: Figures): Section {
  const heading = 'Laminate';
  const { build, laminate, partLayUps } = figures;
  const format = createFormatter(build.yard.locale, build.yard.units);
  const shell = 'notComputed' in laminate ? undefined : laminate;
  const without = 'notComputed' in laminate ? [`Not computed: ${laminate.notComputed}.`] : [];
  if (!shell && partLayUps.length === 0) return section('laminate', heading, { words: without });
  const { stock, yard } = build;
  return section('laminate', heading, {
    words: shell ? shellWords(figures, shell, format) : without,
    tables: [
      ...(shell
        ? [
            panelTable(shell, format),
            strengthTable(shell, format),
            ...screeningTable(shell, format),
          ]
        : []),
      ...partTables(figures, format),
      kitTable(figures, format),
    ],
    notes: [
      ...(stock
        ? [
            `Shelf as counted on ${formatDate(stock.counted, yard.locale)}; here the whole shelf stands against this order; the page Purchases lets the first stage take first.`,
          ]
        : []),
      'Fibre by mass is the material’s own, else the yard’s by process and fabric.',
      ...[LAMINATE_BASIS.layUp, LAMINATE_BASIS.strength, LAMINATE_BASIS.screening].map(
        ({ method, validity, caution }) => `${method} ${validity} ${caution}`,
      ),
    ],
  });
}

function shellWords(
  { build }: Figures,
  shell: LaminateFigures,
  format: Formatter,
): readonly string[] {
  const { mass } = build.hull.shell;
  return [
    `The lay-up of the shell weighs ${format.mass(shell.mass.total)}; the file says ${format.mass(mass)}, with paste and fastenings.`,
    ...infusionWords(shell, format),
  ];
}

function infusionWords({ infusion }: LaminateFigures, format: Formatter): readonly string[] {
  if (!infusion) return [];
  const { plan, asLaid } = infusion;
  if ('notComputed' in plan) return [`Infusion not computed: ${plan.notComputed}.`];
  const minutes = (seconds: number): string => `${format.number(seconds / 60, 0)} min`;
  const lines = asLaid?.feedLines ?? plan.feedLines;
  return [
    `Infusion: ${lines} feed ${lines === 1 ? 'line' : 'lines'}, full in ${minutes(asLaid?.fillSeconds ?? plan.fillSeconds)} of ${minutes(plan.limitSeconds)} allowed, ${format.mass(plan.resin)} of resin with mesh and hoses. ${LAMINATE_BASIS.infusion.caution}`,
  ];
}

/** What each panel weighs and of what, and all together. */
function panelTable({ mass }: LaminateFigures, format: Formatter): SectionTable {
  const masses = massCells(format);
  return {
    caption: 'Panels of the shell',
    columns: [
      textColumn('Panel'),
      ...['Area', 'Thickness, mm', 'Fibre', 'Resin', 'Gelcoat', 'Core', 'Mass'].map(figureColumn),
    ],
    rows: [
      ...mass.panels.map((one) =>
        plainRow(
          one.panel.name,
          format.area(one.panel.area),
          format.number(one.layUp.thickness * 1000, 1),
          ...masses(one),
        ),
      ),
      sumRow('Together', '', '', ...masses(mass)),
    ],
  };
}

/** What a strip of each lay-up 1 m wide bears, of its ultimate strength. */
function strengthTable({ mass, sections }: LaminateFigures, format: Formatter): SectionTable {
  const whole = (value: number): string => format.number(value, value < 10 ? 1 : 0);
  return {
    caption: 'Stiffness and ultimate strength of each lay-up, a strip 1 m wide; estimated',
    columns: [
      textColumn('Panel'),
      figureColumn('Fibre by mass'),
      figureColumn('Stiffness, N m²/m'),
      figureColumn('Bending moment, N m/m'),
      figureColumn('Core shear, N/m'),
    ],
    rows: mass.panels.map(({ panel, layUp }) => {
      const strip = sections.get(panel.name);
      const share = layUp.fibreFraction === undefined ? '' : format.percent(layUp.fibreFraction, 0);
      if (!strip || 'notComputed' in strip) {
        return plainRow(panel.name, share, `not computed: ${strip?.notComputed ?? ''}`, '', '');
      }
      const { stiffness, moment, shear } = strip;
      const sheared = shear === undefined ? '' : whole(shear);
      return plainRow(panel.name, share, whole(stiffness), whole(moment), sheared);
    }),
  };
}

function screeningTable(
  { screening }: LaminateFigures,
  format: Formatter,
): readonly SectionTable[] {
  if (!screening) return [];
  const columns = [
    textColumn('Of the bottom panel'),
    figureColumn('Needed'),
    figureColumn('There is'),
    figureColumn('Used'),
  ];
  const caption = 'Bottom pressure against the panel, a screening';
  if ('notComputed' in screening) {
    return [
      { caption, columns, rows: [plainRow(`Not computed: ${screening.notComputed}`, '', '', '')] },
    ];
  }
  const { rows, pressure } = screening;
  const kilopascals = format.number(pressure.design / 1000, 1);
  return [
    {
      caption: `${caption}: ${kilopascals} kPa`,
      columns,
      rows: rows.map(({ what, needed, available, unit, use }) => {
        const inMm = unit === 'm';
        const print = (value: number): string =>
          inMm
            ? `${format.number(value * 1000, 1)} mm`
            : `${format.number(value, 0)} ${UNITS[unit]}`;
        const make = use > 1 ? flagRow : plainRow;
        return make(what, print(needed), print(available), format.percent(use, 0));
      }),
    },
  ];
}

const UNITS = { 'N.m/m': 'N m/m', 'N/m': 'N/m', m: 'm' } as const;

function kitTable({ boatKit }: Figures, format: Formatter): SectionTable {
  return {
    caption:
      'Kit of the whole boat: by the lay-ups, by the lists that the price comes from, and what to order',
    columns: [
      textColumn('Material'),
      figureColumn('In the boat'),
      figureColumn('By the list'),
      figureColumn('With wastage'),
      figureColumn('On the shelf'),
      figureColumn('To order'),
    ],
    rows: boatKit.map((line) => {
      const unit = line.unit === 'm2' ? 'm²' : line.unit;
      const print = (value: number): string => `${format.number(value, 1)} ${unit}`;
      return plainRow(
        `${line.part} ${line.description}`,
        `${print(line.inBoat)}${line.lost > 0 ? `, ${print(line.lost)} in mesh and lines` : ''}`,
        line.listed === undefined ? 'not listed' : print(line.listed),
        print(line.needed),
        print(line.fromStock),
        print(line.ordered),
      );
    }),
  };
}
