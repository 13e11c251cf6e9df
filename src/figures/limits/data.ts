import { UNIT_KINDS } from '../../units/index.ts';
import { datumOf } from '../datum.ts';
import type { FigureDatum, Figures } from '../types.ts';

type Data = Record<string, FigureDatum>;

const DEGREE = UNIT_KINDS.angle.deg;
const key = (name: string): string => name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');

/** Ratings by each method, the screening for categories, and the outboard's fit, by stable dotted names. */
export function limitsData({ limits }: Pick<Figures, 'limits'>): Readonly<Data> {
  const data: Data = {};
  const { ratings, asOrdered, categories, engine } = limits;
  for (const rating of 'notComputed' in ratings ? [] : ratings) {
    const name = `limits.${rating.method}`;
    data[`${name}.people`] = datumOf(rating.people, '1', rating.caution, 0);
    data[`${name}.load`] = datumOf(rating.load, 'kg', `${rating.loadMeans}; ${rating.caution}`, 1);
    data[`${name}.power`] = datumOf(rating.power, 'W', rating.caution, 0);
  }
  if (asOrdered) {
    const how = 'people at 75 kg with effects, tanks at 95 %, water in full; ISO 14946, an account';
    data['limits.iso.as-ordered.load'] = datumOf(asOrdered.onPlate, 'kg', how, 1);
    data['limits.iso.as-ordered.greatest'] = datumOf(
      asOrdered.greatest,
      'kg',
      `${how}, fixed tanks too`,
      1,
    );
    data['limits.iso.as-ordered.left'] = datumOf(
      asOrdered.left,
      'kg',
      'what the method allows, less that',
      1,
    );
  }
  for (const { category, checks } of 'notComputed' in categories ? [] : categories) {
    for (const { name, left, unit } of checks) {
      const method = 'left of the limit; an estimate, not a category; verify by ISO 12217’s tests';
      data[`limits.category.${category}.${key(name)}`] = datumOf(left, unit, method, 3);
    }
  }
  if (engine) {
    data['limits.engine.trim'] = datumOf(
      typeof engine.trim === 'number' ? engine.trim / DEGREE : engine.trim,
      '°',
      'moment of the outboard / (displacement x longitudinal GM)',
      2,
    );
    data['limits.engine.stern-freeboard'] = datumOf(
      'notComputed' in engine.stern ? engine.stern : engine.stern.value,
      'm',
      'height of the transom’s opening above the water, ready, nobody aboard; verify afloat',
      3,
    );
  }
  return data;
}

/** Ball load, winch post, brakes, and every margin on the road, by stable dotted names. */
export function towData({ tow }: Pick<Figures, 'tow'>): Readonly<Data> {
  const data: Data = {};
  const { trailer, roof = [] } = tow;
  const left = (name: string, value: number, unit: string): void => {
    const how = unit === 'm' ? 'by measuring' : 'on a weighbridge';
    data[`${name}.left`] = datumOf(value, unit, `what is left of the limit; verify ${how}`, 3);
  };
  for (const one of roof) left(`tow.roof.${key(one.name)}`, one.left, one.unit);
  if (!trailer) return data;
  const { ball, winchPost, brakes, gear, vehicle, length, lengths, width, coupling } = trailer;
  const moments = 'moments about the axle on level ground; verify by weighing the coupling';
  data['tow.on-ball'] = datumOf('notComputed' in ball ? ball : ball.onBall, 'kg', moments, 2);
  data['tow.ball-share'] = datumOf('notComputed' in ball ? ball : ball.share, '1', moments, 4);
  data['tow.winch-post'] = datumOf(
    'notComputed' in winchPost ? winchPost : winchPost.at,
    'm',
    'aft of the ball',
    3,
  );
  data['tow.winch-post-usual'] = datumOf(
    'notComputed' in winchPost ? winchPost : winchPost.usual,
    'm',
    'aft of the ball, for the usual share on it',
    3,
  );
  data['tow.brakes'] =
    'notComputed' in brakes
      ? datumOf(brakes, '1', 'thresholds of the place', 0)
      : {
          value: brakes.braked,
          unit: 'braked wheels that the rules ask for',
          method: brakes.source,
        };
  data['tow.length'] = datumOf(length, 'm', 'ball to the last thing behind it', 3);
  left('tow.width', width.left, 'm');
  const brakeMargins = 'notComputed' in brakes ? brakes : brakes.margins;
  const postMargins = 'notComputed' in winchPost ? winchPost : winchPost.margins;
  for (const margins of [gear, vehicle, lengths, brakeMargins, postMargins])
    for (const one of 'notComputed' in margins ? [] : margins)
      left(`tow.${key(one.name)}`, one.left, one.unit);
  data['tow.coupling'] = datumOf(coupling, 'kN', 'D-value, UN Regulation 55', 2);
  return data;
}
