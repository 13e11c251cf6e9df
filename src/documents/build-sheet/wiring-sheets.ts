import type { ElectricsFigures, Figures, WiringRow } from '../../figures/index.ts';
import { methodLines } from '../sections/method-notes.ts';
import { formatterOf, type Formatter, type Metres, metres } from '../../units/index.ts';
import { type Block, column, heads, row } from '../blocks/block.ts';
import { workTable } from './work-table.ts';
import { bareArea, sizeHeading, sizeText, starterText } from '../sections/wiring-words.ts';

/** The wiring schedule and the cable to fetch for it; nothing when the order has no electrics. */
export function wiringTables({ build, electrics }: Figures): readonly Block[] {
  if ('notComputed' in electrics) return [];
  const format = formatterOf(build.yard);
  const { circuits, picks, refused } = electrics;
  if (circuits.length === 0 && refused.length === 0) return [];
  return [scheduleTable(electrics, format), cableTable(picks, format)];
}

function scheduleTable(electrics: ElectricsFigures, format: Formatter): Block {
  const { circuits, feeder, panel } = electrics;
  const line = (wire: WiringRow, switched: string) =>
    row(
      'plain',
      wire.label,
      wire.circuit.name,
      switched,
      format.length(wire.circuit.run),
      sizeText(wire.conductor, format),
      format.fuse(wire.fuse),
      wire.colour,
      format.percent(wire.conductor.dropShare, 1),
      '',
    );
  return workTable('Wiring schedule', {
    said: [
      ...(panel
        ? [`A is ${panel.item.name}, B the device; the switch is its place on the panel.`]
        : ['A is the battery, B the device.']),
      ...mainFuseWords(electrics, format),
      ...otherVoltWords(electrics, format),
      ...starterText(electrics, format),
    ],
    columns: [
      ...heads('text', 'No.', 'Circuit, to device B', 'Switch'),
      column('num', 'Run'),
      column('text', sizeHeading(format)),
      column('num', 'Fuse'),
      column('text', '{Colour}'),
      column('num', 'Drop'),
      column('tick', 'Done'),
    ],
    rows: [
      ...(feeder && 'row' in feeder ? [line(feeder.row, 'battery to A')] : []),
      ...circuits.map(({ row: wire, from, volts }) =>
        line(
          wire,
          from === 'panel'
            ? String(wire.position)
            : `at battery${volts === electrics.volts ? '' : `, ${format.voltage(volts)}`}`,
        ),
      ),
    ],
    notes: [
      'The way back has the same area, in black or yellow. The number stands at both ends of both wires.',
      ...methodLines('wire'),
    ],
  });
}

function otherVoltWords(
  { circuits, volts }: ElectricsFigures,
  format: Formatter,
): readonly string[] {
  const others = [...new Set(circuits.map((one) => one.volts))].filter((own) => own !== volts);
  return others.map(
    (own) =>
      `A wire marked ${format.voltage(own)} begins at ${own / volts} house batteries in series that feed nothing else, never at the ${format.voltage(volts)} bus: have the joining confirmed by a licensed electrician before anything is connected.`,
  );
}

function mainFuseWords({ feeder }: ElectricsFigures, format: Formatter): readonly string[] {
  if (!feeder || !('row' in feeder) || 'notComputed' in feeder.fuse) return [];
  const { fuse, sheathed } = feeder;
  const bare = format.dimension(fuse.within);
  const covered =
    'notComputed' in sheathed ? '' : `, ${format.dimension(sheathed.within)} in a sheath`;
  return [
    `Main fuse M1, ${format.fuse(fuse.rating)}: within ${bare} of the battery${covered}. Fuses of wires from the battery likewise.`,
  ];
}

function cableTable(picks: ElectricsFigures['picks'], format: Formatter): Block {
  const lengths = new Map<string, Metres>();
  for (const { metricMm2, awg, colour, length } of picks) {
    const key = `${format.system === 'us' ? awg : bareArea(metricMm2, format)}; ${colour}`;
    lengths.set(key, metres((lengths.get(key) ?? 0) + length));
  }
  return workTable('Cable to take', {
    columns: [
      ...heads('text', format.system === 'us' ? 'AWG' : format.unit('wireArea'), '{Colour}'),
      ...heads('num', 'Length', 'Black or yellow'),
      column('tick', 'Got'),
    ],
    rows: [...lengths].map(([key, length]) =>
      row('plain', ...key.split('; '), format.length(length), format.length(length), ''),
    ),
  });
}
