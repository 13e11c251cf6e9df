import { type Amperes, amperes, FOOT, type Metres, metres } from '../units/index.ts';
import type { Circuit, Conductor, WiringRules } from './types.ts';
import { ENGINE_SPACE_SHARE, METRIC_AREAS, WIRE_SIZES, type WireSize } from './wire-table.ts';

/** Resistance of hot copper, ohm circular mil per foot: ABYC E-11, the constant K (from memory). */
const OHM_CIRCULAR_MIL_PER_FOOT = 10.75;
const CIRCULAR_MILS_PER_MM2 = 1973.525;

/** Share of the nominal voltage that may be lost, by class of circuit. */
const ALLOWED_DROP = { critical: 0.03, general: 0.1 } as const;

interface Drop {
  readonly current: Amperes;
  /** From the source to the device and back. */
  readonly roundTrip: Metres;
  /** Voltage that may be lost, V. */
  readonly allowedVolts: number;
}

/**
 * Copper needed so that no more than the allowed voltage is lost, CM = K I L / E.
 *
 * @param drop - I, A; L, round trip, m; E, V, above 0
 * @returns circular mils; divide by 1973.525 for mm2
 * @validity direct current, copper, hot conductor: K = 10.75 ohm.CM/ft is 1.787e-8 ohm.m
 * @source ABYC E-11 (formula and K from memory; worked charts of it agree)
 */
export function copperForDrop({ current, roundTrip, allowedVolts }: Drop): number {
  return (OHM_CIRCULAR_MIL_PER_FOOT * current * (roundTrip / FOOT)) / allowedVolts;
}

/**
 * Voltage lost in a conductor of given copper, E = K I L / CM.
 *
 * @returns V
 * @source ABYC E-11 (from memory), the formula of `copperForDrop` turned round
 */
export function voltsLost(current: Amperes, roundTrip: Metres, circularMils: number): number {
  return (OHM_CIRCULAR_MIL_PER_FOOT * current * (roundTrip / FOOT)) / circularMils;
}

/**
 * Share of the ampacity that is left when conductors lie in one bundle.
 *
 * @param conductors - conductors that carry current, from 1
 * @source ABYC E-11 (from memory): 3 conductors 0.70, 4 to 6 0.60, 7 to 24 0.50, more 0.40
 */
export function bundlingShare(conductors: number): number {
  if (conductors < 3) return 1;
  if (conductors === 3) return 0.7;
  if (conductors <= 6) return 0.6;
  return conductors <= 24 ? 0.5 : 0.4;
}

interface Surroundings {
  readonly insulation: WiringRules['insulation'];
  readonly engineSpace: boolean;
  readonly bundled: number;
}

/**
 * Current that a conductor may carry where it lies.
 *
 * @returns A, not rounded
 * @source 33 CFR 183.425 Table 5 and its 0.85 for engine spaces; other shares from memory of ABYC E-11
 */
export function ampacityOf(
  size: WireSize,
  { insulation, engineSpace, bundled }: Surroundings,
): Amperes {
  const heat = engineSpace ? ENGINE_SPACE_SHARE[insulation] : 1;
  return amperes(size.ampacity[insulation] * heat * bundlingShare(bundled));
}

/** Voltage that a circuit may lose, V. */
const allowedVolts = (circuit: Circuit, rules: WiringRules): number =>
  ALLOWED_DROP[circuit.drop] * rules.nominalVolts;

/**
 * Every conductor that carries a circuit's current within its voltage drop, thinnest first. The first is the one to
 * use unless a fuse needs a thicker one.
 *
 * @returns conductors with what they lose and carry; empty when not even the thickest will do
 * @validity 0 A and up, run above 0, one conductor each way (no parallel conductors)
 * @source ABYC E-11 for drop, 33 CFR 183.425 Table 5 for current; the larger of the two sizes governs. Estimated;
 * to be verified by a licensed electrician and by measuring the drop under load
 */
export function conductorsFor(circuit: Circuit, rules: WiringRules): readonly Conductor[] {
  const roundTripMetres = roundTrip(circuit);
  const needed = copperForDrop({
    current: circuit.current,
    roundTrip: roundTripMetres,
    allowedVolts: allowedVolts(circuit, rules),
  });
  const thinnest = WIRE_SIZES.findIndex(({ awg }) => awg === rules.thinnest);
  const byDrop = WIRE_SIZES.findIndex(({ circularMils }) => circularMils >= needed);
  const surroundings = { ...circuit, insulation: rules.insulation };
  const byCurrent = WIRE_SIZES.findIndex(
    (size) => ampacityOf(size, surroundings) >= circuit.current,
  );
  if (byDrop < 0 || byCurrent < 0) return [];
  const first = Math.max(thinnest, byDrop, byCurrent);
  const areas = (rules.stockMm2 ?? METRIC_AREAS).toSorted((a, b) => a - b);
  return WIRE_SIZES.slice(first).flatMap((size, index) => {
    const areaMm2 = areaOf(size);
    const metricMm2 = areas.find((area) => area >= areaMm2);
    if (metricMm2 === undefined) return [];
    const dropVolts = voltsLost(circuit.current, roundTripMetres, size.circularMils);
    return [
      {
        awg: size.awg,
        areaMm2,
        metricMm2,
        ampacity: ampacityOf(size, surroundings),
        dropVolts,
        dropShare: dropVolts / rules.nominalVolts,
        governedBy: index > 0 ? 'fuse' : governing(first, byDrop, byCurrent),
      },
    ];
  });
}

/**
 * Area of a conductor size, mm2.
 *
 * @source ASTM B258: 1 mm2 is 1973.525 circular mils
 */
export function areaOf({ circularMils }: WireSize): number {
  return circularMils / CIRCULAR_MILS_PER_MM2;
}

const roundTrip = ({ run }: Circuit): Metres => metres(2 * run);

function governing(first: number, byDrop: number, byCurrent: number): Conductor['governedBy'] {
  if (first === byDrop && byDrop >= byCurrent) return 'drop';
  return first === byCurrent ? 'ampacity' : 'thinnest';
}
