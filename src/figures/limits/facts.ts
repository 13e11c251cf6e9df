import { DEGREE } from '../../units/index.ts';
import { type Fact, factsOf, valueOf } from '../facts/fact.ts';
import { dashedName } from '../facts/names.ts';
import type { Figures } from '../types.ts';

const limits = factsOf('limits');
const PEOPLE = limits('customer', 'people', '*.people', 'People by a method', 'rating');
const LOAD = limits('customer', 'mass', '*.load', 'Load by a method', 'rating');
const BY_LOAD = limits(
  'customer',
  'people',
  'people-by-load',
  'People within the rated load',
  'peopleByLoad',
);
const POWER = limits('customer', 'power', '*.power', 'Power by a method', 'rating');
const COUNTED = limits(
  'office',
  'mass',
  'iso.as-ordered.load',
  'Load as ISO counts it',
  'loadCounted',
);
const GREATEST = limits(
  'office',
  'mass',
  'iso.as-ordered.greatest',
  'The same with what is in fixed tanks',
  'loadCounted',
);
const ISO_LEFT = limits(
  'office',
  'mass',
  'iso.as-ordered.left',
  'Left of the load by ISO',
  'loadCounted',
);
const LENGTH_LEFT = limits('office', 'length', 'category.*', 'Left of a limit', 'category');
const ANGLE_LEFT = limits('office', 'angle', 'category.*', 'Left of a limit', 'category');
const TRIM = limits('office', 'angle', 'engine.trim', 'Trim by the outboard', 'engineTrim');
const STERN = limits(
  'workshop',
  'length',
  'engine.stern-freeboard',
  'Freeboard at the transom, nobody aboard',
  'hydrostatics',
);

const CARRIES = {
  people: limits('customer', 'people', 'people', 'Most people', 'carries'),
  load: limits('customer', 'mass', 'load', 'Most load', 'carries'),
};
const AS_LOADED = {
  people: limits('customer', 'people', 'as-loaded.people', 'People as loaded', 'carries'),
  load: limits('customer', 'mass', 'as-loaded.load', 'Load as loaded', 'carries'),
};

/** One method's ratings. */
interface RatingFacts {
  readonly people: Fact<'customer'>;
  readonly load: Fact<'customer'>;
  readonly power: Fact<'customer'>;
}

interface LimitsFacts {
  /** In the order of the yard's methods. */
  readonly ratings: readonly RatingFacts[];
  /** People that the rated load leaves room for. */
  readonly byLoad: Fact<'customer', number>;
  /** The least of all limits. */
  readonly carries: { readonly people: Fact<'customer'>; readonly load: Fact<'customer'> };
  readonly others: readonly Fact[];
}

/** What the boat may carry by each method, what is left of a category's limits, and the outboard on the hull. */
export function limitsFacts({ limits: all, mass }: Pick<Figures, 'limits' | 'mass'>): LimitsFacts {
  const { ratings, asOrdered, categories, engine, asLoaded, carries } = all;
  const byLoad = BY_LOAD(mass.ratedPeople);
  const afloat = {
    people: AS_LOADED.people(valueOf(asLoaded, ({ people }) => people)),
    load: AS_LOADED.load(valueOf(asLoaded, ({ load }) => load)),
  };
  const counted = asOrdered && COUNTED(asOrdered.onPlate);
  return {
    ratings: ('notComputed' in ratings ? [] : ratings).map(
      ({ method: of, people, load, power, caution: source }) => ({
        people: PEOPLE(people, { of, source }),
        load: LOAD(load, { of, source }),
        power: POWER(power, { of, source }),
      }),
    ),
    byLoad,
    carries: {
      people: CARRIES.people(carries.people.people, { from: [byLoad.key, afloat.people.key] }),
      load: CARRIES.load(carries.load.mass, { from: [afloat.load.key] }),
    },
    others: [
      afloat.people,
      afloat.load,
      ...(asOrdered && counted
        ? [
            counted,
            GREATEST(asOrdered.greatest, { from: [counted.key] }),
            ISO_LEFT(asOrdered.left, { from: [counted.key] }),
          ]
        : []),
      ...('notComputed' in categories ? [] : categories).flatMap(({ category, checks }) =>
        checks.map(({ name, left, unit }) => {
          const of = `${category}.${dashedName(name)}`;
          return unit === 'm' ? LENGTH_LEFT(left, { of }) : ANGLE_LEFT(left * DEGREE, { of });
        }),
      ),
      ...(engine ? [TRIM(engine.trim), STERN(valueOf(engine.stern, ({ value }) => value))] : []),
    ],
  };
}
