import { parseQuantity, type UnitKind } from '../units/index.ts';
import type { PublishedCase } from './types.ts';

const YARD_AND_POUND =
  'International yard and pound agreement, 1959, and NIST SP 811, appendix B.8, as printed';
const SP_811 = 'NIST Special Publication 811 (2008), appendix B.8, as printed';

function conversion(
  kind: UnitKind,
  written: string,
  published: number,
  unit: string,
  tolerance: number,
  source: string,
): PublishedCase {
  return {
    area: 'units',
    name: `${written} in ${unit}`,
    source,
    published,
    unit,
    tolerance,
    ours: () => {
      const parsed = parseQuantity(kind, written, unit);
      return parsed.problem === undefined ? parsed.value : Number.NaN;
    },
  };
}

/** Units as files may write them against the tables that define them. */
export const UNIT_CASES: readonly PublishedCase[] = [
  conversion('length', '1 ft', 0.3048, 'm', 1e-15, YARD_AND_POUND),
  conversion('length', '14 ft 9 in', 4.4958, 'm', 1e-12, 'derived: 14.75 × 0.3048'),
  conversion('mass', '1 lb', 0.45359237, 'kg', 1e-15, YARD_AND_POUND),
  conversion('mass', '1 oz', 0.028349523, 'kg', 5e-10, SP_811),
  conversion('power', '1 hp', 745.6999, 'W', 5e-5, `${SP_811} (horsepower, 550 ft.lbf/s)`),
  conversion('power', '1 PS', 735.4988, 'W', 5e-5, `${SP_811} (horsepower, metric)`),
  conversion('volume', '1 US gal', 0.003785412, 'm3', 5e-10, SP_811),
  conversion('volume', '1 imp gal', 0.00454609, 'm3', 1e-15, SP_811),
  conversion('speed', '1 kn', 0.5144444, 'm/s', 5e-8, SP_811),
  conversion('speed', '1 mph', 0.44704, 'm/s', 1e-15, SP_811),
  conversion('density', '1 lb/ft3', 16.01846, 'kg/m3', 5e-6, SP_811),
  conversion('angle', '180 deg', Math.PI, 'rad', 1e-15, 'derived: half a turn'),
];
