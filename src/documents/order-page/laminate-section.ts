import { type Figures, type LaminateFigures, METHODS } from '../../figures/index.ts';
import { methodLines } from '../sections/method-notes.ts';
import { formatDate, type Formatter, formatterOf, partUnitText } from '../../units/index.ts';
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
  const format = formatterOf(build.yard);
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
            `Stock as counted on ${formatDate(stock.counted, yard.locale)}; here all stock counts for this order; on the page Purchases the stage that starts first takes first.`,
          ]
        : []),
      '{Fibre} by mass is the material’s own, else the yard’s by process and fabric.',
      ...methodLines('layUp', 'strength', 'screening'),
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
  const lines = asLaid?.feedLines ?? plan.feedLines;
  return [
    `Infusion: ${lines} feed ${lines === 1 ? 'line' : 'lines'}, full in ${format.minutes(asLaid?.fillSeconds ?? plan.fillSeconds)} of ${format.minutes(plan.limitSeconds)} allowed, ${format.mass(plan.resin)} of resin with mesh and hoses. ${METHODS.infusion.verify}`,
  ];
}

/** What each panel weighs and of what, and all together. */
function panelTable({ mass }: LaminateFigures, format: Formatter): SectionTable {
  const masses = massCells(format);
  return {
    caption: 'Panels of the shell',
    columns: [
      textColumn('Panel'),
      ...[
        'Area',
        `Thickness, ${format.unit('thickness')}`,
        '{Fibre}',
        'Resin',
        'Gelcoat',
        'Core',
        'Mass',
      ].map(figureColumn),
    ],
    rows: [
      ...mass.panels.map((one) =>
        plainRow(
          one.panel.name,
          format.area(one.panel.area),
          format.bare('thickness', one.layUp.thickness),
          ...masses(one),
        ),
      ),
      sumRow('Together', '', '', ...masses(mass)),
    ],
  };
}

/** What a strip of each lay-up bears by its width, of its ultimate strength. */
function strengthTable({ mass, sections }: LaminateFigures, format: Formatter): SectionTable {
  return {
    caption: 'Stiffness and ultimate strength of each lay-up, by the width of a strip; estimated',
    columns: [
      textColumn('Panel'),
      figureColumn('{Fibre} by mass'),
      figureColumn(`Stiffness, ${format.unit('stripStiffness')}`),
      figureColumn(`Bending moment, ${format.unit('stripMoment')}`),
      figureColumn(`Core shear, ${format.unit('stripForce')}`),
    ],
    rows: mass.panels.map(({ panel, layUp }) => {
      const strip = sections.get(panel.name);
      const share = layUp.fibreFraction === undefined ? '' : format.percent(layUp.fibreFraction, 0);
      if (!strip || 'notComputed' in strip) {
        return plainRow(panel.name, share, `not computed: ${strip?.notComputed ?? ''}`, '', '');
      }
      const { stiffness, moment, shear } = strip;
      const sheared = shear === undefined ? '' : format.bare('stripForce', shear);
      return plainRow(
        panel.name,
        share,
        format.bare('stripStiffness', stiffness),
        format.bare('stripMoment', moment),
        sheared,
      );
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
  return [
    {
      caption: `${caption}: ${format.pressure(pressure.design)}`,
      columns,
      rows: rows.map(({ what, needed, available, unit, use }) => {
        const print = format[SHOWN_AS[unit]];
        const make = use > 1 ? flagRow : plainRow;
        return make(what, print(needed), print(available), format.percent(use, 0));
      }),
    },
  ];
}

const SHOWN_AS = { 'N.m/m': 'stripMoment', 'N/m': 'stripForce', m: 'thickness' } as const;

function kitTable({ boatKit }: Figures, format: Formatter): SectionTable {
  return {
    caption:
      'Kit of the whole boat: by the lay-ups, by the lists that the price comes from, and what to order',
    columns: [
      textColumn('Material'),
      figureColumn('In the boat'),
      figureColumn('By the list'),
      figureColumn('With wastage'),
      figureColumn('In stock'),
      figureColumn('To order'),
    ],
    rows: boatKit.map((line) => {
      const print = (value: number): string =>
        `${format.number(value, 1)} ${partUnitText(line.unit)}`.trim();
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
