import { armAt, hydrostatics, type Hydrostatics } from '../float/index.ts';
import { DEGREE } from '../units/index.ts';
import { casesIn, type Row } from './case-in.ts';
import { cylinder, loadAt, upright, wigley } from './float-shapes.ts';
import type { PublishedCase } from './types.ts';

const CIRCLE =
  'derived: the metacentre of a circle is its middle, so GZ = (R - KG) sin h at any heel';
const WIGLEY =
  'Wigley’s parabolic hull, y = B/2 (1 - 4 x2/L2) (1 - z2/T2), integrated: V = 4/9 LBT, A = 2/3 LB, I = 4/105 LB3, Il = BL3/30';
const ORDER = 'derived: straight facets between points of a smooth hull err with the second power';

const VOLUME = (4 / 9) * 5 * 0.5 * 0.3125;

function ofWigley(value: (all: Hydrostatics) => number, stations = 41): () => number | undefined {
  return () => {
    const all = hydrostatics(wigley(stations, 'curved'), upright(0.3125));
    return all && value(all);
  };
}

/** Order that three resolutions show, each with half the spacing of the one before. */
function order(value: (all: Hydrostatics) => number, exact: number): () => number | undefined {
  return () => {
    const [coarse = 0, , fine = 0] = [11, 21, 41].map((stations) => {
      const all = hydrostatics(wigley(stations), upright(0.3125));
      return all ? Math.abs(value(all) - exact) : 0;
    });
    return Math.log2(coarse / fine) / 2;
  };
}

const float = casesIn('float');
/** A row that is near by a share of its value: 0.1 % from a smooth hull at 41 stations. */
const within = (share: number, [name, value, unit, ours]: Row): Row => [
  name,
  value,
  unit,
  ours,
  share * value,
];
const smooth = (...row: Row): Row => within(1e-3, row);
/** Polygons of 400 corners for half a circle. */
const fine = (...row: Row): Row => within(1e-4, row);
const wigleyVolume = (stations: number, share: number): Row =>
  within(share, [
    `Wigley hull, ${stations} stations: volume`,
    VOLUME,
    'm3',
    ofWigley((all) => all.volume, stations),
  ]);
const ROUND = cylinder(4, 0.5, 400);
const roundArm = (heel: number) => () => armAt(ROUND, loadAt(1000, 2, 0, 0.3), heel * DEGREE)?.arm;
const half = () => hydrostatics(ROUND, upright(0.5));
const INERTIA = (4 * 5 * 0.125) / 105;

/** Smooth bodies: the error falls with the second power of the spacing. */
export const CURVED_CASES: readonly PublishedCase[] = [
  ...float(
    'derived: V = pi R2 L / 2',
    fine('Cylinder R 0.5, L 4 m, half immersed: volume', Math.PI / 2, 'm3', () => half()?.volume),
  ),
  ...float(
    CIRCLE,
    fine('the same: KM', 0.5, 'm', () => half()?.transverseMetacentre),
    fine(
      'Cylinder, 1000 kg at KG 0.3 m: GZ at 40 degrees',
      0.2 * Math.sin(40 * DEGREE),
      'm',
      roundArm(40),
    ),
    fine('the same: GZ at 90 degrees', 0.2, 'm', roundArm(90)),
  ),
  ...float(
    WIGLEY,
    wigleyVolume(11, 5e-3),
    wigleyVolume(21, 1.5e-3),
    wigleyVolume(41, 1e-3),
    smooth(
      'Wigley hull, 41 stations: block coefficient',
      4 / 9,
      '',
      ofWigley((all) => all.coefficients.block),
    ),
    smooth(
      'the same: waterplane area',
      5 / 3,
      'm2',
      ofWigley((all) => all.waterplaneArea),
    ),
    smooth(
      'the same: KB',
      (5 / 8) * 0.3125,
      'm',
      ofWigley((all) => all.buoyancyHeight),
    ),
    smooth(
      'the same: transverse inertia',
      INERTIA,
      'm4',
      ofWigley((all) => all.transverseInertia),
    ),
    smooth(
      'the same: lengthwise inertia',
      62.5 / 30,
      'm4',
      ofWigley((all) => all.longitudinalInertia),
    ),
  ),
  ...float('derived: symmetry fore and aft', [
    'the same: {centre} of buoyancy forward of amidships',
    0,
    'm',
    ofWigley((all) => all.centreOfBuoyancy.x),
    1e-9,
  ]),
  ...float(
    'derived: the same hull, its surface integral worked numerically',
    fine(
      'the same: wetted surface',
      3.71977,
      'm2',
      ofWigley((all) => all.wettedSurface),
    ),
  ),
  ...float(
    ORDER,
    [
      'Straight lines, 11, 21, 41 stations: order of the volume',
      2,
      '',
      order((all) => all.volume, VOLUME),
      0.05,
    ],
    [
      'the same: order of the transverse inertia',
      2,
      '',
      order((all) => all.transverseInertia, INERTIA),
      0.05,
    ],
  ),
];
