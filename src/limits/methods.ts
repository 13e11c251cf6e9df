import { HORSEPOWER, type Kilograms, kilograms, type Watts } from '../units/index.ts';
import { australianPeople } from './australian-plate.ts';
import { type Governing, governingLimit } from './governing.ts';
import { powerCapacity } from './cfr-183-power.ts';
import { type PersonsCapacity, personsCapacity, weightCapacity } from './cfr-183-weight.ts';
import { isoPeople } from './iso-load.ts';
import { isoPower } from './iso-power.ts';
import type { Computed, PeopleLimit, RatedBoat } from './types.ts';

export type MethodId = 'cfr-183' | 'iso' | 'australian';

/** What a method makes of a boat. */
export interface Rating {
  readonly method: MethodId;
  readonly name: string;
  /** Its clause, what it covers, and that it is an estimate. */
  readonly source: string;
  readonly validity: string;
  /** What its formulas call things: symbol and meaning. */
  readonly symbols: Symbols;
  readonly caution: string;
  /** Load in the method's own sense, said in `loadMeans`. */
  readonly load: Computed<Kilograms>;
  readonly loadMeans: string;
  readonly power: Computed<Watts>;
  readonly people: Computed<number>;
  /** Most that the people may weigh, where the method wants that on the plate and could find it. */
  readonly peopleLoad?: Kilograms;
  /** Of the people; undefined where the method could not count them. */
  readonly governing: Governing | undefined;
  /** What else the method asks for before its figures stand. */
  readonly besides: readonly string[];
}

type Symbols = readonly (readonly [symbol: string, meaning: string])[];

interface Method {
  readonly name: string;
  readonly source: string;
  readonly validity: string;
  readonly symbols: Symbols;
  readonly test: string;
  readonly loadMeans: string;
  readonly load: (boat: RatedBoat) => Computed<Kilograms>;
  readonly power: (boat: RatedBoat) => Computed<Watts>;
  readonly people: (boat: RatedBoat) => Computed<readonly [PeopleLimit, ...PeopleLimit[]]>;
  readonly peopleLoad?: (boat: RatedBoat) => Computed<Kilograms>;
  readonly besides?: (boat: RatedBoat) => readonly string[];
}

const seats = ({ seats: people }: RatedBoat): PeopleLimit => ({ name: 'seats', people });

const SIDE_TEST =
  'below 550 lb of people 183.41(a)(2) asks for a test with weights along one side, which may lower the number; it was not made';

/** What the plate would say: the law's greatest power, or the boat's own rating where that is lower. */
function markedHorsepower({ hull, engine }: RatedBoat): Computed<number> {
  const capacity = powerCapacity(hull);
  if ('notComputed' in capacity) return capacity;
  return Math.min(capacity.horsepower, engine.power / HORSEPOWER);
}

function personsByLaw(boat: RatedBoat): Computed<PersonsCapacity> {
  const marked = markedHorsepower(boat);
  return typeof marked === 'object' ? marked : personsCapacity(boat, marked);
}

/** What is left of the freeboard displacement after the boat, its engine and its fixed fuel. */
function loadByFreeboard(boat: RatedBoat): Computed<Kilograms> {
  const left = boat.loadedDisplacement - boat.light - boat.engine.mass - boat.fixedFuel;
  return left > 0
    ? kilograms(left)
    : { notComputed: 'boat, engine and fuel alone leave too little freeboard' };
}

const METHODS: Readonly<Record<MethodId, Method>> = {
  'cfr-183': {
    name: 'United States, 33 CFR 183',
    source: '33 CFR 183.35, 183.41, 183.53 and table 183.75',
    validity: 'monohull outboard boats shorter than 20 ft',
    symbols: [
      ['Wmax', 'greatest weight, (Dmax - Wboat)/5'],
      ['Dmax', 'displacement at which water first comes aboard'],
      ['Wboat', 'the boat with full permanent tanks'],
      ['A', 'weight at one side at which water is about to come aboard: people at most A/0.6'],
      ['F', 'length x transom width, square feet'],
    ],
    test: 'the tests of 33 CFR 183 subparts C and G',
    loadMeans: 'people, motor, gear and portable fuel',
    load: (boat) => {
      const marked = markedHorsepower(boat);
      return typeof marked === 'object' ? marked : weightCapacity(boat, marked);
    },
    power: ({ hull }) => {
      const power = powerCapacity(hull);
      return 'notComputed' in power ? power : power.power;
    },
    people: (boat) => {
      const persons = personsByLaw(boat);
      if ('notComputed' in persons) return persons;
      return [seats(boat), { name: 'buoyancy', people: persons.people }];
    },
    peopleLoad: (boat) => {
      const persons = personsByLaw(boat);
      return 'notComputed' in persons ? persons : persons.mass;
    },
    besides: (boat) => {
      const persons = personsByLaw(boat);
      const lacks = !('notComputed' in persons) && persons.needsSideTest && !boat.sideTest;
      return lacks ? [SIDE_TEST] : [];
    },
  },
  iso: {
    name: 'Estimate by the ISO small craft method',
    source:
      'ISO 14946:2021 clauses 4 to 6; ISO 11592-1:2016 annex C from secondary sources, not checked against the standard',
    symbols: [
      ['mML', 'greatest load: people at 75 kg with 20 kg of effects, tanks at 95 %, water in full'],
      ['FD', 'length x transom beam, m²'],
      ['LH', 'length of the hull'],
      ['BT', 'transom beam'],
    ],
    validity: 'hulls shorter than 8 m; stability and flotation are proved by other standards',
    test: 'ISO 12217, ISO 14946 and the manoeuvring test of ISO 11592-1',
    loadMeans: 'people, effects, gear and portable fuel; engine and fixed fuel apart',
    load: loadByFreeboard,
    power: ({ hull }) => {
      const power = isoPower(hull);
      return 'notComputed' in power ? power : power.power;
    },
    people: (boat) => {
      const load = loadByFreeboard(boat);
      if (typeof load === 'object') return load;
      return [seats(boat), { name: 'freeboard', people: isoPeople(load) }];
    },
  },
  australian: {
    name: 'Estimate by the Australian Builders Plate method',
    source:
      'AS 1799.1 persons capacity from secondary sources, not checked against the standard: 80 kg and 10 kg of gear a person',
    symbols: [['N', 'people, (greatest load - heaviest outboard)/90 kg, rounded down']],
    validity: 'outboard boats in protected water; load as the builder found it, power not computed',
    test: 'AS 1799.1',
    loadMeans:
      'people, engine and gear, by the freeboard given and not by the standard’s own coefficients',
    load: (boat) => {
      const left = loadByFreeboard(boat);
      return typeof left === 'object' ? left : kilograms(left + boat.engine.mass);
    },
    power: () => ({ notComputed: 'the power formula of AS 1799.1 is in the bought text only' }),
    people: (boat) => {
      const left = loadByFreeboard(boat);
      if (typeof left === 'object') return left;
      const load = kilograms(left + boat.engine.mass);
      const people = australianPeople(load, boat.engine.mass);
      return [seats(boat), { name: 'load', people }];
    },
  },
};

/**
 * People, load and power of a boat by each of the methods that a workspace chose.
 *
 * @param methods - in the order to print
 * @returns a rating each; a figure that a method does not give says why
 * @validity each rating names its own; none of them is a certificate
 * @source as each rating names
 */
export function rateBoat(boat: RatedBoat, methods: readonly MethodId[]): readonly Rating[] {
  return methods.map((id) => {
    const method = METHODS[id];
    const limits = method.people(boat);
    const peopleLoad = method.peopleLoad?.(boat);
    const governing = 'notComputed' in limits ? undefined : governingLimit(limits);
    return {
      method: id,
      name: method.name,
      source: method.source,
      validity: method.validity,
      symbols: method.symbols,
      caution: `estimated to ${method.source}; verify by ${method.test}`,
      load: method.load(boat),
      loadMeans: method.loadMeans,
      power: method.power(boat),
      people: 'notComputed' in limits ? limits : (governing?.people ?? 0),
      ...(typeof peopleLoad === 'number' && { peopleLoad }),
      governing,
      besides: method.besides?.(boat) ?? [],
    };
  });
}
