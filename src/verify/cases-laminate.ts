import {
  combinedFibreFraction,
  fibreByVolume,
  fillTime,
  glassProperties,
  layerThickness,
  layUpOf,
  mixingTable,
  plateFactors,
  radialFillTime,
  resinPerArea,
  stiffnessOf,
  stripArea,
  thinSkinStiffness,
  wrinklingStress,
} from '../laminate/index.ts';
import { kilograms, metres } from '../units/index.ts';
import { casesIn, type Row } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const THICKNESS = 'ISO 12215-5:2008 Annex C (from memory): t = (w / 3.072)(2.56 / psi - 1.36) mm';
const DEFAULTS = 'ISO 12215-5:2008 Annex C, default properties (from memory)';
const MIXTURES = 'derived, rule of mixtures, worked by hand';
const BEAM = 'classical sandwich theory (Allen, 1969, ch. 2), worked by hand';
const DARCY = 'Darcy’s law, closed form, worked by hand';
const TIMOSHENKO =
  'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., Table 35 (from memory)';

const MM = 0.001;
const MPA = 1e6;
const FLOW = { porosity: 0.5, viscosity: 0.2, permeability: 1e-9, pressure: 95_000 };
const SKIN = { thickness: metres(0.002), modulus: 14_000 * MPA };

const sandwich = (): number =>
  stiffnessOf([SKIN, { thickness: metres(0.015), modulus: 0 }, SKIN]).stiffness;

function propertyAt(fibreFraction: number, name: 'modulus' | 'tension' | 'flexure'): number {
  const glass = glassProperties(fibreFraction);
  return 'notComputed' in glass ? Number.NaN : glass[name] / MPA;
}

function plate(aspect: number, name: 'moment' | 'deflection'): number {
  const factors = plateFactors(aspect);
  if ('notComputed' in factors) return Number.NaN;
  // The tables are for Poisson's ratio 0.3: M = beta P b^2, w = alpha P b^4 / D, D = E t^3 / (12 (1 - 0.09)).
  return name === 'moment' ? factors.moment / 6 : factors.deflection / (12 * (1 - 0.09));
}

function sandwichMass(): number {
  const skin = { kind: 'fabric', name: 'skin', fibrePerArea: 1.2, fibreFraction: 0.55 } as const;
  const core = {
    kind: 'core',
    name: 'foam',
    thickness: metres(0.015),
    density: 80,
    uptakePerFace: 0.5,
  } as const;
  const layUp = layUpOf([skin, core, skin]);
  return 'notComputed' in layUp ? Number.NaN : layUp.total;
}

function catalyst(unit: 'catalystGrams' | 'catalystMillilitres'): number {
  const table = mixingTable({
    catalyst: { least: 0.01, most: 0.02, density: 1.15 },
    share: 0.015,
    celsius: 20,
    gelMinutes: [{ celsius: 20, value: 30 }],
    potShare: 0.5,
    kilogramsAMinute: 1,
    largestBatch: kilograms(10),
    batches: [kilograms(5)],
  });
  return 'notComputed' in table ? Number.NaN : (table.rows[0]?.[unit] ?? Number.NaN);
}

/** Both sides of a V whose sections are all alike: two planes of known area. */
function planeArea(): number {
  const section = (x: number) => ({
    x: metres(x),
    points: [
      [metres(0), metres(0)],
      [metres(0.6), metres(0.8)],
    ] as const,
  });
  return stripArea([section(0), section(1), section(3)], 0, 1);
}

const laminate = casesIn('laminate');

const thickness = (w: number, psi: number, published: number, name: string): Row => [
  `${name}: thickness`,
  published,
  'mm',
  () => layerThickness(w, psi) / MM,
  5e-5,
];
const ONE_PLY = [
  { fibrePerArea: 0.45, fibreFraction: 0.3 },
  { fibrePerArea: 0.6, fibreFraction: 0.48 },
];
const CORE = {
  compressiveModulus: 90 * MPA,
  shearModulus: 27 * MPA,
  shearStrength: 1.15 * MPA,
};

/** Lay-ups, plates and resin flow against the standard's relations and textbook solutions. */
export const LAMINATE_CASES: readonly PublishedCase[] = [
  ...laminate(
    THICKNESS,
    thickness(0.45, 0.3, 1.0508, '450 g/m2 mat by hand, 30 % {fibre}'),
    thickness(0.6, 0.48, 0.776, '600 g/m2 woven by hand, 48 % {fibre}'),
    thickness(0.6, 0.58, 0.5964, '600 g/m2 infused, 58 % {fibre}'),
    thickness(0.6, 0.65, 0.5036, '600 g/m2 infused, 65 % {fibre}'),
    thickness(1, 0.55, 1.0724, '1 kg/m2, 55 % {fibre}'),
  ),
  ...laminate(
    MIXTURES,
    ['450 g/m2 mat, 30 % {fibre}: resin', 1.05, 'kg/m2', () => resinPerArea(0.45, 0.3)],
    ['600 g/m2 infused, 58 % {fibre}: resin', 0.4345, 'kg/m2', () => resinPerArea(0.6, 0.58), 5e-5],
    ['30 % {fibre} by mass is by volume', 0.167_286, '', () => fibreByVolume(0.3), 5e-7],
    ['65 % {fibre} by mass is by volume', 0.465_394, '', () => fibreByVolume(0.65), 5e-7],
    [
      '450 g/m2 mat with 600 g/m2 woven: {fibre} by mass',
      0.381_818,
      '',
      () => combinedFibreFraction(ONE_PLY),
      5e-7,
    ],
    ['Skins 1.2 kg/m2 at 55 % on 15 mm of 80 kg/m3', 6.563_64, 'kg/m2', sandwichMass, 5e-6],
    ['1.5 % peroxide for 5 kg of resin: mass', 75, 'g', () => catalyst('catalystGrams')],
    [
      '1.5 % peroxide for 5 kg of resin: volume at 1.15 g/mL',
      65.22,
      'mL',
      () => catalyst('catalystMillilitres'),
      5e-3,
    ],
  ),
  ...laminate(
    DEFAULTS,
    ['Modulus at 30 % {fibre}', 6400, 'MPa', () => propertyAt(0.3, 'modulus')],
    ['Tensile strength at 48 % {fibre}', 182.92, 'MPa', () => propertyAt(0.48, 'tension')],
    ['Flexural strength at 30 % {fibre}', 152.18, 'MPa', () => propertyAt(0.3, 'flexure')],
  ),
  ...laminate(
    BEAM,
    [
      'Thin skins of 2 mm on 15 mm: stiffness',
      4046,
      'N.m',
      () => thinSkinStiffness(SKIN.modulus, SKIN.thickness, metres(0.015)),
    ],
    ['The same with the skins’ own stiffness', 4064.67, 'N.m', sandwich, 5e-3],
    [
      'Solid 4 mm of the same skins: stiffness',
      74.6667,
      'N.m',
      () => stiffnessOf([SKIN, SKIN]).stiffness,
      5e-5,
    ],
  ),
  ...laminate('Hoff and Mautner (1945), design constant 0.5, worked by hand', [
    'Skin of 16 GPa on a core of 90 and 27 MPa: wrinkling',
    169.386,
    'MPa',
    () => wrinklingStress(16_000 * MPA, CORE) / MPA,
    5e-3,
  ]),
  ...laminate(
    TIMOSHENKO,
    ['Clamped square plate: edge moment', 0.0513, 'P b2', () => plate(1, 'moment'), 1e-4],
    ['Clamped plate 1.5 to 1: edge moment', 0.0757, 'P b2', () => plate(1.5, 'moment'), 1.5e-4],
    ['Clamped plate 2 to 1: edge moment', 0.0829, 'P b2', () => plate(2, 'moment'), 3e-4],
    ['Clamped square plate: deflection', 0.001_26, 'P b4/D', () => plate(1, 'deflection'), 2e-5],
    ['Clamped plate 1.5 to 1: deflection', 0.0022, 'P b4/D', () => plate(1.5, 'deflection'), 3e-5],
  ),
  ...laminate(
    DARCY,
    ['Resin over 0.5 m from a feed line', 131.579, 's', () => fillTime(FLOW, metres(0.5)), 5e-4],
    ['Resin over 1.5 m from a feed line', 1184.21, 's', () => fillTime(FLOW, metres(1.5)), 5e-3],
    [
      'Resin to 1 m from a point of 10 mm radius',
      2160.64,
      's',
      () => radialFillTime(FLOW, metres(1), metres(0.01)),
      5e-3,
    ],
  ),
  ...laminate('derived: a plane 3 m long, 0.6 m out and 0.8 m up, on both sides', [
    'Two slanting planks 3 m by 1 m: area',
    6,
    'm2',
    planeArea,
  ]),
];
