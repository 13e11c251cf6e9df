import {
  armAt,
  findEquilibrium,
  type FloatingBody,
  growthUntil,
  hydrostatics,
  type Hydrostatics,
  type Load,
  metacentricHeight,
  momentToTrim,
  tankForm,
  type WaterPlane,
  withMasses,
} from '../float/index.ts';
import { DEGREE, kilograms, metres } from '../units/index.ts';
import { CURVED_CASES } from './cases-float-curved.ts';
import { TANK_CASES } from './cases-float-tanks.ts';
import { floatCase } from './float-case.ts';
import { BARGE, loadAt, upright, wedge } from './float-shapes.ts';
import type { PublishedCase } from './types.ts';

const BOX = 'derived: rectangular barge, KB = T / 2, BMt = B2 / 12 T, BMl = L2 / 12 T';
const WALL_SIDED = 'derived: wall-sided formula, GZ = sin h (GM + BM tan2 h / 2)';
const CORNER = 'derived: centroid of the triangle or trapezium that is left of the rectangle';
const SMALL_ANGLES = 'derived: small angles, worked by hand';
const TRIANGLE = 'derived: triangular prism, V = b T L / 2, KB = 2 T / 3, BM = b2 / 6 T';

/** KB + BM at 0.3 m. */
const KM_OF_BARGE = 0.15 + 2 ** 2 / (12 * 0.3);
const LADEN = loadAt(3075, 2.5, 0, 0.6);
const SHIFTED = loadAt(3075, 2.5 + 100 / 3075, 0, 0.6);
const WITH_150_KG = loadAt(
  3225,
  (3075 * 2.5 + 150 * 0.5) / 3225,
  0,
  (3075 * 0.6 + 150 * 0.7) / 3225,
);

function lying(body: FloatingBody, load: Load): WaterPlane | undefined {
  const result = findEquilibrium(body, load);
  return result.outcome === 'floats' ? result.plane : undefined;
}

function ofBarge(value: (all: Hydrostatics) => number): () => number | undefined {
  return () => {
    const all = hydrostatics(BARGE, upright(0.3));
    return all && value(all);
  };
}

function ofWedge(value: (all: Hydrostatics) => number): () => number | undefined {
  return () => {
    const all = hydrostatics(wedge(4, 1.8, 0.6), upright(0.3));
    return all && value(all);
  };
}

const degrees = (angle: number | undefined): number | undefined =>
  angle === undefined ? undefined : angle / DEGREE;

const bargeArm = (heel: number) => (): number | undefined =>
  armAt(BARGE, LADEN, heel * DEGREE)?.arm;

/** Arm of the barge when one bilge is dry: the bottom is wet over `bottom`, the deck over `deck`. */
function cornerArm(heel: number, bottom: number, deck: number, height: number): number {
  const [sine, cosine] = [Math.sin(heel * DEGREE), Math.cos(heel * DEGREE)];
  const sum = bottom + deck;
  const across = 1 - (bottom ** 2 + bottom * deck + deck ** 2) / (3 * sum);
  const up = (height * (bottom + 2 * deck)) / (3 * sum);
  return across * cosine + (up - 0.6) * sine;
}

/** 0.6 m2 of section in a triangle on the bottom and one side. */
function triangleArm(heel: number): number {
  const bottom = Math.sqrt(1.2 / Math.tan(heel * DEGREE));
  return cornerArm(heel, bottom, 0, bottom * Math.tan(heel * DEGREE));
}

/** The same area in a trapezium from bottom to deck, 0.8 m high. */
function trapeziumArm(heel: number): number {
  const difference = 0.8 / Math.tan(heel * DEGREE);
  return cornerArm(heel, (1.5 + difference) / 2, (1.5 - difference) / 2, 0.8);
}

/** The barge with a metre amidships open to the sea over its whole breadth and depth. */
function holed(): FloatingBody {
  const form = tankForm(BARGE.hull, { from: metres(2), to: metres(3), top: metres(0.8) });
  return { ...BARGE, flooded: form ? [{ form, permeability: 1 }] : [] };
}

const BARGE_CASES: readonly PublishedCase[] = [
  floatCase('Barge 5 x 2 m, 3075 kg: {draught}', BOX, 0.3, 'm', () => lying(BARGE, LADEN)?.level),
  floatCase(
    'the same: KB',
    BOX,
    0.15,
    'm',
    ofBarge((all) => all.buoyancyHeight),
  ),
  floatCase(
    'the same: KMt',
    BOX,
    0.15 + 10 / 9,
    'm',
    ofBarge((all) => all.transverseMetacentre),
  ),
  floatCase(
    'the same: BMl',
    BOX,
    25 / 3.6,
    'm',
    ofBarge((all) => all.longitudinalRadius),
  ),
  floatCase(
    'the same: wetted surface',
    BOX,
    14.2,
    'm2',
    ofBarge((all) => all.wettedSurface),
  ),
  floatCase(
    'the same: kg per centimetre',
    BOX,
    102.5,
    'kg',
    ofBarge((all) => all.perCentimetre),
  ),
  floatCase(
    'the same: moment to trim one centimetre, with KG 0.6 m',
    'derived: displacement x GMl / 100 L',
    (3075 * (0.15 + 25 / 3.6 - 0.6)) / 500,
    'kg.m',
    ofBarge((all) => momentToTrim(all, metres(0.6))),
  ),
  floatCase(
    'the same: GM by KB + BM - KG',
    BOX,
    0.15 + 10 / 9 - 0.6,
    'm',
    () => metacentricHeight(BARGE, LADEN)?.byForm,
  ),
  floatCase(
    'the same: GM as the slope of the righting arm',
    BOX,
    0.15 + 10 / 9 - 0.6,
    'm',
    () => metacentricHeight(BARGE, LADEN)?.bySlope,
    { share: 1e-5 },
  ),
  floatCase(
    'the same: GZ at 10 degrees',
    WALL_SIDED,
    Math.sin(10 * DEGREE) * (0.15 + 10 / 9 - 0.6 + (5 / 9) * Math.tan(10 * DEGREE) ** 2),
    'm',
    bargeArm(10),
  ),
  floatCase('GZ at 20 degrees, one bilge dry', CORNER, triangleArm(20), 'm', bargeArm(20)),
  floatCase('GZ at 30 degrees, deck edge under', CORNER, trapeziumArm(30), 'm', bargeArm(30)),
  floatCase(
    'GM 1e-7 m, {centre} of mass 1e-12 m off: heel',
    'derived: tan h = y / GM, hardly stiff',
    Math.atan(1e-5) / DEGREE,
    'deg',
    () => degrees(lying(BARGE, loadAt(3075, 2.5, 1e-12, KM_OF_BARGE - 1e-7))?.heel),
    { within: 1e-6 / DEGREE },
  ),
  floatCase(
    'Growth amidships until 0.1 m of freeboard is gone',
    'derived: density x L x B x sinkage',
    1025,
    'kg',
    () => {
      const at = { x: metres(2.5), y: metres(0), z: metres(0.6) };
      const most = kilograms(3000);
      const margin = growthUntil(
        { body: BARGE, load: LADEN, at, openings: [], most },
        { kind: 'freeboard', least: metres(0.4) },
      );
      return margin.outcome === 'met' ? margin.growth : undefined;
    },
    { within: 0.01 },
  ),
  floatCase(
    'KG 1.27 m, GM below zero: angle of loll',
    'derived: wall-sided formula, tan h = sqrt(-2 GM / BM)',
    Math.atan(Math.sqrt((2 * (1.27 - 0.15 - 10 / 9)) / (10 / 9))) / DEGREE,
    'deg',
    () => degrees(lying(BARGE, loadAt(3075, 2.5, 0, 1.27))?.heel),
    { share: 1e-8 },
  ),
  floatCase(
    '100 kg shifted by 1 m forward: trim',
    SMALL_ANGLES,
    -0.286901,
    'deg',
    () => degrees(lying(BARGE, SHIFTED)?.trim),
    { within: 1e-5 },
  ),
  floatCase(
    '80 kg moved by 0.8 m to starboard: heel',
    'derived: displacement x GZ = moment x cos h, wall-sided',
    1.80169,
    'deg',
    () => degrees(lying(BARGE, loadAt(3075, 2.5, (80 * 0.8) / 3075, 0.6))?.heel),
    { within: 1e-5 },
  ),
  floatCase(
    '150 kg added 2 m aft of amidships: trim',
    SMALL_ANGLES,
    0.863191,
    'deg',
    () => degrees(lying(BARGE, WITH_150_KG)?.trim),
    { within: 2e-4 },
  ),
  floatCase(
    'the same: {draught} aft',
    SMALL_ANGLES,
    0.352301,
    'm',
    () => lying(BARGE, WITH_150_KG)?.level,
    { within: 5e-5 },
  ),
  floatCase(
    'Five people of 75 kg at 0.8 m to starboard: heel',
    'derived: displacement x GZ = moment x cos h, wall-sided',
    8.2509,
    'deg',
    () =>
      degrees(
        lying(
          BARGE,
          withMasses(loadAt(2700, 2.5, 0, 0.6), [
            { mass: kilograms(5 * 75), at: loadAt(0, 2.5, 0.8, 0.6).centre },
          ]),
        )?.heel,
      ),
    { within: 1e-4 },
  ),
  floatCase(
    'A {metre} amidships open to the sea: {draught}',
    'derived: lost buoyancy, T = V / (area that is left)',
    0.375,
    'm',
    () => lying(holed(), LADEN)?.level,
  ),
  floatCase(
    'the same: GM',
    'derived: lost buoyancy, KB = T / 2, BM = I left / V',
    0.1875 + 8 / 9 - 0.6,
    'm',
    () => metacentricHeight(holed(), LADEN)?.byForm,
  ),
];

const WEDGE_CASES: readonly PublishedCase[] = [
  floatCase(
    'V-section, b 1.8, T 0.3, L 4 m: volume',
    TRIANGLE,
    1.08,
    'm3',
    ofWedge((all) => all.volume),
  ),
  floatCase(
    'the same: KB',
    TRIANGLE,
    0.2,
    'm',
    ofWedge((all) => all.buoyancyHeight),
  ),
  floatCase(
    'the same: KM',
    TRIANGLE,
    2,
    'm',
    ofWedge((all) => all.transverseMetacentre),
  ),
  floatCase(
    '1000 kg on 5 m of 15 degrees deadrise: {draught}',
    'derived: T2 / tan(deadrise) x L x density = mass',
    Math.sqrt((1000 / 1025 / 5) * Math.tan(15 * DEGREE)),
    'm',
    () => lying(wedge(5, 2, 2 * Math.tan(15 * DEGREE)), loadAt(1000, 2.5, 0, 0.4))?.level,
    { share: 1e-8 },
  ),
];

/** How bodies float whose answer is known in closed form. */
export const FLOAT_CASES: readonly PublishedCase[] = [
  ...BARGE_CASES,
  ...WEDGE_CASES,
  ...CURVED_CASES,
  ...TANK_CASES,
];
