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
import { casesIn } from './case-in.ts';
import { BARGE, loadAt, upright, wedge } from './float-shapes.ts';
import type { PublishedCase } from './types.ts';

const BOX = 'derived: rectangular barge, KB = T / 2, BMt = B2 / 12 T, BMl = L2 / 12 T';
const WALL_SIDED = 'derived: wall-sided formula, GZ = sin h (GM + BM tan2 h / 2)';
const CORNER = 'derived: centroid of the triangle or trapezium that is left of the rectangle';
const SMALL_ANGLES = 'derived: small angles, worked by hand';
const TRIANGLE = 'derived: triangular prism, V = b T L / 2, KB = 2 T / 3, BM = b2 / 6 T';

/** KB + BM at 0.3 m. */
const KM_OF_BARGE = 0.15 + 10 / 9;
const GM_OF_BARGE = KM_OF_BARGE - 0.6;
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

/** Of a body that lies upright at 0.3 m. */
const at30 = (body: FloatingBody, value: (all: Hydrostatics) => number) => () => {
  const all = hydrostatics(body, upright(0.3));
  return all && value(all);
};
const ofBarge = (value: (all: Hydrostatics) => number) => at30(BARGE, value);
const ofWedge = (value: (all: Hydrostatics) => number) => at30(wedge(4, 1.8, 0.6), value);

const float = casesIn('float');
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

const grownTo = (): number | undefined => {
  const at = { x: metres(2.5), y: metres(0), z: metres(0.6) };
  const margin = growthUntil(
    { body: BARGE, load: LADEN, at, openings: [], most: kilograms(3000) },
    { kind: 'freeboard', least: metres(0.4) },
  );
  return margin.outcome === 'met' ? margin.growth : undefined;
};
const heelOf = (...load: Parameters<typeof loadAt>) => degrees(lying(BARGE, loadAt(...load))?.heel);
const FIVE = [{ mass: kilograms(5 * 75), at: loadAt(0, 2.5, 0.8, 0.6).centre }];

const BARGE_CASES: readonly PublishedCase[] = [
  ...float(
    BOX,
    ['Barge 5 x 2 m, 3075 kg: {draught}', 0.3, 'm', () => lying(BARGE, LADEN)?.level],
    ['the same: KB', 0.15, 'm', ofBarge((all) => all.buoyancyHeight)],
    ['the same: KMt', KM_OF_BARGE, 'm', ofBarge((all) => all.transverseMetacentre)],
    ['the same: BMl', 25 / 3.6, 'm', ofBarge((all) => all.longitudinalRadius)],
    ['the same: wetted surface', 14.2, 'm2', ofBarge((all) => all.wettedSurface)],
    ['the same: kg per centimetre', 102.5, 'kg', ofBarge((all) => all.perCentimetre)],
    [
      'the same: GM by KB + BM - KG',
      GM_OF_BARGE,
      'm',
      () => metacentricHeight(BARGE, LADEN)?.byForm,
    ],
    [
      'the same: GM as the slope of the righting arm',
      GM_OF_BARGE,
      'm',
      () => metacentricHeight(BARGE, LADEN)?.bySlope,
      1e-5 * GM_OF_BARGE,
    ],
  ),
  ...float('derived: displacement x GMl / 100 L', [
    'the same: moment to trim one centimetre, with KG 0.6 m',
    (3075 * (0.15 + 25 / 3.6 - 0.6)) / 500,
    'kg.m',
    ofBarge((all) => momentToTrim(all, metres(0.6))),
  ]),
  ...float(WALL_SIDED, [
    'the same: GZ at 10 degrees',
    Math.sin(10 * DEGREE) * (GM_OF_BARGE + (5 / 9) * Math.tan(10 * DEGREE) ** 2),
    'm',
    bargeArm(10),
  ]),
  ...float(
    CORNER,
    ['GZ at 20 degrees, one bilge dry', triangleArm(20), 'm', bargeArm(20)],
    ['GZ at 30 degrees, deck edge under', trapeziumArm(30), 'm', bargeArm(30)],
  ),
  ...float('derived: tan h = y / GM, hardly stiff', [
    'GM 1e-7 m, {centre} of mass 1e-12 m off: heel',
    Math.atan(1e-5) / DEGREE,
    'deg',
    () => heelOf(3075, 2.5, 1e-12, KM_OF_BARGE - 1e-7),
    1e-6 / DEGREE,
  ]),
  ...float('derived: density x L x B x sinkage', [
    'Growth amidships until 0.1 m of freeboard is gone',
    1025,
    'kg',
    grownTo,
    0.01,
  ]),
  ...float('derived: wall-sided formula, tan h = sqrt(-2 GM / BM)', [
    'KG 1.27 m, GM below zero: angle of loll',
    Math.atan(Math.sqrt((2 * (1.27 - KM_OF_BARGE)) / (10 / 9))) / DEGREE,
    'deg',
    () => heelOf(3075, 2.5, 0, 1.27),
    1e-7,
  ]),
  ...float(
    SMALL_ANGLES,
    [
      '100 kg shifted by 1 m forward: trim',
      -0.286901,
      'deg',
      () => degrees(lying(BARGE, SHIFTED)?.trim),
      1e-5,
    ],
    [
      '150 kg added 2 m aft of amidships: trim',
      0.863191,
      'deg',
      () => degrees(lying(BARGE, WITH_150_KG)?.trim),
      2e-4,
    ],
    ['the same: {draught} aft', 0.352301, 'm', () => lying(BARGE, WITH_150_KG)?.level, 5e-5],
  ),
  ...float(
    'derived: displacement x GZ = moment x cos h, wall-sided',
    [
      '80 kg moved by 0.8 m to starboard: heel',
      1.80169,
      'deg',
      () => heelOf(3075, 2.5, (80 * 0.8) / 3075, 0.6),
      1e-5,
    ],
    [
      'Five people of 75 kg at 0.8 m to starboard: heel',
      8.2509,
      'deg',
      () => degrees(lying(BARGE, withMasses(loadAt(2700, 2.5, 0, 0.6), FIVE))?.heel),
      1e-4,
    ],
  ),
  ...float('derived: lost buoyancy, T = V / (area that is left)', [
    'A {metre} amidships open to the sea: {draught}',
    0.375,
    'm',
    () => lying(holed(), LADEN)?.level,
  ]),
  ...float('derived: lost buoyancy, KB = T / 2, BM = I left / V', [
    'the same: GM',
    0.1875 + 8 / 9 - 0.6,
    'm',
    () => metacentricHeight(holed(), LADEN)?.byForm,
  ]),
];

const WEDGE_CASES: readonly PublishedCase[] = [
  ...float(
    TRIANGLE,
    ['V-section, b 1.8, T 0.3, L 4 m: volume', 1.08, 'm3', ofWedge((all) => all.volume)],
    ['the same: KB', 0.2, 'm', ofWedge((all) => all.buoyancyHeight)],
    ['the same: KM', 2, 'm', ofWedge((all) => all.transverseMetacentre)],
  ),
  ...float('derived: T2 / tan(deadrise) x L x density = mass', [
    '1000 kg on 5 m of 15 degrees deadrise: {draught}',
    Math.sqrt((1000 / 1025 / 5) * Math.tan(15 * DEGREE)),
    'm',
    () => lying(wedge(5, 2, 2 * Math.tan(15 * DEGREE)), loadAt(1000, 2.5, 0, 0.4))?.level,
    2e-9,
  ]),
];

/** How bodies float whose answer is known in closed form. */
export const FLOAT_CASES: readonly PublishedCase[] = [
  ...BARGE_CASES,
  ...WEDGE_CASES,
  ...CURVED_CASES,
  ...TANK_CASES,
];
