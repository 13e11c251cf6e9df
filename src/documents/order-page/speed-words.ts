import type { Figures } from '../../figures/index.ts';
import { decimalToNumber, UNIT_KINDS } from '../../units/index.ts';
import { notComputed, type PerformancePrinter } from '../sections/performance-words.ts';
import { NO_BREAK } from '../../units/index.ts';

/** What the speeds are, the propeller's pitch, and what the bow motor holds her against. */
export function speedWords(figures: Figures, print: PerformancePrinter): readonly string[] {
  const { build } = figures;
  const words = build.outboard
    ? 'Estimated, trial to confirm. Each speed is a band, for the least and the most of the outboard’s power that may reach the water.'
    : 'No outboard is in this order: the speeds are those of outboards that the hull may carry. Estimated, trial to confirm.';
  return [words, ...propellerWords(figures, print), ...bowWords(figures, print)];
}

function propellerWords({ drive, build }: Figures, { format }: PerformancePrinter) {
  const { propeller } = drive;
  if (!propeller || !build.outboard) return [];
  if ('notComputed' in propeller) return [`Propeller: ${notComputed(propeller)}.`];
  const { fullThrottle, gearRatio } = build.outboard.model;
  const [least, most] = fullThrottle.map((turns) => format.number(turns, 0));
  const inches = (pitch: number): string =>
    `${format.number(pitch * 1000, 0)}${NO_BREAK}mm (${format.number(pitch / UNIT_KINDS.length.in, 1)}${NO_BREAK}in)`;
  const slip = format.percent(decimalToNumber(build.yard.drive.slip), 0);
  return [
    `Propeller: a pitch of about ${inches(propeller.middle)}, from ${inches(propeller.finest)} to ${inches(propeller.coarsest)}, puts full throttle, loaded, between ${most} and ${least}${NO_BREAK}rpm, at a gear ratio of ${format.number(decimalToNumber(gearRatio), 2)} and a slip of ${slip}.`,
  ];
}

function bowWords({ drive, build }: Figures, { format }: PerformancePrinter) {
  const { bowMotor } = drive;
  if (!bowMotor) return [];
  const { name, thrust, needed, time } = bowMotor;
  if ('notComputed' in needed) return [`${name}: ${notComputed(needed)}.`];
  const { wind, current } = build.yard.drive.holding;
  const knots = (speed: number): string =>
    `${format.number(speed / UNIT_KINDS.speed.kn, 0)}${NO_BREAK}kn`;
  const hours =
    'notComputed' in time
      ? `hours on the batteries ${notComputed(time)}`
      : `the batteries that are fitted last about ${format.number(time.hours, 1)}${NO_BREAK}h at ${format.number(time.current, 0)}${NO_BREAK}A`;
  return [
    `${name}: holding her against ${knots(wind)} of wind and ${knots(current)} of current takes about ${format.number(needed.needed, 0)}${NO_BREAK}N (wind ${format.number(needed.wind, 0)}${NO_BREAK}N before gusts, current ${format.number(needed.current, 0)}${NO_BREAK}N) of its ${format.number(thrust, 0)}${NO_BREAK}N; ${hours}.`,
  ];
}
