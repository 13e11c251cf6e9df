import type { Figures } from '../../figures/index.ts';
import {
  decimalToNumber,
  type Formatter,
  NO_BREAK,
  UNIT_KINDS,
  whyNot,
} from '../../units/index.ts';

/** What the speeds are, the propeller's pitch, and what the bow motor holds her against. */
export function speedWords(figures: Figures, format: Formatter): readonly string[] {
  const { build } = figures;
  const words = build.outboard
    ? 'Estimated, trial to confirm. Each speed is a band, for the least and the most of the outboard’s power that may reach the water.'
    : 'No outboard is in this order: the speeds are those of outboards that the hull may carry. Estimated, trial to confirm.';
  return [words, ...propellerWords(figures, format), ...bowWords(figures, format)];
}

function propellerWords({ drive, build }: Figures, format: Formatter) {
  const { propeller } = drive;
  if (!propeller || !build.outboard) return [];
  if ('notComputed' in propeller) return [`Propeller: ${whyNot(propeller)}.`];
  const { fullThrottle, gearRatio } = build.outboard.model;
  const [least, most] = fullThrottle.map((turns) => format.number(turns, 0));
  const slip = format.percent(decimalToNumber(build.yard.drive.slip), 0);
  return [
    `Propeller: a pitch of about ${format.pitch(propeller.middle)}, from ${format.pitch(propeller.finest)} to ${format.pitch(propeller.coarsest)}, puts full throttle, loaded, between ${most} and ${least}${NO_BREAK}rpm, at a gear ratio of ${format.number(decimalToNumber(gearRatio), 2)} and a slip of ${slip}.`,
  ];
}

function bowWords({ drive, build }: Figures, format: Formatter) {
  const { bowMotor } = drive;
  if (!bowMotor) return [];
  const { name, thrust, needed, time } = bowMotor;
  if ('notComputed' in needed) return [`${name}: ${whyNot(needed)}.`];
  const { wind, current } = build.yard.drive.holding;
  const hours =
    'notComputed' in time
      ? `hours on the batteries ${whyNot(time)}`
      : `the batteries that are fitted last about ${format.hours(time.hours * UNIT_KINDS.duration.h)} at ${format.roundCurrent(time.current)}`;
  return [
    `${name}: holding the boat against ${format.roundSpeed(wind)} of wind and ${format.roundSpeed(current)} of current takes about ${format.force(needed.needed)} (wind ${format.force(needed.wind)} before gusts, current ${format.force(needed.current)}) of its ${format.force(thrust)}; ${hours}.`,
  ];
}
