import { atMost, type Kilograms, kilograms, POUND } from '../units/index.ts';
import { BRAKE_LAWS, type BrakeStep } from './brakes-table.ts';
import type { Computed, Jurisdiction, Margin } from './types.ts';

export interface BrakeInput {
  /** Trailer and load, ball load included. */
  readonly total: Kilograms;
  readonly onBall: Kilograms;
  readonly axles: number;
  /** Kerb mass of the towing vehicle, where it is known. */
  readonly vehicle?: Kilograms;
}

export interface BrakeNeed extends BrakeStep {
  readonly place: Jurisdiction;
  /** Mass that the law's threshold was held against. */
  readonly counted: Kilograms;
  readonly source: string;
  /** What is left before the rules ask for more, or before other rules are the ones to read. */
  readonly margins: readonly Margin[];
  /** What to fit: as `braked`, or more where a stricter reading or another rule of the place asks for it. */
  readonly advised: BrakeStep['braked'];
  /** What else to know: another reading of the law, a rule that this one does not replace. */
  readonly notes: readonly string[];
}

/** How a trailer is braked. */
export interface TrailerBrakes {
  readonly kind: 'none' | 'over-run' | 'electric' | 'hydraulic';
  readonly braked: 'none' | 'one axle' | 'all wheels';
  readonly breakaway: boolean;
}

const STRICTNESS = ['none', 'one axle', 'all wheels'] as const;

/**
 * Brakes that a trailer must have by the mass thresholds of a place.
 *
 * Where two readings of a law stand beside each other (Australia counts the mass on the axles; many count the total),
 * the law's own is returned, the stricter one is noted and advised.
 *
 * @returns `notComputed` above what the rules for small trailers cover
 * @validity light trailers behind cars; thresholds only, not construction or type approval
 * @source each place's own, named in `source`; estimated, to be confirmed with the authority
 */
export function brakesNeeded(place: Jurisdiction, input: BrakeInput): Computed<BrakeNeed> {
  const law = BRAKE_LAWS[place];
  if (!(input.total > 0)) return { notComputed: 'the trailer has no mass' };
  if (input.total > law.covers) {
    return { notComputed: 'it weighs more than the rules for small trailers cover' };
  }
  const counted = law.counts === 'axles' ? input.total - input.onBall : input.total;
  const step = stepFor(place, counted, input);
  return {
    ...step,
    place,
    counted: kilograms(counted),
    source: law.source,
    margins: marginsOf(place, step, counted, input),
    ...besides(place, step, input),
  };
}

function stepFor(place: Jurisdiction, counted: number, input: BrakeInput): BrakeStep {
  const { steps } = BRAKE_LAWS[place];
  const index = steps.findIndex(({ upTo }) => counted <= upTo);
  const step = steps[index] ?? steps.at(-1);
  const next = steps[index + 1];
  const isTandem = place === 'AU' && input.axles > 1;
  const isHeavyForCar =
    place === 'UK-EU' && input.vehicle !== undefined && input.total > input.vehicle / 2;
  if (index === 0 && next && (isTandem || isHeavyForCar)) return next;
  return step ?? { upTo: 0, braked: 'all wheels', overRun: false, breakaway: true };
}

function marginsOf(
  place: Jurisdiction,
  { upTo, braked }: BrakeStep,
  counted: number,
  { total, vehicle }: BrakeInput,
): readonly Margin[] {
  const what = BRAKE_LAWS[place].counts === 'axles' ? 'mass on the axles' : 'whole mass';
  const step = atMost(`${what}, before other rules for brakes`, counted, upTo, 'kg');
  if (place !== 'UK-EU' || braked !== 'none' || vehicle === undefined) return [step];
  return [step, atMost('whole mass, without brakes behind this car', total, vehicle / 2, 'kg')];
}

type Besides = Pick<BrakeNeed, 'advised' | 'notes'>;

/** What stands beside a law's own threshold. */
function besides(place: Jurisdiction, step: BrakeStep, input: BrakeInput): Besides {
  const plain = { advised: step.braked, notes: [] };
  if (place === 'AU') return besidesInAustralia(step, input);
  if (place === 'NZ') return besidesInNewZealand(step, input);
  if (place === 'US') return besidesInStates(step, input);
  return input.vehicle === undefined && step.braked === 'none'
    ? { ...plain, notes: ['only behind a car of at least twice the mass'] }
    : plain;
}

function besidesInAustralia(step: BrakeStep, input: BrakeInput): Besides {
  const { braked } = stepFor('AU', input.total, input);
  if (STRICTNESS.indexOf(braked) <= STRICTNESS.indexOf(step.braked)) {
    return { advised: step.braked, notes: [] };
  }
  return { advised: braked, notes: ['counted with the ball load, as some read the rule'] };
}

function besidesInNewZealand({ braked }: BrakeStep, { total, vehicle }: BrakeInput): Besides {
  const stop = 'vehicle and trailer must stop from 30 km/h within 7 m';
  if (braked !== 'none' || vehicle === undefined || total <= 0.75 * vehicle) {
    return { advised: braked, notes: [stop] };
  }
  const heavy =
    'heavier than three quarters of the vehicle: unlikely to stop in time without brakes';
  return { advised: 'one axle', notes: [stop, heavy] };
}

function besidesInStates({ braked }: BrakeStep, { total }: BrakeInput): Besides {
  return total / POUND > 1500 && braked === 'none'
    ? {
        advised: 'all wheels',
        notes: ['state law decides: some states ask for brakes from 1,500 lb'],
      }
    : { advised: braked, notes: ['state law decides'] };
}

/**
 * What a trailer's brakes lack for a need.
 *
 * @returns one phrase for each fault; empty when they suffice
 * @source derived
 */
export function brakeFaults(need: BrakeNeed, brakes: TrailerBrakes): readonly string[] {
  const lacks = STRICTNESS.indexOf(brakes.braked) < STRICTNESS.indexOf(need.braked);
  const faults: readonly (readonly [boolean, string])[] = [
    [lacks, `brakes on ${need.braked} are needed`],
    [
      need.braked !== 'none' && brakes.kind === 'over-run' && !need.overRun,
      'over-run brakes are not allowed at this mass',
    ],
    [need.breakaway && !brakes.breakaway, 'brakes must come on when the trailer breaks away'],
  ];
  return faults.filter(([wrong]) => wrong).map(([, words]) => words);
}
