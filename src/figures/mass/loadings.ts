import { centreOf, type MassResult, type WeightedCentre } from '../../mass/index.ts';
import { type Build, type BuildItem, outboardCentre } from '../../resolve/index.ts';
import { kilograms } from '../../units/index.ts';
import { seatsFor } from '../float/input.ts';
import { looseGear } from './input.ts';
import type { FloatFigures } from '../float/types.ts';

/** A boat with her people, as she runs. */
export interface Loading extends WeightedCentre {
  readonly name: 'light' | 'loaded' | 'light with ballast' | 'loaded with ballast';
  readonly people: number;
}

/** True when she is steered by a wheel. */
export const hasHelm = (items: readonly BuildItem[], what: 'wheel' | 'remote-control'): boolean =>
  items.some(({ performance }) => performance?.helm === what);

/**
 * Light: ready, and one person at the helm. Loaded: ready, and everyone ordered for with their gear; both once more
 * with the water of the ballast tank, when it holds any.
 */
export function loadingsOf(
  build: Build,
  { ready }: Pick<MassResult, 'ready'>,
  { afloat }: FloatFigures,
): readonly Loading[] {
  const boat = { mass: ready.mass, at: ready.centre };
  const water = afloat?.ballast?.effect?.water;
  const of = (name: 'light' | 'loaded', people: number): readonly Loading[] => {
    const crew = peopleOf(build, people);
    const dry = { name, people, ...centreOf([boat, ...crew]) };
    if (!water) return [dry];
    const wet = centreOf([boat, ...crew, { mass: water.mass, at: water.centre }]);
    return [dry, { name: `${name} with ballast`, people, ...wet }];
  };
  return [...of('light', 1), ...of('loaded', build.order.boat.people)];
}

/** People in their seats, and their gear where the hull stows it. */
function peopleOf(build: Build, people: number) {
  const crew = seatsFor(build, people).map((at) => ({ mass: build.yard.personMass, at }));
  return [...crew, looseGear(build, people)];
}

/** The same with another outboard, or one where there was none. */
export function withOutboard(
  loading: Loading,
  { items, hull, outboard }: Build,
  mass: number,
): WeightedCentre {
  const hung = items.find(({ kind }) => kind === 'outboard')?.at;
  const at = hung ?? outboardCentre(hull.dimensions);
  const other = { mass: kilograms(mass - (outboard?.mass ?? 0)), at };
  return centreOf([{ mass: loading.mass, at: loading.centre }, other]);
}
