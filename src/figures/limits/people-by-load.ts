import { clamp } from '../../maths/index.ts';
import { massOf } from '../../mass/index.ts';
import type { Figures } from '../types.ts';

/**
 * People with their gear that the rated load leaves room for, at most as many as the hull is rated for.
 *
 * @source derived: (rated load - load without people) / (person + gear), whole people
 */
export function peopleByLoad({ build, mass }: Pick<Figures, 'build' | 'mass'>): number {
  const { hull, yard } = build;
  const each = yard.personMass + yard.gearPerPerson;
  const rest =
    hull.ratings.load - (mass.load - massOf(mass.loadings['as ordered'], 'person', 'gear'));
  return clamp(Math.floor(rest / each), 0, hull.ratings.people);
}
