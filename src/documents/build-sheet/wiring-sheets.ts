import {
  type ElectricsFigures,
  type Figures,
  ELECTRICS_BASIS,
  type WiringRow,
} from '../../figures/index.ts';
import { createFormatter, type Formatter } from '../../units/index.ts';
import { figure, row, stageTable, type StageTable, text, tick } from './stage-table.ts';
import { areaText, fuseText, plain, starterText } from '../sections/wiring-words.ts';
import { NO_BREAK } from '../../units/index.ts';

/** The wiring schedule and the cable to fetch for it; nothing when the order has no electrics. */
export function wiringTables({ build, electrics }: Figures): readonly StageTable[] {
  if ('notComputed' in electrics) return [];
  const format = createFormatter(build.yard.locale, build.yard.units);
  const { circuits, picks, refused } = electrics;
  if (circuits.length === 0 && refused.length === 0) return [];
  return [scheduleTable(electrics, format), cableTable(picks, format)];
}

function scheduleTable(electrics: ElectricsFigures, format: Formatter): StageTable {
  const { circuits, feeder, panel } = electrics;
  const line = (wire: WiringRow, switched: string) =>
    row(
      wire.label,
      wire.circuit.name,
      switched,
      format.length(wire.circuit.run),
      areaText(wire, format),
      fuseText(wire.fuse, format),
      wire.colour,
      format.percent(wire.conductor.dropShare, 1),
      '',
    );
  return stageTable('wiring-schedule', 'Wiring schedule', {
    words: [
      ...(panel
        ? [`A is ${panel.item.name}, B the device; the switch is its place on the panel.`]
        : ['A is the battery, B the device.']),
      ...mainFuseWords(electrics, format),
      ...otherVoltWords(electrics),
      ...starterText(electrics, format),
    ],
    columns: [
      text('No.'),
      text('Circuit, to device B'),
      text('Switch'),
      figure('Run'),
      text('mm² (AWG)'),
      figure('Fuse'),
      text('Colour'),
      figure('Drop'),
      tick('Done'),
    ],
    rows: [
      ...(feeder && 'row' in feeder ? [line(feeder.row, 'battery to A')] : []),
      ...circuits.map(({ row: wire, from, volts }) =>
        line(
          wire,
          from === 'panel'
            ? String(wire.position)
            : `at battery${volts === electrics.volts ? '' : `, ${volts} V`}`,
        ),
      ),
    ],
    notes: [
      'The way back has the same area, in black or yellow. The number stands at both ends of both wires.',
      `${ELECTRICS_BASIS.wiring.method} ${ELECTRICS_BASIS.wiring.caution}`,
    ],
  });
}

function otherVoltWords({ circuits, volts }: ElectricsFigures): readonly string[] {
  const others = [...new Set(circuits.map((one) => one.volts))].filter((own) => own !== volts);
  return others.map(
    (own) =>
      `A wire marked ${own}${NO_BREAK}V begins at ${own / volts} house batteries in series that feed nothing else, never at the ${volts}${NO_BREAK}V bus: have the joining confirmed by a licensed electrician before anything is connected.`,
  );
}

function mainFuseWords({ feeder }: ElectricsFigures, format: Formatter): readonly string[] {
  if (!feeder || !('row' in feeder) || 'notComputed' in feeder.fuse) return [];
  const { fuse, sheathed } = feeder;
  const bare = format.dimension(fuse.within);
  const covered =
    'notComputed' in sheathed ? '' : `, ${format.dimension(sheathed.within)} in a sheath`;
  return [
    `Main fuse M1, ${fuseText(fuse.rating, format)}: within ${bare} of the battery${covered}. Fuses of wires from the battery likewise.`,
  ];
}

function cableTable(picks: ElectricsFigures['picks'], format: Formatter): StageTable {
  return stageTable('cable', 'Cable to fetch', {
    columns: [
      text('mm²'),
      text('Colour'),
      figure('Length'),
      figure('Black or yellow'),
      tick('Got'),
    ],
    rows: picks.map(({ metricMm2, colour, length }) =>
      row(plain(metricMm2, format), colour, format.length(length), format.length(length), ''),
    ),
  });
}
