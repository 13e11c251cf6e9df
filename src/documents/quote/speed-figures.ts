import { type CustomerFigures, reserveOf } from '../../figures/index.ts';
import { type Formatter, formatterOf, known } from '../../units/index.ts';
import { bandText } from '../sections/words.ts';
import type { KeyFigure } from './types.ts';
import { roadFigures } from './road-figures.ts';

type Loading = CustomerFigures['drive']['loadings'][number];

/** Speed, range and towing for the customer, each an estimate that says so; what is not computed is left out. */
export function performanceFigures(figures: CustomerFigures): readonly KeyFigure[] {
  return [...speedFigure(figures), ...rangeFigure(figures), ...roadFigures(figures)];
}

function speedFigure({ build, drive }: CustomerFigures): readonly KeyFigure[] {
  const { outboard, order } = build;
  if (!outboard) return [];
  const format = formatterOf(build.yard);
  const of = (name: Loading['name']) => drive.loadings.find((one) => one.name === name);
  const [light, loaded] = [of('light'), of('loaded')];
  const people = order.boat.people === 1 ? 'one person' : `${order.boat.people} people`;
  if (!loaded?.applies) return [];
  const also = (words: string, one: Loading | undefined): readonly string[] =>
    one && !('notComputed' in one.speed) ? [`${words} ${bandText(one.speed.speed, format)}.`] : [];
  const isAlone = light && light.loading.people < loaded.loading.people;
  const isUs = format.system === 'us';
  const method = [
    `Estimated, trial to confirm. ${isUs ? 'In miles an hour (mph)' : 'In knots (kn)'}.`,
    `With ${people}, fuel and gear, calm water, clean bottom; by Savitsky’s method of 1964 for planing boats${crouchWords(loaded, format)}.`,
    ...('notComputed' in loaded.speed
      ? ['So loaded she does not rise onto the plane; her speed below that is not computed.']
      : []),
    ...outsideWords(loaded),
    ...(isAlone ? also('With one person', light) : []),
    ...also('With the water of the ballast tank', of('loaded with ballast')),
  ];
  const value =
    'notComputed' in loaded.speed ? 'not on the plane' : bandText(loaded.speed.speed, format);
  return [{ label: 'Speed, estimated', value, method: method.join(' ') }];
}

function crouchWords({ speed }: Loading, format: Formatter): string {
  return 'notComputed' in speed
    ? ''
    : `; a second estimate, by Crouch’s formula, gives ${format.speed(speed.crouch)}`;
}

function outsideWords({ speed }: Loading): readonly string[] {
  if ('notComputed' in speed || speed.state.outside.length === 0) return [];
  return [`Outside the method’s range (${speed.state.outside.join('; ')}): take it for a guess.`];
}

function rangeFigure({ build, drive }: CustomerFigures): readonly KeyFigure[] {
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
    {
      label: 'Range, estimated',
      value: format.distance(cruise.range),
      method: `Estimated, trial to confirm. At ${format.speed(cruise.speed)} on ${fuel}, about ${known(cruise.flow, format.flow)}, with ${reserve} of the fuel kept back; ${format.system === 'us' ? 'statute miles (mi)' : 'nautical miles (nmi)'}, no wind, no current.${fast} Not for planning a passage until measured.`,
    },
  ];
}
