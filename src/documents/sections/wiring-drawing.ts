import {
  drawOneLine,
  drawPanelStrip,
  PANEL_LABEL,
  type OneLineInput,
  type OneLineRow,
  type PanelLabel,
} from '../../draw/index.ts';
import type { ElectricsFigures, Figures, WiredCircuit } from '../../figures/index.ts';
import { formatterOf, type Formatter, metres } from '../../units/index.ts';
import { ampereHours } from './energy-words.ts';
import { type Picture, pictureOf } from './picture.ts';
import { cableText, starterSize } from './wiring-words.ts';

type Captioned = Picture & { readonly caption: string };

/** The one-line diagram of an order's wiring; undefined when it has none. */
export function oneLinePicture(
  { build, electrics }: Figures,
  fontCss: string,
): Captioned | undefined {
  if ('notComputed' in electrics) return undefined;
  const format = formatterOf(build.yard);
  const { circuits, panel, feeder } = electrics;
  const rows = (from: WiredCircuit['from']) =>
    circuits
      .filter((one) => one.from === from && one.volts === electrics.volts)
      .map((one) => loadRow(one, format));
  const drawing = drawOneLine({
    subject: `the ${build.hull.name}`,
    apart: apartRows(electrics, format),
    battery: batteryLines(electrics, format),
    atBattery: [
      ...sourceRows(electrics, format),
      ...(isOfBank(electrics) ? starterRows(electrics, format) : []),
      ...rows('battery'),
    ],
    ...(panel && {
      panel: {
        lines: [panel.item.name],
        feeder: feederWords(feeder, format),
        rows: rows('panel'),
      },
    }),
    fontCss,
  });
  return {
    ...pictureOf(drawing),
    caption:
      'One line stands for both conductors. A box on the line is a fuse or breaker; a number in a ring is on both ends of the wire. Charging comes from what is rounded.',
  };
}

/** The labels of the switch panel, at their own size; undefined without a panel. */
export function panelStripPicture(
  { build, electrics }: Figures,
  fontCss: string,
): Captioned | undefined {
  if ('notComputed' in electrics || !electrics.panel) return undefined;
  const format = formatterOf(build.yard);
  const { panel, circuits } = electrics;
  const switched = circuits.filter(({ from }) => from === 'panel');
  const count = Math.max(panel.ways, switched.length);
  const labels = Array.from({ length: count }, (_, index): PanelLabel => {
    const row = switched[index]?.row;
    return {
      position: String(index + 1),
      name: row?.circuit.name ?? '',
      fuse: row ? format.fuse(row.fuse) : '',
    };
  });
  const side = (mm: number): string => format.dimension(metres(mm / 1000));
  const drawing = drawPanelStrip({ subject: panel.item.name, labels, fontCss });
  return {
    ...pictureOf(drawing),
    caption: `Labels of ${panel.item.name}, ${side(PANEL_LABEL.width)} × ${side(PANEL_LABEL.height)} each when printed at full size: cut them out along the lines.`,
  };
}

function batteryLines({ bank, volts }: ElectricsFigures, format: Formatter): readonly string[] {
  if ('notComputed' in bank) return ['Battery', format.voltage(volts)];
  const [item] = bank.items;
  const count = bank.batteries > 1 ? `${bank.batteries} × ` : '';
  return [
    `${count}${item?.name ?? 'Battery'}`,
    `together ${ampereHours(bank.rated, format)}, ${format.voltage(volts)}`,
  ];
}

function loadRow({ row }: WiredCircuit, format: Formatter): OneLineRow {
  const { conductor, colour, fuse, circuit, label } = row;
  return {
    kind: 'load',
    label,
    fuse: format.fuse(fuse),
    wire: `${cableText(conductor, format)}, ${colour}`,
    device: `${circuit.name}, ${format.current(circuit.current)}`,
  };
}

const sourceRows = ({ charging }: ElectricsFigures, format: Formatter): readonly OneLineRow[] =>
  charging.map(({ name, current }) => ({
    kind: 'source',
    label: '',
    fuse: '',
    wire: `gives ${format.current(current)}`,
    device: name,
  }));

function starterRows({ starter }: ElectricsFigures, format: Formatter): readonly OneLineRow[] {
  if (!starter) return [];
  const size = starterSize(starter);
  return [
    {
      kind: 'bare',
      label: '',
      fuse: '',
      wire:
        size === undefined ? 'cable: see the engine’s maker' : `${cableText(size, format)}, red`,
      device: `Outboard’s starter, ${format.fuse(starter.cranking)}`,
    },
  ];
}

/** What does not hang on the house bus: the engine's own battery, and wires of another voltage. */
function apartRows(electrics: ElectricsFigures, format: Formatter): OneLineInput['apart'] {
  const { starter, circuits, volts } = electrics;
  const [row] = starterRows(electrics, format);
  const own =
    starter && row && !isOfBank(electrics) ? [{ lines: [starter.battery.name], row }] : [];
  const others = circuits
    .filter((one) => one.volts !== volts)
    .map((one) => ({
      lines: seriesLines(electrics, one.volts, format),
      row: loadRow(one, format),
    }));
  return [...own, ...others];
}

function seriesLines(
  { seriesBanks }: ElectricsFigures,
  volts: number,
  format: Formatter,
): readonly string[] {
  const bank = seriesBanks.find((one) => one.volts === volts)?.bank;
  if (!bank || 'notComputed' in bank) return ['No batteries for', `${format.voltage(volts)}: ask`];
  return [
    `${bank.batteries} × ${bank.items[0]?.name ?? 'Battery'}`,
    `in series ${ampereHours(bank.rated, format)}, ${format.voltage(volts)}`,
  ];
}

/** True when the engine starts from the batteries that the house lives on. */
function isOfBank({ starter, bank }: ElectricsFigures): boolean {
  return starter !== undefined && !('notComputed' in bank) && bank.items.includes(starter.battery);
}

function feederWords(feeder: ElectricsFigures['feeder'], format: Formatter): string {
  if (!feeder) return 'Feeder of the switch panel';
  if (!('row' in feeder)) return `Feeder not computed: ${feeder.notComputed}`;
  const { fuse, conductor, colour } = feeder.row;
  return `M1, main fuse ${format.fuse(fuse)}, ${cableText(conductor, format)} ${colour}`;
}
