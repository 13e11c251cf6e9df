import {
  type AddedDrag,
  bottomFrom,
  type Computed,
  type HullAtRest,
  OUTBOARD_THRUST,
  type Running,
  type Water,
} from '../../performance/index.ts';
import { endsOf, findEquilibrium, hydrostatics } from '../../float/index.ts';
import type { WeightedCentre } from '../../mass/index.ts';
import type { Build } from '../../resolve/index.ts';
import { decimalToNumber, squareMetres } from '../../units/index.ts';
import { whyLost } from '../float/outcome.ts';
import type { FloatFigures } from '../float/types.ts';

type Drag = NonNullable<Build['hull']['performance']['outboardDrag']>;

/** The boat as the planing method sees it. */
export function runningOf(
  build: Build,
  { mass, centre }: WeightedCentre,
  water: Water,
): Computed<Running> {
  const { hull } = build;
  const { chine, hulls } = hull.performance;
  if (chine === 'round' || hulls === 'more')
    return { notComputed: 'the method is for one hull with hard chines' };
  const bottom = bottomFrom(hull.lines);
  if ('notComputed' in bottom) return bottom;
  return {
    hull: { ...bottom, mass, centre: { x: centre.x, z: centre.z }, thrust: OUTBOARD_THRUST },
    water,
    added: dragsOf(build),
  };
}

/** The boat at rest in one loading, as the method before planing sees it. */
export function atRest(
  { afloat }: FloatFigures,
  { mass, centre }: WeightedCentre,
  water: Water,
): Computed<HullAtRest> {
  if (!afloat) return { notComputed: 'the lines make no hull' };
  const body = { ...afloat.body, water: water.density };
  const lies = findEquilibrium(body, { mass, centre });
  if (lies.outcome !== 'floats') return whyLost(lies);
  const [form, ends] = [hydrostatics(body, lies.plane), endsOf(body.hull, lies.plane)];
  if (!form || !ends) return { notComputed: 'the boat is not in the water' };
  const { immersedLength: length, immersedBeam: beam, draught, volume, coefficients } = form;
  const greatest = coefficients.midship * beam * draught;
  const transomShare = Math.min(1, ends.transom / greatest);
  return { length, beam, draught, volume, entrance: ends.entrance, transomShare };
}

/** What drags beside the bottom: boat in the air, and the outboard's leg and the appendages that the files name. */
export function dragsOf({ hull, items }: Build): readonly AddedDrag[] {
  const { airDrag, outboardDrag, appendages } = hull.performance;
  const inWater = (name: string, drag: Drag, quantity = 1): AddedDrag => ({
    name,
    medium: 'water',
    area: squareMetres(drag.area * quantity),
    coefficient: decimalToNumber(drag.coefficient),
  });
  return [
    { ...inWater('boat and people in the air', airDrag), medium: 'air' },
    ...(outboardDrag ? [inWater('the outboard’s leg', outboardDrag)] : []),
    ...appendages.map((one) => inWater(one.name, one)),
    ...items.flatMap(({ name, performance, quantity }) =>
      performance?.appendage ? [inWater(name, performance.appendage, quantity)] : [],
    ),
  ];
}
