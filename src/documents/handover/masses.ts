import type { CustomerBuild, CustomerFigures, Fact } from '../../figures/index.ts';
import type { Stage } from '../../schema/index.ts';
import { formatterOf, formatDate, type Formatter } from '../../units/index.ts';
import { blank, type Block, column, heads, row, type Row, table, words } from '../blocks/block.ts';
import { sideLimitOf } from '../sections/float-words.ts';
import { capital } from '../sections/words.ts';
import { sayFact } from '../sections/fact-words.ts';
import { found, type FoundFigure } from '../sections/method-notes.ts';

const BLANK_RUNS = 3;

/** Masses as computed beside masses as weighed, in the conditions that an owner meets. */
export function handoverMasses(figures: CustomerFigures): readonly Block[] {
  const {
    build,
    facts: { mass },
  } = figures;
  const { outboard, yard, order } = build;
  const format = formatterOf(build.yard);
  const aboard = [...(outboard ? ['outboard'] : []), ...fuelWords(build, format)];
  const people = format.number(order.boat.people, 0);
  const gear = format.mass(yard.gearPerPerson);
  const rows = [
    massRow(figures, 'wiring', {
      condition: 'Completed',
      contains: 'Everything fitted; no outboard, no fuel, no loose gear.',
      computed: mass.completed,
    }),
    ...(aboard.length === 0
      ? []
      : [
          massRow(figures, 'engine', {
            condition: 'Ready to launch',
            contains: `With ${aboard.join(' and ')}; nobody aboard.`,
            computed: mass.ready,
          }),
        ]),
    ...(mass.readyOnTrailer
      ? [
          massRow(figures, 'trailer', {
            condition: 'On its trailer',
            contains: `Ready to launch, on the trailer, no loose gear. With gear for ${people} at ${gear} each: ${sayFact(mass.onTrailer, format)}, computed.`,
            computed: mass.readyOnTrailer,
          }),
        ]
      : []),
  ];
  return [
    ...table(MASS_COLUMNS, rows),
    ...words(
      'small',
      'Computed by adding up all items. If the two differ, the weighed mass applies.',
    ),
  ];
}

const MASS_COLUMNS = [
  column('head', 'Condition'),
  ...heads('num', 'Computed', 'Weighed'),
  column('day', 'On'),
];

/** The boat’s limits, by the shop’s rating. */
export function carryFigures(figures: CustomerFigures): readonly FoundFigure[] {
  const {
    build,
    facts: { mass },
    limits: { carries },
    float: { afloat },
  } = figures;
  const side = afloat && sideLimitOf(afloat.crew.rated);
  const { ratings } = build.hull;
  const { yard, trailer, outboard, order } = build;
  const format = formatterOf(build.yard);
  return [
    found(
      'Most people',
      format.number(carries.people.people, 0),
      `${capital(carries.people.words)}.${side === undefined ? '' : ` ${side}.`} Ordered for ${format.number(order.boat.people, 0)}.`,
      'carries',
      'rating',
    ),
    found(
      'Most load',
      format.mass(carries.load.mass),
      `Limited by ${carries.load.by}: people, gear, fuel and fitted options together, without the outboard. As ordered, with people at ${format.mass(yard.personMass)} and ${format.mass(yard.gearPerPerson)} of gear each: ${sayFact(mass.load, format)}.`,
      'carries',
      'masses',
    ),
    found(
      'Greatest outboard power',
      format.power(carries.power.power),
      `Limited by ${carries.power.by}.${outboard ? ` Fitted: ${format.power(outboard.model.power)}.` : ''}`,
      'rating',
    ),
    found(
      'Greatest outboard mass',
      format.mass(ratings.engineMass),
      outboard ? `Fitted: ${format.mass(outboard.mass)}.` : '',
      'rating',
    ),
    ...(trailer && mass.towed
      ? [
          found(
            'Trailer with its load',
            format.mass(trailer.rating),
            `The trailer maker’s rating. As ordered: ${sayFact(mass.towed, format)}; check it on a weighbridge.`,
            'masses',
          ),
        ]
      : []),
  ];
}

/** Runs on the water as recorded, or rows to write them in. */
export function trialRuns({ build: { order, yard } }: CustomerFigures): readonly Block[] {
  const format = formatterOf(yard);
  const runs = order.record?.trials ?? [];
  const rows = runs.map(({ date, conditions, people, speed, rpm, by }) =>
    row(
      'plain',
      formatDate(date, yard.locale),
      conditions,
      format.number(people, 0),
      format.speed(speed),
      format.number(rpm, 0),
      by,
    ),
  );
  return [
    ...table(
      RUN_COLUMNS,
      rows.length > 0 ? rows : Array.from({ length: BLANK_RUNS }, () => BLANK_RUN),
    ),
    ...words(
      'small',
      'Fastest steady speed in the conditions named. It changes with load, water and propeller.',
    ),
  ];
}

const RUN_COLUMNS = [
  column('day', 'Date'),
  column('text', 'Wind, water and load'),
  ...heads('num', 'People', 'Speed', 'Engine rpm'),
  column('text', 'Run by'),
];
const BLANK_RUN = row('plain', '', '', '', '', '', '');

interface Condition {
  readonly condition: string;
  readonly contains: string;
  readonly computed: Fact<'customer'>;
}

/** @param after - the stage after which the boat is weighed in this condition */
function massRow(
  { build }: CustomerFigures,
  after: Stage,
  { condition, contains, computed }: Condition,
): Row {
  const { order, yard } = build;
  const format = formatterOf(build.yard);
  const weighed = order.record?.masses.findLast(({ stage }) => stage === after);
  return row(
    'plain',
    { text: condition, under: contains },
    sayFact(computed, format),
    blank(weighed ? format.mass(weighed.mass) : ''),
    blank(weighed ? formatDate(weighed.date, yard.locale) : ''),
  );
}

function fuelWords({ order: { fuel } }: CustomerBuild, format: Formatter): readonly string[] {
  return fuel === undefined || fuel === 0 ? [] : [`${format.volume(fuel)} of fuel`];
}
