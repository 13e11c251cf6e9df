import type { CustomerBuild, CustomerFigures } from '../../figures/index.ts';
import type { Stage } from '../../schema/index.ts';
import {
  formatterOf,
  formatDate,
  type Formatter,
  type Kilograms,
  kilograms,
} from '../../units/index.ts';
import type { HandoverMass, TrialRun } from './types.ts';
import { found, type FoundFigure } from '../sections/method-notes.ts';

const BLANK_RUNS = 3;

/** Masses as computed beside masses as weighed, in the conditions that an owner meets. */
export function handoverMasses(figures: CustomerFigures): readonly HandoverMass[] {
  const { build, mass } = figures;
  const { outboard, trailer, yard, order } = build;
  const format = formatterOf(build.yard);
  const aboard = [...(outboard ? ['outboard'] : []), ...fuelWords(build, format)];
  const people = format.number(order.boat.people, 0);
  const gear = format.mass(yard.gearPerPerson);
  return [
    massRow(figures, 'wiring', {
      condition: 'Completed',
      contains: 'Everything fitted; no outboard, no fuel, no loose gear.',
      computed: mass.completed.mass,
    }),
    ...(aboard.length === 0
      ? []
      : [
          massRow(figures, 'engine', {
            condition: 'Ready to launch',
            contains: `With ${aboard.join(' and ')}; nobody aboard.`,
            computed: mass.ready.mass,
          }),
        ]),
    ...(trailer
      ? [
          massRow(figures, 'trailer', {
            condition: 'On its trailer',
            contains: `Ready to launch, on the trailer, no loose gear. With gear for ${people} at ${gear} each: ${format.mass(mass.onTrailer)}, computed.`,
            computed: kilograms(mass.ready.mass + trailer.tare),
          }),
        ]
      : []),
  ];
}

/** The boat’s limits, by the shop’s rating. */
export function carryFigures({
  build,
  mass,
  trailerLoad,
}: CustomerFigures): readonly FoundFigure[] {
  const { ratings } = build.hull;
  const { yard, trailer, outboard, order } = build;
  const format = formatterOf(build.yard);
  return [
    found(
      'Most people',
      format.number(ratings.people, 0),
      `Ordered for ${format.number(order.boat.people, 0)}.`,
      'rating',
    ),
    found(
      'Most load',
      format.mass(ratings.load),
      `People, gear, fuel and fitted options together, without the outboard. As ordered, with people at ${format.mass(yard.personMass)} and ${format.mass(yard.gearPerPerson)} of gear each: ${format.mass(mass.load)}.`,
      'rating',
      'masses',
    ),
    found(
      'Greatest outboard power',
      format.power(ratings.power),
      outboard ? `Fitted: ${format.power(outboard.model.power)}.` : '',
      'rating',
    ),
    found(
      'Greatest outboard mass',
      format.mass(ratings.engineMass),
      outboard ? `Fitted: ${format.mass(outboard.mass)}.` : '',
      'rating',
    ),
    ...(trailer && trailerLoad
      ? [
          found(
            'Trailer with its load',
            format.mass(trailer.rating),
            `The trailer maker’s rating. As ordered: ${format.mass(trailerLoad.total)}; check it on a weighbridge.`,
            'masses',
          ),
        ]
      : []),
  ];
}

/** Runs on the water as recorded, or rows to write them in. */
export function trialRuns({ build }: CustomerFigures): readonly TrialRun[] {
  const { order, yard } = build;
  const format = formatterOf(build.yard);
  const runs = order.record?.trials ?? [];
  if (runs.length === 0) return Array.from({ length: BLANK_RUNS }, () => BLANK_RUN);
  return runs.map(({ date, conditions, people, speed, rpm, by }) => ({
    date: formatDate(date, yard.locale),
    conditions,
    people: format.number(people, 0),
    speed: format.speed(speed),
    rpm: format.number(rpm, 0),
    by,
  }));
}

const BLANK_RUN: TrialRun = { date: '', conditions: '', people: '', speed: '', rpm: '', by: '' };

interface Condition {
  readonly condition: string;
  readonly contains: string;
  readonly computed: Kilograms;
}

/** @param after - the stage after which the boat is weighed in this condition */
function massRow(
  { build }: CustomerFigures,
  after: Stage,
  { condition, contains, computed }: Condition,
): HandoverMass {
  const { order, yard } = build;
  const format = formatterOf(build.yard);
  const weighed = order.record?.masses.findLast(({ stage }) => stage === after);
  return {
    condition,
    contains,
    computed: format.mass(computed),
    weighed: weighed ? format.mass(weighed.mass) : '',
    when: weighed ? formatDate(weighed.date, yard.locale) : '',
  };
}

function fuelWords({ order: { fuel } }: CustomerBuild, format: Formatter): readonly string[] {
  return fuel === undefined || fuel === 0 ? [] : [`${format.volume(fuel)} of fuel`];
}
