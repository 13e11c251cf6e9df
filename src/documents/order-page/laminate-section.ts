import { type Figures, type LaminateFigures, METHODS } from '../../figures/index.ts';
import { methodLines } from '../sections/method-notes.ts';
import { formatDate, type Formatter, formatterOf, partUnitText } from '../../units/index.ts';
import { massCells, panelFigures, partTables } from './part-laminate-section.ts';
import {
  captioned,
  figureColumns,
  type Part,
  row,
  section,
  sentences,
  smallPrint,
  type Table,
} from '../blocks/block.ts';

/** Lay-ups of shell, structure and options: masses by panel, the bottom's screening, the kit against lists and shelf. */
export function laminateSection(figures: Figures): Part {
  const heading = 'Laminate';
  const { build, laminate, partLayUps } = figures;
  const format = formatterOf(build.yard);
  const shell = 'notComputed' in laminate ? undefined : laminate;
  const without = 'notComputed' in laminate ? [`Not computed: ${laminate.notComputed}.`] : [];
  if (!shell && partLayUps.length === 0) return section('laminate', heading, ...sentences(without));
  const { stock, yard } = build;
  return section(
    'laminate',
    heading,
    ...sentences(shell ? shellWords(figures, shell, format) : without),
    ...(shell
      ? [panelTable(shell, format), strengthTable(shell, format), ...screeningTable(shell, format)]
      : []),
    ...partTables(figures, format),
    kitTable(figures, format),
    ...smallPrint([
      ...(stock
        ? [
            `Stock as counted on ${formatDate(stock.counted, yard.locale)}; here all stock counts for this order; on the page Purchases the stage that starts first takes first.`,
          ]
        : []),
      '{Fibre} by mass is the material’s own, else the yard’s by process and fabric.',
      ...methodLines('layUp', 'strength', 'screening'),
    ]),
  );
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
function panelTable({ mass }: LaminateFigures, format: Formatter): Table {
  const masses = massCells(format);
  return captioned('Panels of the shell', figureColumns('Panel', ...panelFigures(format)), [
    ...mass.panels.map((one) =>
      row(
        'plain',
        one.panel.name,
        format.area(one.panel.area),
        format.bare('thickness', one.layUp.thickness),
        ...masses(one),
      ),
    ),
    row('sum', 'Together', '', '', ...masses(mass)),
  ]);
}

/** What a strip of each lay-up bears by its width, of its ultimate strength. */
function strengthTable({ mass, sections }: LaminateFigures, format: Formatter): Table {
  return captioned(
    'Stiffness and ultimate strength of each lay-up, by the width of a strip; estimated',
    figureColumns(
      'Panel',
      '{Fibre} by mass',
      `Stiffness, ${format.unit('stripStiffness')}`,
      `Bending moment, ${format.unit('stripMoment')}`,
      `Core shear, ${format.unit('stripForce')}`,
    ),
    mass.panels.map(({ panel, layUp }) => {
      const strip = sections.get(panel.name);
      const share = layUp.fibreFraction === undefined ? '' : format.percent(layUp.fibreFraction, 0);
      if (!strip || 'notComputed' in strip) {
        return row('plain', panel.name, share, `not computed: ${strip?.notComputed ?? ''}`, '', '');
      }
      const { stiffness, moment, shear } = strip;
      const sheared = shear === undefined ? '' : format.bare('stripForce', shear);
      return row(
        'plain',
        panel.name,
        share,
        format.bare('stripStiffness', stiffness),
        format.bare('stripMoment', moment),
        sheared,
      );
    }),
  );
}

function screeningTable({ screening }: LaminateFigures, format: Formatter): readonly Table[] {
  if (!screening) return [];
  const columns = figureColumns('Of the bottom panel', 'Needed', 'There is', 'Used');
  const caption = 'Bottom pressure against the panel, a screening';
  if ('notComputed' in screening) {
    return [
      captioned(caption, columns, [
        row('plain', `Not computed: ${screening.notComputed}`, '', '', ''),
      ]),
    ];
  }
  const { rows, pressure } = screening;
  return [
    captioned(
      `${caption}: ${format.pressure(pressure.design)}`,
      columns,
      rows.map(({ what, needed, available, unit, use }) => {
        const print = format[SHOWN_AS[unit]];
        return row(
          use > 1 ? 'flag' : 'plain',
          what,
          print(needed),
          print(available),
          format.percent(use, 0),
        );
      }),
    ),
  ];
}

const SHOWN_AS = { 'N.m/m': 'stripMoment', 'N/m': 'stripForce', m: 'thickness' } as const;

function kitTable({ boatKit }: Figures, format: Formatter): Table {
  return captioned(
    'Kit of the whole boat: by the lay-ups, by the lists that the price comes from, and what to order',
    figureColumns('Material', 'In the boat', 'By the list', 'With wastage', 'In stock', 'To order'),
    boatKit.map((line) => {
      const print = (value: number): string =>
        `${format.number(value, 1)} ${partUnitText(line.unit)}`.trim();
      return row(
        'plain',
        `${line.part} ${line.description}`,
        `${print(line.inBoat)}${line.lost > 0 ? `, ${print(line.lost)} in mesh and lines` : ''}`,
        line.listed === undefined ? 'not listed' : print(line.listed),
        print(line.needed),
        print(line.fromStock),
        print(line.ordered),
      );
    }),
  );
}
