import { type Finding, finding, type FindingCode, type Place } from '../../findings/index.ts';
import type { Margin } from '../../tow/index.ts';
import { formatterOf, type Formatter, kilograms, metres } from '../../units/index.ts';
import type { TrailerFigures } from './tow.ts';
import type { Figures } from '../types.ts';

type Checked = Pick<Figures, 'build' | 'tow'>;

/** Brakes, ball load, running gear, width, and the limits of the vehicle and its roof. */
export function checkTow({ build, tow }: Checked): readonly Finding[] {
  const format = formatterOf(build.yard);
  const over = (code: FindingCode, at: Place, margins: readonly Margin[]): readonly Finding[] =>
    margins
      .filter(({ holds }) => !holds)
      .map(({ name, value, limit }) =>
        finding(code, at, {
          received: `${name}: ${format.mass(kilograms(value))}`,
          expected: `at most ${format.mass(kilograms(limit))}`,
        }),
      );
  const { trailer, roof = [] } = tow;
  const onRoof = over('ROOF_OVERLOADED', build.place(['tow', 'roof']), roof);
  if (!trailer) return onRoof;
  const at = build.place(['trailer']);
  const post = build.order.tow?.winchPost === undefined ? at : build.place(['tow', 'winchPost']);
  const known = (margins: TrailerFigures['gear']) => ('notComputed' in margins ? [] : margins);
  return [
    ...onRoof,
    ...checkBrakes(trailer, at),
    ...checkBall(trailer, post, format),
    ...over('AXLE_OR_TYRE_OVERLOADED', at, known(trailer.gear)),
    ...tooWide(trailer, at, format),
    ...tooLong(trailer, at, format),
    ...postOutOfReach(trailer, post, format),
    ...over('VEHICLE_OVERLOADED', build.place(['tow', 'vehicle']), known(trailer.vehicle)),
  ];
}

function checkBrakes({ brakes, trailer }: TrailerFigures, at: Place): readonly Finding[] {
  if ('notComputed' in brakes) return [];
  const missing = brakes.faults.map((received) => finding('BRAKES_MISSING', at, { received }));
  const isAdvised = brakes.advised !== brakes.braked && trailer.brakes === 'none';
  if (missing.length > 0 || !isAdvised) return missing;
  return [
    finding('BRAKES_ADVISED', at, {
      received: 'no brakes',
      expected: `brakes on ${brakes.advised}: ${brakes.notes.join('; ')}`,
    }),
  ];
}

function checkBall(
  { ball, share, winchPost, usualShare }: TrailerFigures,
  at: Place,
  format: Formatter,
): readonly Finding[] {
  if ('notComputed' in ball || 'notComputed' in share || 'notComputed' in winchPost) return [];
  const [least, greatest] = share;
  if (!least || !greatest || (least.holds && greatest.holds)) return [];
  const usual = `${format.percent(usualShare, 0)}, the usual share, is on the ball`;
  const remedy = winchPost.canBeUsual
    ? `Move the winch post to ${format.length(metres(winchPost.usual))} aft of the ball: then ${usual}`
    : 'The winch post cannot stand far enough: shift the axle, or choose another trailer';
  return [
    finding(least.holds ? 'BALL_LOAD_HIGH' : 'BALL_LOAD_LOW', at, {
      received: `${format.mass(ball.onBall)}, ${format.percent(ball.share, 1)} of ${format.mass(ball.total)}`,
      expected: `from ${format.percent(least.limit, 0)} to ${format.percent(greatest.limit, 0)}`,
      remedy,
    }),
  ];
}

function tooWide({ width }: TrailerFigures, at: Place, format: Formatter): readonly Finding[] {
  if ('notComputed' in width || width.holds) return [];
  return [
    finding('TRAILER_TOO_WIDE', at, {
      received: format.length(metres(width.value)),
      expected: `at most ${format.length(metres(width.limit))}`,
    }),
  ];
}

function tooLong({ lengths }: TrailerFigures, at: Place, format: Formatter): readonly Finding[] {
  if ('notComputed' in lengths) return [];
  return lengths
    .filter(({ holds }) => !holds)
    .map(({ name, value, limit }) =>
      finding('TRAILER_TOO_LONG', at, {
        received: `${name}: ${format.length(metres(value))}`,
        expected: `at most ${format.length(metres(limit))}`,
      }),
    );
}

function postOutOfReach(
  { winchPost, trailer }: TrailerFigures,
  at: Place,
  format: Formatter,
): readonly Finding[] {
  if ('notComputed' in winchPost || winchPost.margins.every(({ holds }) => holds)) return [];
  const range = trailer.winchPost;
  return [
    finding('WINCH_POST_OUT_OF_REACH', at, {
      received: `${format.length(winchPost.at)} aft of the ball`,
      expected: range ? `${format.length(range.from)} to ${format.length(range.to)}` : '',
    }),
  ];
}
