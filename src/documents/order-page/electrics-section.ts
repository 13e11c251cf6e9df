import type { ElectricsFigures, Figures } from '../../figures/index.ts';
import { methodLines } from '../sections/method-notes.ts';
import { type Formatter, formatterOf, UNIT_KINDS } from '../../units/index.ts';
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
import { ampereHours, bankWords, chargeText } from '../sections/energy-words.ts';
import { oneLinePicture } from '../sections/wiring-drawing.ts';
import { sizeHeading, sizeText, starterText } from '../sections/wiring-words.ts';

/** The wiring of the order: circuits, batteries against a day's use, charging, pumps, and the one-line diagram. */
export function electricsSection(figures: Figures, fontCss: string): Section {
  const { build, electrics } = figures;
  if ('notComputed' in electrics) {
    return section('electrics', 'Electrics', {
      words: [`Not computed: ${electrics.notComputed}.`],
    });
  }
  const format = formatterOf(build.yard);
  const picture = oneLinePicture(figures, fontCss);
  return section('electrics', 'Electrics', {
    words: [...bankWords(electrics, format), ...starterText(electrics, format)],
    tables: [
      circuitTable(electrics, format),
      ...chargeTable(electrics, format),
      ...pumpTable(electrics, format),
    ],
    pictures: picture ? [picture] : [],
    notes: methodLines('wire', 'battery'),
  });
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
): SectionTable {
  const fineCharge = (hours: number): string => format.fineCharge(hours * UNIT_KINDS.charge.Ah);
  return {
    caption: 'Circuits and a day’s use',
    columns: [
      textColumn('Circuit'),
      figureColumn('Current'),
      figureColumn('Run'),
      figureColumn(sizeHeading(format)),
      textColumn('Governed by'),
      figureColumn('Fuse'),
      figureColumn('Drop'),
      figureColumn('A day'),
    ],
    rows: [...(feeder && 'row' in feeder ? [{ row: feeder.row, volts: nominal }] : []), ...circuits]
      .map(({ row, volts }) =>
        plainRow(
          `${row.label} ${row.circuit.name}`,
          format.current(row.circuit.current),
          format.length(row.circuit.run),
          sizeText(row.conductor, format),
          GOVERNED[row.conductor.governedBy],
          format.fuse(row.fuse),
          format.percent(row.conductor.dropShare, 1),
          row.circuit.purpose === 'feeder'
            ? ''
            : `${fineCharge(row.circuit.current * row.circuit.hoursADay)}${volts === nominal ? '' : ` at ${format.voltage(volts)}`}`,
        ),
      )
      .concat(
        refused.map(({ circuit, reason }) =>
          flagRow(circuit.name, format.current(circuit.current), '', '', reason, '', '', ''),
        ),
        [
          sumRow(
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
  };
}

function chargeTable({ charging }: ElectricsFigures, format: Formatter): readonly SectionTable[] {
  if (charging.length === 0) return [];
  return [
    {
      caption: 'What puts a day’s use back, each by itself',
      columns: [
        textColumn('Source'),
        figureColumn('Current'),
        figureColumn('Hours'),
        figureColumn('A day'),
      ],
      rows: charging.map((source) =>
        plainRow(
          source.name,
          format.current(source.current),
          chargeText(source, format),
          source.aDay === undefined ? '' : ampereHours(source.aDay, format),
        ),
      ),
    },
  ];
}

function pumpTable({ pumps }: ElectricsFigures, format: Formatter): readonly SectionTable[] {
  if (pumps.length === 0) return [];
  const flow = (litresAnHour: number): string =>
    format.pumpFlow(litresAnHour * UNIT_KINDS.flow['L/h']);
  return [
    {
      caption: 'Pumps at their head, on a straight line from open flow to highest lift',
      columns: [textColumn('Pump'), figureColumn('Delivers'), figureColumn('Wanted')],
      rows: pumps.map(({ item, delivers, wanted }) =>
        (wanted !== undefined && delivers < wanted ? flagRow : plainRow)(
          item.name,
          flow(delivers),
          wanted === undefined ? '' : flow(wanted),
        ),
      ),
    },
  ];
}
