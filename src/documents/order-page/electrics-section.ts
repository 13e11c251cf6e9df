import { type ElectricsFigures, type Figures, ELECTRICS_BASIS } from '../../figures/index.ts';
import { createFormatter, type Formatter } from '../../units/index.ts';
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
import { bankWords, chargeText } from '../sections/energy-words.ts';
import { oneLinePicture } from '../sections/wiring-drawing.ts';
import { areaText, fuseText, starterText } from '../sections/wiring-words.ts';

/** The wiring of the order: circuits, batteries against a day's use, charging, pumps, and the one-line diagram. */
export function electricsSection(figures: Figures, fontCss: string): Section {
  const { build, electrics } = figures;
  if ('notComputed' in electrics) {
    return section('electrics', 'Electrics', {
      words: [`Not computed: ${electrics.notComputed}.`],
    });
  }
  const format = createFormatter(build.yard.locale, build.yard.units);
  const picture = oneLinePicture(figures, fontCss);
  return section('electrics', 'Electrics', {
    words: [...bankWords(electrics, format), ...starterText(electrics, format)],
    tables: [
      circuitTable(electrics, format),
      ...chargeTable(electrics, format),
      ...pumpTable(electrics, format),
    ],
    pictures: picture ? [picture] : [],
    notes: [ELECTRICS_BASIS.wiring, ELECTRICS_BASIS.battery].map(
      ({ method, validity, caution }) => `${method} ${validity} ${caution}`,
    ),
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
  return {
    caption: 'Circuits and a day’s use',
    columns: [
      textColumn('Circuit'),
      figureColumn('Current'),
      figureColumn('Run'),
      figureColumn('mm² (AWG)'),
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
          areaText(row, format),
          GOVERNED[row.conductor.governedBy],
          fuseText(row.fuse, format),
          format.percent(row.conductor.dropShare, 1),
          row.circuit.purpose === 'feeder'
            ? ''
            : `${format.number(row.circuit.current * row.circuit.hoursADay, 1)} Ah${volts === nominal ? '' : ` at ${volts} V`}`,
        ),
      )
      .concat(
        refused.map(({ circuit, reason }) =>
          flagRow(circuit.name, format.current(circuit.current), '', '', reason, '', '', ''),
        ),
        [
          sumRow(
            `Together, ${nominal} V`,
            '',
            '',
            '',
            '',
            '',
            '',
            `${format.number(budget.ampereHours, 1)} Ah`,
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
          source.aDay === undefined ? '' : `${format.number(source.aDay, 0)} Ah`,
        ),
      ),
    },
  ];
}

function pumpTable({ pumps }: ElectricsFigures, format: Formatter): readonly SectionTable[] {
  if (pumps.length === 0) return [];
  const flow = (litresAnHour: number): string => `${format.number(litresAnHour / 60, 0)} L/min`;
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
