import { type CustomerFigures, type Fact, isNotComputed, reserveOf } from '../../figures/index.ts';
import { type Formatter, formatterOf } from '../../units/index.ts';
import { found, type FoundFigure } from '../sections/method-notes.ts';
import { waterName } from '../sections/words.ts';
import { figureOf, sayFact } from '../sections/fact-words.ts';

type Loading = CustomerFigures['drive']['loadings'][number];

/** How fast it goes as ordered; nothing where the method does not apply. */
export function speedFigure({ build, drive, facts }: CustomerFigures): readonly FoundFigure[] {
  const { outboard, order } = build;
  if (!outboard) return [];
  const format = formatterOf(build.yard);
  const of = (name: Loading['name']) => drive.loadings.find((one) => one.name === name);
  const [light, loaded] = [of('light'), of('loaded')];
  if (!loaded?.applies) return [];
  const also = (words: string, name: Loading['name']): readonly string[] => {
    const speed = facts.loadings[name]?.speed;
    return speed && !isNotComputed(speed.says) ? [`${words} ${sayFact(speed, format)}.`] : [];
  };
  const people = order.boat.people === 1 ? 'one person' : `${order.boat.people} people`;
  const isAlone = light && light.loading.people < loaded.loading.people;
  const { speed } = loaded;
  const before = facts.loadings.loaded?.slow;
  const slow = before && !isNotComputed(before.says) ? before : undefined;
  const note = [
    `With ${people}, fuel and gear, in calm ${waterName(drive)} with a clean bottom, ${format.system === 'us' ? 'in miles an hour (mph)' : 'in knots (kn)'}.`,
    ...('notComputed' in speed
      ? [
          slow
            ? 'It does not plane with this load.'
            : 'It does not plane with this load; its speed is not computed.',
        ]
      : [...secondEstimate(facts, format), ...outsideWords(speed)]),
    ...(isAlone ? also('With one person', 'light') : []),
    ...also('With the water of the ballast tank', 'loaded with ballast'),
  ];
  const told = facts.loadings.loaded?.speed;
  if ('notComputed' in speed && slow) return [figureOf(slow, format, note.join(' '), 'prePlaning')];
  if ('notComputed' in speed || !told)
    return [found('Speed, estimated', 'will not plane', note.join(' '), 'planing')];
  return [figureOf(told, format, note.join(' '), 'crouch')];
}

type Planing = Exclude<Loading['speed'], { readonly notComputed: string }>;

function secondEstimate(
  { loadings: { loaded } }: CustomerFigures['facts'],
  format: Formatter,
): readonly string[] {
  return loaded ? [`A second, simpler estimate gives ${sayFact(loaded.crouch, format)}.`] : [];
}

function outsideWords({ state }: Planing): readonly string[] {
  return state.outside.length === 0
    ? []
    : [`Outside the method’s range (${state.outside.join('; ')}): a rough guess only.`];
}

/** How far it goes on the fuel ordered; nothing where it was not computed. */
export function rangeFigure({ build, facts: { uses } }: CustomerFigures): readonly FoundFigure[] {
  const format = formatterOf(build.yard);
  const { cruise, 'full throttle': full } = uses;
  if (!cruise || isNotComputed(cruise.range.says) || isNotComputed(cruise.speed.says)) return [];
  const say = (fact: Fact): string => sayFact(fact, format);
  const fuel = build.order.fuel === undefined ? '' : format.volume(build.order.fuel);
  const reserve = format.percent(reserveOf(build), 0);
  const fast =
    full && !isNotComputed(full.range.says)
      ? ` At full throttle ${say(full.fuel)} and ${say(full.range)}.`
      : '';
  const units = format.system === 'us' ? 'statute miles (mi)' : 'nautical miles (nmi)';
  return [
    figureOf(
      cruise.range,
      format,
      `In ${units}, at ${say(cruise.speed)} on ${fuel}, about ${say(cruise.fuel)}, with ${reserve} of the fuel kept back; no wind, no current.${fast} Not for planning a passage until measured.`,
    ),
  ];
}
