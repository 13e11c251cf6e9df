import { type CustomerFigures, reserveOf } from '../../figures/index.ts';
import { type Formatter, formatterOf, known } from '../../units/index.ts';
import { found, type FoundFigure } from '../sections/method-notes.ts';
import { bandText } from '../sections/words.ts';

type Loading = CustomerFigures['drive']['loadings'][number];

/** How fast it goes as ordered; nothing where the method does not apply. */
export function speedFigure({ build, drive }: CustomerFigures): readonly FoundFigure[] {
  const { outboard, order } = build;
  if (!outboard) return [];
  const format = formatterOf(build.yard);
  const of = (name: Loading['name']) => drive.loadings.find((one) => one.name === name);
  const [light, loaded] = [of('light'), of('loaded')];
  if (!loaded?.applies) return [];
  const also = (words: string, one: Loading | undefined): readonly string[] =>
    one && !('notComputed' in one.speed) ? [`${words} ${bandText(one.speed.speed, format)}.`] : [];
  const people = order.boat.people === 1 ? 'one person' : `${order.boat.people} people`;
  const isAlone = light && light.loading.people < loaded.loading.people;
  const { speed } = loaded;
  const note = [
    `With ${people}, fuel and gear, in calm water with a clean bottom, ${format.system === 'us' ? 'in miles an hour (mph)' : 'in knots (kn)'}.`,
    ...('notComputed' in speed
      ? ['Will not plane with this load; the speed below planing is not computed.']
      : [secondEstimate(speed, format), ...outsideWords(speed)]),
    ...(isAlone ? also('With one person', light) : []),
    ...also('With the water of the ballast tank', of('loaded with ballast')),
  ];
  const isPlaning = !('notComputed' in speed);
  const value = isPlaning ? bandText(speed.speed, format) : 'will not plane';
  const methods = isPlaning ? (['planing', 'crouch'] as const) : (['planing'] as const);
  return [found('Speed, estimated', value, note.join(' '), ...methods)];
}

type Planing = Exclude<Loading['speed'], { readonly notComputed: string }>;

const secondEstimate = ({ crouch }: Planing, format: Formatter): string =>
  `A second, simpler estimate gives ${format.speed(crouch)}.`;

function outsideWords({ state }: Planing): readonly string[] {
  return state.outside.length === 0
    ? []
    : [`Outside the method’s range (${state.outside.join('; ')}): a rough guess only.`];
}

/** How far it goes on the fuel ordered; nothing where it was not computed. */
export function rangeFigure({ build, drive }: CustomerFigures): readonly FoundFigure[] {
  const format = formatterOf(build.yard);
  const at = (name: string) => drive.fuel.find((one) => one.name === name);
  const [cruise, full] = [at('cruise'), at('full throttle')];
  if (!cruise || typeof cruise.range === 'object' || typeof cruise.speed === 'object') return [];
  const fuel = build.order.fuel === undefined ? '' : format.volume(build.order.fuel);
  const reserve = format.percent(reserveOf(build), 0);
  const fast =
    full && typeof full.range === 'number'
      ? ` At full throttle ${known(full.flow, format.flow)} and ${format.distance(full.range)}.`
      : '';
  return [
    found(
      'Range, estimated',
      format.distance(cruise.range),
      `In ${format.system === 'us' ? 'statute miles (mi)' : 'nautical miles (nmi)'}, at ${format.speed(cruise.speed)} on ${fuel}, about ${known(cruise.flow, format.flow)}, with ${reserve} of the fuel kept back; no wind, no current.${fast} Not for planning a passage until measured.`,
      'fuel',
    ),
  ];
}
