import type { Condition } from '../../float/index.ts';
import { growthData } from './growth-data.ts';
import type { Afloat, Ballast, Swamped } from './types.ts';
import type { FigureDatum, Figures } from '../types.ts';

type Data = Record<string, FigureDatum>;

const EQUILIBRIUM = 'level, trim and heel together, minimum of potential energy, still water';
const CURVE = 'true heeled volume, trim free, closed at the sheer';
const LOST = 'lost buoyancy: the tank is part of the sea';
const HANDBOOK =
  'US Coast Guard Boatbuilder’s Handbook on 33 CFR 183 subpart G; verify by a swamping test';
const DEGREE = Math.PI / 180;

/** How she floats, by stable dotted names. Heights are rounded to 0.1 mm, angles to 0.001 degrees. */
export function floatData({ float }: Figures): Data {
  const afloat = float?.afloat;
  if (!afloat) {
    return float
      ? { 'float.outcome': text('not computed: the lines of the hull are unsound') }
      : {};
  }
  return {
    ...Object.fromEntries(
      afloat.conditions.flatMap((condition) => Object.entries(conditionData(condition))),
    ),
    ...(afloat.deepest !== undefined && {
      'float.fully-loaded.draught-deepest': datum(afloat.deepest, 'm', EQUILIBRIUM, 4),
    }),
    ...(afloat.perCentimetre && {
      'float.fully-loaded.sinks-1-cm': datum(
        afloat.perCentimetre.sinks,
        'kg',
        'area of the waterline x density',
        2,
      ),
      'float.fully-loaded.trims-1-cm': datum(
        afloat.perCentimetre.trims,
        'kg.m',
        'displacement x longitudinal GM / (100 x immersed length)',
        2,
      ),
    }),
    ...curveData(afloat),
    ...offsetData(afloat),
    ...(afloat.ballast ? ballastData(afloat.ballast) : {}),
    ...(afloat.swamped ? swampedData(afloat.swamped) : {}),
    ...moveData(afloat),
    ...growthData(afloat.growth),
  };
}

function conditionData({ name, load, people, equilibrium, state }: Condition): Data {
  const key = `float.${name.replaceAll(' ', '-')}`;
  const data: Data = {
    [`${key}.mass`]: datum(load.mass, 'kg', 'sum of items', 3),
    [`${key}.people`]: datum(people, 'people', 'as ordered', 0),
    [`${key}.outcome`]: text(
      equilibrium.outcome === 'floats' ? 'floats' : `${equilibrium.outcome}: ${equilibrium.why}`,
    ),
  };
  if (!state) return data;
  const { freeboards, metacentricHeight: height } = state;
  const metres = (value: number): FigureDatum => datum(value, 'm', EQUILIBRIUM, 4);
  return {
    ...data,
    [`${key}.draught-aft`]: metres(state.draughtAft),
    [`${key}.draught-fore`]: metres(state.draughtFore),
    [`${key}.trim`]: angle(state.trim, EQUILIBRIUM),
    [`${key}.heel`]: angle(state.heel, EQUILIBRIUM),
    [`${key}.freeboard-bow`]: metres(freeboards.bow.freeboard),
    [`${key}.freeboard-side`]: metres(freeboards.side.freeboard),
    [`${key}.freeboard-transom`]: metres(freeboards.transom.freeboard),
    [`${key}.freeboard-lowest`]: metres(freeboards.lowest.freeboard),
    ...(height && {
      [`${key}.gm`]: datum(height.byForm, 'm', 'KB + BM - KG, less free surfaces', 4),
      [`${key}.gm-slope`]: datum(height.bySlope, 'm', 'slope of GZ upright', 4),
    }),
  };
}

function curveData({ curve }: Afloat): Data {
  if (!curve) return {};
  const { greatest, vanishing, downflooding, area, arms } = curve;
  return {
    ...Object.fromEntries(
      arms.map(({ heel, arm }) => [
        `float.gz.${Math.round(heel / DEGREE)}`,
        datum(arm, 'm', CURVE, 4),
      ]),
    ),
    'float.gz.greatest': datum(greatest.arm, 'm', CURVE, 4),
    'float.gz.greatest-at': angle(greatest.heel, CURVE),
    ...(vanishing !== undefined && { 'float.gz.vanishing': angle(vanishing, CURVE) }),
    ...(downflooding && { 'float.gz.downflooding': angle(downflooding.heel, CURVE) }),
    'float.gz.area': datum(area, 'm.rad', 'work done up to downflooding or vanishing', 5),
  };
}

function offsetData({ offset }: Afloat): Data {
  const { people, heel, lowest, basis } = offset;
  return {
    'float.offset.people': datum(people, 'people', 'as ordered', 0),
    ...(heel !== undefined && { 'float.offset.heel': angle(heel, basis) }),
    ...(lowest && { 'float.offset.freeboard': datum(lowest.freeboard, 'm', basis, 4) }),
  };
}

function ballastData({ effect, drains, fills }: Ballast): Data {
  if (!effect) return { 'float.ballast.outcome': text('not computed: outside the hull') };
  const { capacity, water, dry, flooded } = effect;
  const state = (name: string, { metacentricHeight, rollPeriod, lowestFreeboard }: typeof dry) => ({
    ...(metacentricHeight !== undefined && {
      [`float.ballast.${name}.gm`]: datum(metacentricHeight, 'm', LOST, 4),
    }),
    ...(rollPeriod !== undefined && {
      [`float.ballast.${name}.roll-period`]: datum(rollPeriod, 's', '2 pi sqrt(I / (M g GM))', 3),
    }),
    ...(lowestFreeboard !== undefined && {
      [`float.ballast.${name}.freeboard-lowest`]: datum(lowestFreeboard, 'm', LOST, 4),
    }),
  });
  const time = (name: string, flow: Ballast['drains']): Data =>
    flow?.outcome === 'flows'
      ? { [`float.ballast.${name}`]: datum(flow.time, 's', 'orifice flow, vent counted', 2) }
      : {};
  return {
    'float.ballast.capacity': datum(capacity * 1000, 'L', 'form of the tank', 2),
    ...(water && { 'float.ballast.water': datum(water.mass, 'kg', LOST, 2) }),
    ...state('dry', dry),
    ...state('flooded', flooded),
    ...time('drain-time', drains),
    ...time('fill-time', fills),
  };
}

function swampedData({ foam, rule, balance, counted }: Swamped): Data {
  const litres = (value: number, method: string) => datum(value * 1000, 'L', method, 1);
  return {
    'float.swamped.foam': litres(foam, 'of the hull file'),
    ...('notComputed' in rule
      ? { 'float.swamped.foam-needed': text(`not computed: ${rule.notComputed}`) }
      : {
          'float.swamped.foam-needed': litres(rule.foam.total, HANDBOOK),
          'float.swamped.foam-still-needed': litres(rule.stillNeeded, HANDBOOK),
        }),
    ...Object.fromEntries(
      counted.map(({ name, weight }) => [
        `float.swamped.weighs.${name.replaceAll(/[^A-Za-z0-9]+/g, '-')}`,
        datum(weight, 'kg', 'Archimedes, under water', 2),
      ]),
    ),
    'float.swamped.reserve': datum(balance.reserve, 'kg', 'Archimedes, lift less weight', 2),
  };
}

function moveData({ trim }: Afloat): Data {
  const [move] = trim.moves;
  return move
    ? {
        'float.move.item': text(`${move.item.name} to ${move.to.name}`),
        'float.move.trim': angle(move.to.plane.trim, EQUILIBRIUM),
      }
    : {};
}

const text = (value: string): FigureDatum => ({ value, unit: 'text', method: 'computed' });

const angle = (value: number, method: string): FigureDatum =>
  datum(value / DEGREE, 'deg', method, 3);

function datum(value: number, unit: string, method: string, decimals: number): FigureDatum {
  return { value: Number(value.toFixed(decimals)) + 0, unit, method };
}
