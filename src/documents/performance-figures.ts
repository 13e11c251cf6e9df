import type { Figures } from '../figures/index.ts';
import { performancePrinter } from './performance-words.ts';
import type { KeyFigure } from './quote-types.ts';

/** Speed, range and towing for the customer, each an estimate that says so; what is not computed is left out. */
export function performanceFigures(figures: Figures): readonly KeyFigure[] {
  return [...speedFigure(figures), ...rangeFigure(figures), ...ballFigure(figures)];
}

function speedFigure({ build, drive }: Figures): readonly KeyFigure[] {
  const { outboard, order } = build;
  if (!outboard) return [];
  const print = performancePrinter(build);
  const of = (name: string) => drive.loadings.find(({ loading }) => loading.name === name);
  const [light, loaded] = [of('light'), of('loaded')];
  const people = order.boat.people === 1 ? 'one person' : `${order.boat.people} people`;
  if (!loaded?.applies) return [];
  const value = 'notComputed' in loaded.speed ? 'not on the plane' : print.band(loaded.speed.speed);
  const alone =
    light && !('notComputed' in light.speed) && light.loading.people < loaded.loading.people
      ? ` With one person ${print.band(light.speed.speed)}.`
      : '';
  return [
    {
      label: 'Speed, estimated',
      value,
      method: `Trial to confirm. With ${people}, fuel and gear, calm water, clean bottom; estimated to Savitsky 1964, checked by Crouch’s formula.${alone}`,
    },
  ];
}

function rangeFigure({ build, drive }: Figures): readonly KeyFigure[] {
  const print = performancePrinter(build);
  const cruise = drive.fuel.find(({ name }) => name === 'cruise');
  if (!cruise || typeof cruise.range === 'object' || typeof cruise.speed === 'object') return [];
  const fuel = build.order.fuel === undefined ? '' : print.format.volume(build.order.fuel);
  return [
    {
      label: 'Range, estimated',
      value: print.range(cruise.range),
      method: `Trial to confirm. At ${print.knots(cruise.speed)} on ${fuel}, about ${print.flow(cruise.flow)}, with a reserve kept back; no wind, no current. Not for planning a passage until measured.`,
    },
  ];
}

function ballFigure({ build, tow }: Figures): readonly KeyFigure[] {
  const { trailer } = tow;
  if (!trailer || 'notComputed' in trailer.ball) return [];
  const { format } = performancePrinter(build);
  const { vehicle } = trailer;
  const isChecked = !('notComputed' in vehicle) && vehicle.length > 0;
  const checked = isChecked
    ? 'Within what you told us that your vehicle may tow; its plate decides.'
    : 'Check what your vehicle’s tow ball may carry.';
  return [
    {
      label: 'Mass on the tow ball',
      value: format.mass(trailer.ball.onBall),
      method: `${format.percent(trailer.ball.share, 0)} of the whole, estimated from moments with fuel and loose gear aboard; weighed at handover. ${checked}`,
    },
  ];
}
