import { clamp } from '../maths/index.ts';
import { DEGREE, type Kilograms, type Metres, type Radians } from '../units/index.ts';
import { plateFactors } from './plate.ts';
import type { Section } from './section.ts';
import type { NotComputed } from './types.ts';

export type DesignCategory = 'A' | 'B' | 'C' | 'D';

/** Design category factor kDC. */
const CATEGORY_FACTOR: Readonly<Record<DesignCategory, number>> = { A: 1, B: 0.8, C: 0.6, D: 0.4 };
/** Share of the ultimate strength that is used. */
const DESIGN_SHARE = 0.5;
/** Deflection of a sandwich over its short side, at most. */
const SANDWICH_DEFLECTION = 0.017;

/** The boat as the pressure formulas see it. */
export interface PlaningBoat {
  readonly waterline: Metres;
  readonly chineBeam: Metres;
  readonly loadedMass: Kilograms;
  readonly speedKnots: number;
  /** At four tenths of the waterline from aft. */
  readonly deadrise: Radians;
  readonly category: DesignCategory;
}

/** A flat piece of bottom between stiffeners. */
export interface BottomPanel {
  readonly short: Metres;
  readonly long: Metres;
  /** Middle of it, forward of the aft end of the waterline. */
  readonly forward: Metres;
}

export interface BottomPressure {
  /** Vertical acceleration, in g. */
  readonly acceleration: number;
  /** Pa */
  readonly base: number;
  /** After the factors for the panel's size and place, and not below the least; Pa. */
  readonly design: number;
  readonly areaFactor: number;
  readonly lengthFactor: number;
}

/** One comparison: above 1 the panel wants another look. */
export interface ScreeningRow {
  readonly what: 'bending' | 'core shear' | 'deflection';
  readonly needed: number;
  readonly available: number;
  readonly unit: 'N.m/m' | 'N/m' | 'm';
  readonly use: number;
}

export interface Screening {
  readonly pressure: BottomPressure;
  readonly rows: readonly ScreeningRow[];
}

/**
 * Bottom pressure of a planing boat on one panel.
 *
 * nCG = 0.32 (LWL / (10 BC) + 0.084) (50 - beta) V^2 BC^2 / m, beta taken from 10 to 30 deg; above 3 the value
 * 0.5 V / m^0.17 stands instead, from 3 to 7. P = 0.1 m / (LWL BC) (1 + kDC^0.5 nCG) kPa, times kAR for the panel's
 * size (0.25 to 1) and kL for its place (nCG taken from 3 to 6), and not below 0.45 m^0.33 + 0.9 LWL kDC.
 *
 * @returns pressures in Pa, acceleration in g; `notComputed` outside the validity
 * @validity monohull, waterline from 2.5 to 24 m, speed up to 50 kn, planing: V above 5 sqrt(LWL)
 * @source ISO 12215-5:2008, clauses 7 and 8 (from memory, not read again). Estimated; to be confirmed by a designer
 */
export function bottomPressure(
  boat: PlaningBoat,
  panel: BottomPanel,
): BottomPressure | NotComputed {
  const { waterline, chineBeam, loadedMass, speedKnots, category } = boat;
  if (!(waterline >= 2.5 && waterline <= 24 && chineBeam > 0 && loadedMass > 0)) {
    return { notComputed: 'the pressure formula holds for waterlines from 2.5 m to 24 m' };
  }
  if (!(speedKnots > 5 * Math.sqrt(waterline) && speedKnots <= 50)) {
    return { notComputed: 'the pressure formula holds for planing boats up to 50 kn' };
  }
  if (!(panel.short > 0 && panel.long >= panel.short)) {
    return { notComputed: 'the panel’s long side must not be shorter than its short side' };
  }
  const kDC = CATEGORY_FACTOR[category];
  const acceleration = verticalAcceleration(boat);
  const base = ((100 * loadedMass) / (waterline * chineBeam)) * (1 + Math.sqrt(kDC) * acceleration);
  const areaFactor = sizeFactor(panel, loadedMass);
  const lengthFactor = placeFactor(panel.forward / waterline, acceleration);
  const least = 450 * loadedMass ** 0.33 + 900 * waterline * kDC;
  const design = Math.max(base * areaFactor * lengthFactor, least);
  return { acceleration, base, design, areaFactor, lengthFactor };
}

/**
 * Holds a panel's strength against the pressure on it: bending always, core shear and deflection for a sandwich.
 *
 * @param section - of the lay-up; half of its ultimate strength is used
 * @returns rows with needed over available; a sandwich whose core has no data gets no shear row
 * @source clamped-plate theory as in ISO 12215-5:2008 clause 10 (from memory), flat panel, no credit for curvature.
 * A screening, estimated; verify by a full calculation and by test. Never a proof that a rule is met
 */
export function screenBottom(
  boat: PlaningBoat,
  panel: BottomPanel,
  section: Section,
  sandwich: boolean,
): Screening | NotComputed {
  const pressure = bottomPressure(boat, panel);
  if ('notComputed' in pressure) return pressure;
  const factors = plateFactors(panel.long / panel.short);
  if ('notComputed' in factors) return factors;
  const { design } = pressure;
  const row = (
    what: ScreeningRow['what'],
    needed: number,
    available: number,
    unit: ScreeningRow['unit'],
  ): ScreeningRow => ({ what, needed, available, unit, use: needed / available });
  const rows = [
    row(
      'bending',
      (factors.moment * design * panel.short ** 2) / 6,
      DESIGN_SHARE * section.moment,
      'N.m/m',
    ),
  ];
  if (section.shear !== undefined) {
    const needed = factors.shear * design * panel.short;
    rows.push(row('core shear', needed, DESIGN_SHARE * section.shear, 'N/m'));
  }
  if (sandwich) {
    const needed = (factors.deflection * design * panel.short ** 4) / (12 * section.stiffness);
    rows.push(row('deflection', needed, SANDWICH_DEFLECTION * panel.short, 'm'));
  }
  return { pressure, rows };
}

function verticalAcceleration(boat: PlaningBoat): number {
  const { waterline, chineBeam, loadedMass, speedKnots } = boat;
  const deadrise = clamp(boat.deadrise / DEGREE, 10, 30);
  const slow =
    0.32 *
    (waterline / (10 * chineBeam) + 0.084) *
    (50 - deadrise) *
    ((speedKnots ** 2 * chineBeam ** 2) / loadedMass);
  if (slow <= 3) return slow;
  return clamp((0.5 * speedKnots) / loadedMass ** 0.17, 3, 7);
}

/** kAR: a large panel never meets the peak pressure all over. */
function sizeFactor({ short, long }: BottomPanel, loadedMass: Kilograms): number {
  const area = Math.min(short * long, 2.5 * short ** 2);
  const kR = 1.5 - 0.3 * short;
  return clamp((kR * 0.1 * loadedMass ** 0.15) / area ** 0.3, 0.25, 1);
}

/** kL: pressure falls off towards the transom. */
function placeFactor(share: number, acceleration: number): number {
  if (share > 0.6) return 1;
  const n = clamp(acceleration, 3, 6);
  return Math.min(1, ((1 - 0.167 * n) / 0.6) * share + 0.167 * n);
}
