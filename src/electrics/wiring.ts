import { type Amperes, amperes, type Metres, metres, type Point3 } from '../units/index.ts';
import { conductorsFor } from './conductor.ts';
import type {
  Circuit,
  Conductor,
  NotComputed,
  Purpose,
  WiringRow,
  WiringRules,
  WiringSchedule,
} from './types.ts';
import { PROTECTION_RATINGS } from './wire-table.ts';

/** Colours of the wire to the device by its purpose, ABYC E-11 (from memory); the way back is black or yellow. */
const COLOURS: Readonly<Record<Purpose, string>> = {
  feeder: 'red',
  starting: 'yellow with red stripe',
  'navigation-lights': 'dark {grey}',
  'cabin-lights': 'dark blue',
  pump: 'brown',
  blower: 'brown with yellow stripe',
  instruments: 'red',
  accessory: 'orange',
};

/** A fuse is loaded to four fifths when the current never rests; common practice, no source. */
const CONTINUOUS_MARGIN = 1.25;

/**
 * Length of cable from one place to another: along the three axes, as cables are led, with an allowance.
 *
 * @param allowance - routing factor, 1 and up: bends, loops, the way round frames
 * @returns m, one way
 * @source common practice, no source
 */
export function cableRun(from: Point3, to: Point3, allowance: number): Metres {
  const along = Math.abs(to.x - from.x) + Math.abs(to.y - from.y) + Math.abs(to.z - from.z);
  return metres(along * allowance);
}

/**
 * The fuse or breaker between what a circuit draws and what its wire may carry.
 *
 * @returns rating, A: the smallest that is sold, at least the current (a quarter more when it never rests), at most
 * the wire's ampacity and the device's limit; `notComputed` when none lies between
 * @source 33 CFR 183.455 and ABYC E-11 (from memory): the rating is at most the ampacity. The allowance of up to
 * 150 % for want of a standard rating is not used
 */
export function chooseFuse(
  circuit: Circuit,
  { ampacity, awg }: Pick<Conductor, 'ampacity' | 'awg'>,
): Amperes | NotComputed {
  const least = circuit.current * (circuit.continuous ? CONTINUOUS_MARGIN : 1);
  const most = Math.min(ampacity, circuit.largestFuse ?? Number.POSITIVE_INFINITY);
  const rating = PROTECTION_RATINGS.find((one) => one >= least);
  return rating !== undefined && rating <= most
    ? amperes(rating)
    : { notComputed: `no standard rating above the current protects AWG ${awg}` };
}

/**
 * The wiring schedule: for every circuit a conductor, a fuse that protects it, a label and a place on the panel.
 *
 * @returns rows in the order given; a circuit without a sound pair of wire and fuse is refused with its reason
 * @source as `conductorsFor` and `chooseFuse`: the thinnest conductor for which a fuse exists. Estimated; to be
 * confirmed by a licensed electrician under local rules
 */
export function planWiring(circuits: readonly Circuit[], rules: WiringRules): WiringSchedule {
  const rows: WiringRow[] = [];
  const refused: WiringSchedule['refused'][number][] = [];
  for (const circuit of circuits) {
    const wired = wire(circuit, rules);
    if ('notComputed' in wired) {
      refused.push({ circuit, reason: wired.notComputed });
      continue;
    }
    const position = rows.length + 1;
    rows.push({
      circuit,
      position,
      label: String(position).padStart(2, '0'),
      colour: COLOURS[circuit.purpose],
      ...wired,
      cable: metres(2 * circuit.run),
    });
  }
  return { rows, refused };
}

/** Cable of one size and colour, one way. */
interface CablePick {
  readonly metricMm2: number;
  readonly awg: string;
  readonly colour: string;
  readonly length: Metres;
}

/**
 * Cable to pick from the shelf: how many metres of each area and colour, thinnest first.
 *
 * @returns the way to the device; as much again is needed of the same area in black or yellow for the way back
 * @source derived
 */
export function cableToPick(rows: readonly WiringRow[]): readonly CablePick[] {
  const picks = new Map<string, CablePick>();
  for (const { conductor, colour, circuit } of rows) {
    const { metricMm2, awg } = conductor;
    const key = `${metricMm2} ${awg} ${colour}`;
    const before = picks.get(key)?.length ?? 0;
    picks.set(key, { metricMm2, awg, colour, length: metres(before + circuit.run) });
  }
  return [...picks.values()].toSorted((a, b) => a.metricMm2 - b.metricMm2);
}

function wire(
  circuit: Circuit,
  rules: WiringRules,
): { readonly conductor: Conductor; readonly fuse: Amperes } | NotComputed {
  if (!isSound(circuit)) return { notComputed: 'current and run must be above 0' };
  const conductors = conductorsFor(circuit, rules);
  let reason = 'no single conductor at hand carries its current over its run';
  for (const conductor of conductors) {
    const fuse = chooseFuse(circuit, conductor);
    if (typeof fuse === 'number') return { conductor, fuse };
    reason = fuse.notComputed;
  }
  return { notComputed: reason };
}

const isSound = ({ current, run }: Circuit): boolean =>
  Number.isFinite(current) && Number.isFinite(run) && current > 0 && run > 0;
