import { type ElectricsFigures, METHODS, type StarterFigures } from '../../figures/index.ts';
import { type Formatter, UNIT_KINDS, whyNot } from '../../units/index.ts';

/** A size of wire in both of its worlds: the American gauge, and the metric cable that holds as much copper. */
interface WireSize {
  readonly awg: string;
  readonly metricMm2: number;
}

/** Over a column of wire sizes. */
export const sizeHeading = (format: Formatter): string =>
  format.system === 'us' ? 'AWG' : `${format.unit('wireArea')} (AWG)`;

/** "2.5 (16)" under that heading: the cable to take, and the thinnest size that will do; in US units the size alone. */
export const sizeText = ({ awg, metricMm2 }: WireSize, format: Formatter): string =>
  format.system === 'us' ? awg : `${bareArea(metricMm2, format)} (${awg})`;

/** "2.5 mm²", or "AWG 16". */
export const cableText = ({ awg, metricMm2 }: WireSize, format: Formatter): string =>
  format.system === 'us' ? `AWG ${awg}` : format.wireArea(metricMm2 * UNIT_KINDS.area.mm2);

/** "2.5", under a heading that says the unit. */
export const bareArea = (mm2: number, format: Formatter): string =>
  format.bare('wireArea', mm2 * UNIT_KINDS.area.mm2);

const makersSize = ({ makersMm2, makersAwg }: StarterFigures): WireSize | undefined =>
  makersMm2 === undefined || makersAwg === undefined
    ? undefined
    : { metricMm2: makersMm2, awg: makersAwg };

/** The starter's cable to take: by voltage drop, or what the engine's maker asks for where that is more. */
export function starterSize(starter: StarterFigures): WireSize | undefined {
  const { cable } = starter;
  const makers = makersSize(starter);
  if ('notComputed' in cable) return makers;
  return makers && makers.metricMm2 > cable.metricMm2 ? makers : cable;
}

/** The cable between battery and outboard, in a sentence; nothing for an engine started by hand. */
export function starterText({ starter }: ElectricsFigures, format: Formatter): readonly string[] {
  if (!starter) return [];
  const { cable, cranking, run, battery } = starter;
  const makers = makersSize(starter);
  const from = `Starter cable from ${battery.name}, ${format.length(run)} at ${format.fuse(cranking)}`;
  if ('notComputed' in cable) return [`${from}: ${whyNot(cable)}.`];
  const size = starterSize(starter) ?? cable;
  const asked = makers ? `; the engine’s maker asks for ${cableText(makers, format)}` : '';
  return [
    `${from}: ${cableText(size, format)} (${cableText(cable, format)} by voltage drop${asked}). ${METHODS.starter.validity} ${METHODS.starter.verify}`,
  ];
}
