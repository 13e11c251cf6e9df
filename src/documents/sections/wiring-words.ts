import { type ElectricsFigures, ELECTRICS_BASIS, type WiringRow } from '../../figures/index.ts';
import type { Formatter } from '../../units/index.ts';
import { NO_BREAK } from '../../units/index.ts';

/** "2.5 mm² (AWG 16)": the cable to take, and the thinnest size that will do. */
export function areaText({ conductor }: WiringRow, format: Formatter): string {
  return `${plain(conductor.metricMm2, format)} (${conductor.awg})`;
}

/** "7.5 A" or "30 A". */
export function fuseText(amperes: number, format: Formatter): string {
  return `${plain(amperes, format)}${NO_BREAK}A`;
}

/** A number with the decimals that it has, at most one. */
export function plain(value: number, format: Formatter): string {
  return format.number(value, Number.isInteger(value) ? 0 : 1);
}

/** The cable between battery and outboard, in a sentence; nothing for an engine started by hand. */
export function starterText({ starter }: ElectricsFigures, format: Formatter): readonly string[] {
  if (!starter) return [];
  const { cable, cranking, run, makersMm2, battery } = starter;
  const from = `Starter cable from ${battery.name}, ${format.length(run)} at ${fuseText(cranking, format)}`;
  if ('notComputed' in cable) return [`${from}: not computed: ${cable.notComputed}.`];
  const area = Math.max(cable.metricMm2, makersMm2 ?? 0);
  const makers =
    makersMm2 === undefined ? '' : `; the engine’s maker asks for ${plain(makersMm2, format)} mm²`;
  return [
    `${from}: ${plain(area, format)}${NO_BREAK}mm² (${plain(cable.metricMm2, format)}${NO_BREAK}mm² by voltage drop${makers}). ${ELECTRICS_BASIS.starter.caution}`,
  ];
}
