import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ballLoad,
  type BallLoad,
  ballShareMargins,
  type Computed,
  type Jurisdiction,
  winchPostFor,
} from '../../src/tow/index.ts';
import { kilograms, metres } from '../../src/units/index.ts';

const trailer = { tare: kilograms(300), centre: metres(3.7), axle: metres(4) };
const boat = { mass: kilograms(1100), centre: metres(1.9), bow: metres(5.4) };

function found(load: Computed<BallLoad>): BallLoad {
  if ('notComputed' in load) throw new Error(load.notComputed);
  return load;
}
const at = (post: number) => found(ballLoad(trailer, boat, metres(post)));

describe('the load on the ball', () => {
  it('and that on the axles come to the whole', () => {
    const { total, onBall, onAxles, share } = at(0.1);
    expect(onBall + onAxles).toBeCloseTo(total, 9);
    expect(share).toBeCloseTo(onBall / 1400, 12);
  });

  it('falls as the boat moves aft, and turns negative', () => {
    expect(at(0.2).onBall).toBeLessThan(at(0.1).onBall);
    expect(at(1).onBall).toBeLessThan(0);
  });

  it('is nothing for a mass over the axle', () => {
    const bare = { ...trailer, tare: kilograms(0) };
    expect(found(ballLoad(bare, boat, metres(0.5))).onBall).toBeCloseTo(0, 9);
  });

  it('has the wanted share where the winch post is put for it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 0.2, noNaN: true }),
        fc.double({ min: 200, max: 2000, noNaN: true }),
        (share, mass) => {
          const heavy = { ...boat, mass: kilograms(mass) };
          const post = winchPostFor(trailer, heavy, share);
          if (typeof post === 'object') throw new Error(post.notComputed);
          expect(found(ballLoad(trailer, heavy, post)).share).toBeCloseTo(share, 9);
        },
      ),
    );
  });

  it('is not computed without an axle aft of the ball, or anything to tow', () => {
    expect(ballLoad({ ...trailer, axle: metres(0) }, boat, metres(0))).toHaveProperty(
      'notComputed',
    );
    expect(winchPostFor(trailer, { ...boat, mass: kilograms(0) }, 0.1)).toHaveProperty(
      'notComputed',
    );
  });
});

describe('the share on the ball', () => {
  const holds = (share: number, place: Jurisdiction) =>
    ballShareMargins(share, place).every((margin) => margin.holds);

  it('holds at both ends of the band and not just outside', () => {
    expect([holds(0.05, 'AU'), holds(0.0499, 'AU')]).toEqual([true, false]);
    expect([holds(0.15, 'NZ'), holds(0.1501, 'NZ')]).toEqual([true, false]);
    expect([holds(0.04, 'UK-EU'), holds(0.0399, 'UK-EU')]).toEqual([true, false]);
  });
});
