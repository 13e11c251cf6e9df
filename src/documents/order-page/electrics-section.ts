import type { ElectricsFigures, Figures } from '../../figures/index.ts';
import { methodLines } from '../sections/method-notes.ts';
import { type Formatter, formatterOf, UNIT_KINDS } from '../../units/index.ts';
import {
  captioned,
  column,
  figureColumns,
  heads,
  type Part,
  picture,
  row,
  section,
  sentences,
  smallPrint,
  type Table,
} from '../blocks/block.ts';
import { ampereHours, bankWords, chargeText } from '../sections/energy-words.ts';
import { oneLinePicture } from '../sections/wiring-drawing.ts';
import { sizeHeading, sizeText, starterText } from '../sections/wiring-words.ts';

/** The wiring of the order: circuits, batteries against a day's use, charging, pumps, and the one-line diagram. */
export function electricsSection(figures: Figures, fontCss: string): Part {
  const { build, electrics } = figures;
  if ('notComputed' in electrics) {
    return section('electrics', 'Electrics', `Not computed: ${electrics.notComputed}.`);
  }
  const format = formatterOf(build.yard);
  const diagram = oneLinePicture(figures, fontCss);
  return section(
    'electrics',
    'Electrics',
    ...sentences([...bankWords(electrics, format), ...starterText(electrics, format)]),
    circuitTable(electrics, format),
    ...chargeTable(electrics, format),
    ...pumpTable(electrics, format),
    ...(diagram ? [picture(diagram)] : []),
    ...smallPrint(methodLines('wire', 'battery')),
  );
}

const GOVERNED = {
  drop: 'voltage drop',
  ampacity: 'current',
  thinnest: 'thinnest allowed',
  fuse: 'fuse',
} as const;

function circuitTable(
  { circuits, feeder, refused, budget, volts: nominal }: ElectricsFigures,
  format: Formatter,
): Table {
  const fineCharge = (hours: number): string => format.fineCharge(hours * UNIT_KINDS.charge.Ah);
  return captioned(
    'Circuits and a day’s use',
    [
      column('text', 'Circuit'),
      ...heads('num', 'Current', 'Run', sizeHeading(format)),
      column('text', 'Governed by'),
      ...heads('num', 'Fuse', 'Drop', 'A day'),
    ],
    [...(feeder && 'row' in feeder ? [{ row: feeder.row, volts: nominal }] : []), ...circuits]
      .map(({ row: { label, circuit, conductor, fuse }, volts }) =>
        row(
          'plain',
          `${label} ${circuit.name}`,
          format.current(circuit.current),
          format.length(circuit.run),
          sizeText(conductor, format),
          GOVERNED[conductor.governedBy],
          format.fuse(fuse),
          format.percent(conductor.dropShare, 1),
          circuit.purpose === 'feeder'
            ? ''
            : `${fineCharge(circuit.current * circuit.hoursADay)}${volts === nominal ? '' : ` at ${format.voltage(volts)}`}`,
        ),
      )
      .concat(
        refused.map(({ circuit, reason }) =>
          row('flag', circuit.name, format.current(circuit.current), '', '', reason, '', '', ''),
        ),
        [
          row(
            'sum',
            `Together, ${format.voltage(nominal)}`,
            '',
            '',
            '',
            '',
            '',
            '',
            fineCharge(budget.ampereHours),
          ),
        ],
      ),
  );
}

function chargeTable({ charging }: ElectricsFigures, format: Formatter): readonly Table[] {
  if (charging.length === 0) return [];
  return [
    captioned(
      'What puts a day’s use back, each by itself',
      figureColumns('Source', 'Current', 'Hours', 'A day'),
      charging.map((source) =>
        row(
          'plain',
          source.name,
          format.current(source.current),
          chargeText(source, format),
          source.aDay === undefined ? '' : ampereHours(source.aDay, format),
        ),
      ),
    ),
  ];
}

function pumpTable({ pumps }: ElectricsFigures, format: Formatter): readonly Table[] {
  if (pumps.length === 0) return [];
  const flow = (litresAnHour: number): string =>
    format.pumpFlow(litresAnHour * UNIT_KINDS.flow['L/h']);
  return [
    captioned(
      'Pumps at their head, on a straight line from open flow to highest lift',
      figureColumns('Pump', 'Delivers', 'Wanted'),
      pumps.map(({ item, delivers, wanted }) =>
        row(
          wanted !== undefined && delivers < wanted ? 'flag' : 'plain',
          item.name,
          flow(delivers),
          wanted === undefined ? '' : flow(wanted),
        ),
      ),
    ),
  ];
}
