import { armAt, hydrostatics, type Hydrostatics } from '../float/index.ts';
import { DEGREE } from '../units/index.ts';
import { floatCase } from './float-case.ts';
import { cylinder, loadAt, upright, wigley } from './float-shapes.ts';
import type { PublishedCase } from './types.ts';

const CIRCLE =
  'derived: the metacentre of a circle is its middle, so GZ = (R - KG) sin h at any heel';
const WIGLEY =
  'Wigley’s parabolic hull, y = B/2 (1 - 4 x2/L2) (1 - z2/T2), integrated: V = 4/9 LBT, A = 2/3 LB, I = 4/105 LB3, Il = BL3/30';
const ORDER = 'derived: straight facets between points of a smooth hull err with the second power';

/** At most 0.1 % from a smooth hull at 41 stations. */
const SMOOTH = { share: 1e-3 };
/** Polygons of 400 corners for half a circle. */
const FINE = { share: 1e-4 };

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

const wigleyVolume = (stations: number, within: number): PublishedCase =>
  floatCase(
    `Wigley hull, ${stations} stations: volume`,
    WIGLEY,
    VOLUME,
    'm3',
    ofWigley((all) => all.volume, stations),
    { share: within },
  );

/** Smooth bodies: the error falls with the second power of the spacing. */
export const CURVED_CASES: readonly PublishedCase[] = [
  floatCase(
    'Cylinder R 0.5, L 4 m, half immersed: volume',
    'derived: V = pi R2 L / 2',
    Math.PI / 2,
    'm3',
    () => hydrostatics(cylinder(4, 0.5, 400), upright(0.5))?.volume,
    FINE,
  ),
  floatCase(
    'the same: KM',
    CIRCLE,
    0.5,
    'm',
    () => hydrostatics(cylinder(4, 0.5, 400), upright(0.5))?.transverseMetacentre,
    FINE,
  ),
  floatCase(
    'Cylinder, 1000 kg at KG 0.3 m: GZ at 40 degrees',
    CIRCLE,
    0.2 * Math.sin(40 * DEGREE),
    'm',
    () => armAt(cylinder(4, 0.5, 400), loadAt(1000, 2, 0, 0.3), 40 * DEGREE)?.arm,
    FINE,
  ),
  floatCase(
    'the same: GZ at 90 degrees',
    CIRCLE,
    0.2,
    'm',
    () => armAt(cylinder(4, 0.5, 400), loadAt(1000, 2, 0, 0.3), 90 * DEGREE)?.arm,
    FINE,
  ),
  wigleyVolume(11, 5e-3),
  wigleyVolume(21, 1.5e-3),
  wigleyVolume(41, 1e-3),
  floatCase(
    'Wigley hull, 41 stations: block coefficient',
    WIGLEY,
    4 / 9,
    '',
    ofWigley((all) => all.coefficients.block),
    SMOOTH,
  ),
  floatCase(
    'the same: {centre} of buoyancy forward of amidships',
    'derived: symmetry fore and aft',
    0,
    'm',
    ofWigley((all) => all.centreOfBuoyancy.x),
    { within: 1e-9 },
  ),
  floatCase(
    'the same: waterplane area',
    WIGLEY,
    5 / 3,
    'm2',
    ofWigley((all) => all.waterplaneArea),
    SMOOTH,
  ),
  floatCase(
    'the same: KB',
    WIGLEY,
    (5 / 8) * 0.3125,
    'm',
    ofWigley((all) => all.buoyancyHeight),
    SMOOTH,
  ),
  floatCase(
    'the same: transverse inertia',
    WIGLEY,
    (4 * 5 * 0.125) / 105,
    'm4',
    ofWigley((all) => all.transverseInertia),
    SMOOTH,
  ),
  floatCase(
    'the same: lengthwise inertia',
    WIGLEY,
    62.5 / 30,
    'm4',
    ofWigley((all) => all.longitudinalInertia),
    SMOOTH,
  ),
  floatCase(
    'the same: wetted surface',
    'derived: the same hull, its surface integral worked numerically',
    3.71977,
    'm2',
    ofWigley((all) => all.wettedSurface),
    FINE,
  ),
  floatCase(
    'Straight lines, 11, 21, 41 stations: order of the volume',
    ORDER,
    2,
    '',
    order((all) => all.volume, VOLUME),
    { within: 0.05 },
  ),
  floatCase(
    'the same: order of the transverse inertia',
    ORDER,
    2,
    '',
    order((all) => all.transverseInertia, (4 * 5 * 0.125) / 105),
    { within: 0.05 },
  ),
];
