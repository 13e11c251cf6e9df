import { decimalToShortText } from '../units/index.ts';
import type { Point3 } from '../units/index.ts';
import { driveData } from './performance/data.ts';
import { limitsData, towData } from './limits/data.ts';
import { electricsData } from './electrics/data.ts';
import { laminateData } from './laminate/data.ts';
import { floatData } from './float/data.ts';
import { priceData } from './price/data.ts';
import type { FigureDatum, Figures } from './types.ts';

const CENTRE = 'sum of mass x position over sum of mass, boat axes';

/** Every figure of an order by a stable dotted name. Masses are rounded to the gram, positions to 0.1 mm. */
export function figuresData(figures: Figures): Readonly<Record<string, FigureDatum>> {
  return {
    ...priceData(figures),
    ...massData(figures),
    ...driveData(figures),
    ...limitsData(figures),
    ...towData(figures),
    ...workData(figures),
    ...laminateData(figures),
    ...electricsData(figures),
    ...floatData(figures),
  };
}

function massData({ mass, trailerLoad }: Figures): Record<string, FigureDatum> {
  const kg = (value: number, method: string): FigureDatum => ({
    value: round(value, 3),
    unit: 'kg',
    method,
  });
  const data: Record<string, FigureDatum> = {
    'mass.contingency': kg(mass.contingency, 'declared share of what is fitted'),
    'mass.on-trailer': kg(mass.onTrailer, 'ready boat, gear and trailer'),
    'mass.load': kg(mass.load, 'people, gear, fuel, options and one-off items'),
  };
  const conditions = { 'bare-hull': mass.bareHull, completed: mass.completed, ready: mass.ready };
  for (const [name, { mass: total, centre }] of Object.entries(conditions)) {
    data[`mass.${name}`] = kg(total, 'sum of items');
    addCentre(data, `centre.${name}`, centre);
  }
  for (const group of mass.groups)
    data[`mass.group.${group.group}`] = kg(group.mass, 'sum of items');
  if (trailerLoad) {
    data['tow.total'] = kg(trailerLoad.total, 'towed boat + tare');
    data['tow.left'] = kg(trailerLoad.left, 'rating less total');
  }
  return data;
}

function addCentre(data: Record<string, FigureDatum>, name: string, centre: Point3): void {
  for (const axis of ['x', 'y', 'z'] as const) {
    data[`${name}.${axis}`] = { value: round(centre[axis], 4), unit: 'm', method: CENTRE };
  }
}

function workData({ stageHours }: Figures): Record<string, FigureDatum> {
  return Object.fromEntries(
    stageHours.map(({ stage, hours }) => [
      `hours.${stage}`,
      { value: decimalToShortText(hours), unit: 'h', method: 'sum of items' },
    ]),
  );
}

function round(value: number, decimals: number): number {
  return Number(value.toFixed(decimals)) + 0;
}
