import {
  type Afloat,
  conditionOf,
  type CustomerFigures,
  FULL_TANK,
  isNotComputed,
  outcomeText,
  type PeopleToSide,
  placeWords,
} from '../../figures/index.ts';
import { type Formatter, formatterOf, kilograms, type Metres, whyNot } from '../../units/index.ts';
import { countOf } from './words.ts';

type Condition = Afloat['conditions'][number];
type Floating = Pick<CustomerFigures, 'build' | 'float'>;

const COUNTS = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
];
/** Shares of the length that count as forward and as aft. Common practice, no source. */
const FORWARD = 0.6;
const AFT = 0.35;

/** The conditions as a table and a drawing name them. */
const CONDITION_NAMES: Readonly<Record<Condition['name'], string>> = {
  light: 'Light, nothing aboard',
  'with engine': 'With outboard, tanks empty',
  'performance test': 'As for the trial',
  'fully loaded': 'Fully loaded',
  grown: 'Fully loaded, grown',
  'people to one side': 'Everyone to one side',
  'people aft': 'Everyone aft',
  'people forward': 'Everyone forward',
  rated: 'At the shop’s rating',
  'rated half tanks': 'The same, tanks half full',
  'rated to one side': 'Rating, everyone to one side',
  'rated aft': 'Rating, everyone aft',
  'rated forward': 'Rating, everyone forward',
  'ballast flooded at rest': 'Trial, ballast flooded',
  'ballast drained': 'Trial, ballast drained',
  custom: 'Own condition',
};

/** The conditions worth telling: without an outboard that of the outboard alone is the light boat again. */
export function toldConditions({ build }: Floating, { conditions }: Afloat): readonly Condition[] {
  return conditions.filter(({ name }) => build.outboard !== undefined || name !== 'with engine');
}

/** What a condition is called in this order. */
export function conditionName({ name }: Condition, { build }: Floating): string {
  const own = name === 'custom' ? build.order.condition?.name : undefined;
  return own ?? CONDITION_NAMES[name];
}

/** "four people"; "one person". */
function peopleText(count: number, format: Formatter): string {
  const number = COUNTS[count] ?? format.number(count, 0);
  return `${number} ${count === 1 ? 'person' : 'people'}`;
}

/** "1.8 degrees by the stern"; `angle` is above zero by the stern. */
export function trimByEnd(angle: number, format: Formatter): string {
  return `${format.degrees(angle)} by the ${angle > 0 ? 'stern' : 'bow'}`;
}

/** "trims 1.8 degrees by the stern", or "lies level". */
function trimWords({ trim, trims }: NonNullable<Condition['state']>, format: Formatter): string {
  return trims === 'level' ? 'lies level' : `trims ${format.degrees(trim)} ${trims}`;
}

/** One condition in a sentence for whoever sells the boat. */
export function conditionSentence(condition: Condition, figures: Floating): string {
  const format = formatterOf(figures.build.yard);
  const { state, equilibrium } = condition;
  const situation = situationOf(condition, figures, format);
  if (!state)
    return `${situation} ${isNotComputed(equilibrium) ? `stability is ${whyNot(equilibrium)}` : `the boat ${outcomeText(equilibrium)}`}.`;
  const { freeboards, heel, leans } = state;
  const lean = leans === 'upright' ? 'floats upright' : `leans ${format.degrees(heel)} ${leans}`;
  const { lowest } = freeboards;
  return `${situation} the boat ${trimWords(state, format)}, ${lean}, and the lowest place where water could come in, ${placeWords(lowest.name)}, is ${format.dimension(lowest.freeboard)} above the water.`;
}

/** What a movable thing does to its trim as ordered, and what moving one would gain; undefined when it is as it should be. */
export function adviceSentence(figures: Floating, afloat: Afloat): string | undefined {
  const { build } = figures;
  const format = formatterOf(build.yard);
  const full = conditionOf(afloat, 'fully loaded');
  const { outside = 0, moves } = afloat.trim;
  if (!full?.state || outside === 0) return undefined;
  const people = peopleText(full.people, format);
  const [move] = moves;
  if (!move)
    return `With ${people} at their seats the boat ${trimWords(full.state, format)}, more than this hull file allows, and moving equipment will not fix this: seat people elsewhere.`;
  const { item, to } = move;
  const where = item.along > FORWARD ? 'forward' : item.along < AFT ? 'aft' : 'amidships';
  const what = `${countOf(item.count, format)} ${item.name}`.trim();
  const one = item.count > 1 ? 'one' : 'it';
  const then = to.plane.trim;
  const after = Math.abs(then) < 0.0044 ? 'lies level' : `trims ${trimByEnd(then, format)}`;
  return `With ${what}, ${where} and ${people} at their seats the boat ${trimWords(full.state, format)}; place ${one} ${to.name}, and it ${after}.`;
}

/** Places that were left out of the advice because something stands there; undefined when there are none. */
export function takenSentence({ trim: { taken } }: Afloat): string | undefined {
  if (taken.length === 0) return undefined;
  const told = taken.map(({ item, place, by }) => `${item} ${place} (${by})`);
  return `Not tried, because something stands there: ${told.join('; ')}.`;
}

/** How many may be on one side while the others sit, in a sentence. */
export function sideSentence(
  { people, most, leans }: PeopleToSide,
  format: Formatter,
  when = '',
): string {
  const aboard = when === '' ? '' : `, ${when}`;
  if (isNotComputed(most)) return `How many people may be on one side${aboard} is ${whyNot(most)}.`;
  const then = leans
    ? `: the boat then leans ${format.degrees(leans.heel)} and ${format.dimension(leans.lowest.freeboard)} of freeboard is left`
    : '';
  if (most < people) return `${sideLimit(people, most)}${aboard}${then}.`;
  const all =
    people === 1
      ? 'The one person aboard'
      : people === 2
        ? 'Both people'
        : `All ${peopleText(people, format)}`;
  return `${all} may be on one side${aboard}${then}.`;
}

/** "No more than 2 of 5 people on one side", as a plate has it. */
const sideLimit = (people: number, most: number): string =>
  `No more than ${most} of ${people} people on one side`;

/** The same where it limits them; undefined where all may be there, or it is not computed. */
export const sideLimitOf = ({ people, most }: PeopleToSide): string | undefined =>
  typeof most === 'number' && most < people ? sideLimit(people, most) : undefined;

/** What comes of everyone at the edge together: no limit, and never done on purpose. */
export function everyoneSentence({ crew: { everyone, rated } }: Afloat, format: Formatter): string {
  const all = peopleText(rated.people, format);
  return `With all ${all} of the rating at the edge of one side the boat ${outcomeText(everyone)}: no way to use it.`;
}

/** Height of the water's surface above the baseline on the centreline, m. */
export function surfaceAt(
  { level, trim, heel }: NonNullable<Condition['state']>['plane'],
  x: Metres,
): number {
  return (level - x * Math.sin(trim)) / (Math.cos(trim) * Math.cos(heel));
}

function situationOf(condition: Condition, { build, float }: Floating, format: Formatter): string {
  const { name, people } = condition;
  const crew = peopleText(people, format);
  const seats = people === 1 ? 'at the helm' : 'at their seats';
  const side = condition.load.centre.y < 0 ? 'port' : 'starboard';
  const rated = `At the shop’s rating, ${crew}`;
  switch (name) {
    case 'light':
      return 'As built, without engine, fuel and people,';
    case 'with engine':
      return 'With the outboard and nothing else aboard,';
    case 'performance test':
      return `For the trial, with ${crew} ${seats},`;
    case 'fully loaded':
      return `Fully loaded, with ${crew} ${seats} and their gear${build.order.fuel ? `, tanks ${format.percent(FULL_TANK, 0)} full` : ''},`;
    case 'grown':
      return `Fully loaded, with the ${format.mass(float?.afloat?.growth.allowed ?? kilograms(0))} of growth that the shop allows for,`;
    case 'people to one side':
      return `With ${crew} gone to ${side},`;
    case 'people aft':
      return `With ${crew} gone aft,`;
    case 'people forward':
      return `With ${crew} gone forward,`;
    case 'rated':
      return `${rated} ${seats} and tanks full,`;
    case 'rated half tanks':
      return `${rated} ${seats} and tanks half full,`;
    case 'rated to one side':
      return `${rated} gone to ${side},`;
    case 'rated aft':
      return `${rated} gone aft,`;
    case 'rated forward':
      return `${rated} gone forward,`;
    case 'ballast flooded at rest':
      return 'Loaded as for the trial and at rest, with the ballast tank open to the sea,';
    case 'ballast drained':
      return 'Loaded as for the trial, with the ballast tank drained,';
    case 'custom':
      return `With ${build.order.condition?.name ?? 'its own load'},`;
  }
}
