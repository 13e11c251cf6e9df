import { parseQuantity, type UnitKind } from '../units/index.ts';
import { casesIn, type Row } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const SP_811 = 'NIST Special Publication 811 (2008), appendix B.8, as printed';

const units = casesIn('units');

const read = (
  kind: UnitKind,
  written: string,
  published: number,
  unit: string,
  tolerance = 1e-15,
): Row => [
  `${written} in ${unit}`,
  published,
  unit,
  () => {
    const parsed = parseQuantity(kind, written, unit);
    return parsed.problem === undefined ? parsed.value : undefined;
  },
  tolerance,
];

/** Units as files may write them against the tables that define them. */
export const UNIT_CASES: readonly PublishedCase[] = [
  ...units(
    'International yard and pound agreement, 1959, and NIST SP 811, appendix B.8, as printed',
    read('length', '1 ft', 0.3048, 'm'),
    read('mass', '1 lb', 0.45359237, 'kg'),
  ),
  ...units(
    SP_811,
    read('mass', '1 oz', 0.028349523, 'kg', 5e-10),
    read('volume', '1 US gal', 0.003785412, 'm3', 5e-10),
    read('volume', '1 imp gal', 0.00454609, 'm3'),
    read('speed', '1 kn', 0.5144444, 'm/s', 5e-8),
    read('speed', '1 mph', 0.44704, 'm/s'),
    read('density', '1 lb/ft3', 16.01846, 'kg/m3', 5e-6),
  ),
  ...units(`${SP_811} (horsepower, 550 ft.lbf/s)`, read('power', '1 hp', 745.6999, 'W', 5e-5)),
  ...units(`${SP_811} (horsepower, metric)`, read('power', '1 PS', 735.4988, 'W', 5e-5)),
  ...units('derived: 14.75 × 0.3048', read('length', '14 ft 9 in', 4.4958, 'm', 1e-12)),
  ...units('derived: half a turn', read('angle', '180 deg', Math.PI, 'rad')),
];
