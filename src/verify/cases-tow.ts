import {
  ballLoad,
  type BallLoad,
  type BrakeInput,
  brakesNeeded,
  couplingForce,
  type Jurisdiction,
  trailerLoad,
  winchPostFor,
} from '../tow/index.ts';
import { kilograms, metres } from '../units/index.ts';
import { casesIn } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const STATICS = 'derived: moments about the axle, worked by hand';
const VSB_1 =
  'Australian Design Rule 38, Vehicle Standards Bulletin 1 (as a state bulletin sums it up): axles braked';

const tow = casesIn('tow');

const TRAILER = { tare: kilograms(300), centre: metres(3.7), axle: metres(4) };
const BOAT = { mass: kilograms(1100), centre: metres(1.9), bow: metres(5.4) };

/** A single mass of 1,400 kg, `ahead` of the axle, on a trailer whose axle is 4 m behind the ball. */
const single = (ahead: number, get: (load: BallLoad) => number) => (): number => {
  const trailer = { tare: kilograms(0), centre: metres(4), axle: metres(4) };
  const boat = { mass: kilograms(1400), centre: metres(0), bow: metres(0) };
  const load = ballLoad(trailer, boat, metres(4 - ahead));
  return 'notComputed' in load ? Number.NaN : get(load);
};

const STEPS = ['none', 'one axle', 'all wheels'];
const braked = (place: Jurisdiction, total: number, onBall = 0, more: Partial<BrakeInput> = {}) => {
  const input = { total: kilograms(total), onBall: kilograms(onBall), axles: 1, ...more };
  const need = brakesNeeded(place, input);
  return 'notComputed' in need ? Number.NaN : STEPS.indexOf(need.braked);
};

/** Towing against statics, a law's way of counting and the coupling rule. */
export const TOW_CASES: readonly PublishedCase[] = [
  ...tow(
    STATICS,
    [
      '1,400 kg at 0.35 m ahead of an axle at 4 m: on the ball',
      122.5,
      'kg',
      single(0.35, (load) => load.onBall),
    ],
    ['the same: share of the total', 0.0875, '', single(0.35, (load) => load.share)],
    ['the same at 0.40 m: a tenth', 0.1, '', single(0.4, (load) => load.share)],
    [
      '300 kg trailer and 1,100 kg boat, winch post at 0.1 m: on the ball',
      132.5,
      'kg',
      () => {
        const load = ballLoad(TRAILER, BOAT, metres(0.1));
        return 'notComputed' in load ? load : load.onBall;
      },
    ],
    [
      'the same: winch post for a tenth on the ball',
      0.0727273,
      'm',
      () => winchPostFor(TRAILER, BOAT, 0.1),
      1e-7,
    ],
    [
      'Trailer of 200 kg rated 750 kg under a boat of 551 kg: what is left',
      -1,
      'kg',
      () =>
        trailerLoad({ boat: kilograms(551), tare: kilograms(200), rating: kilograms(750) }).left,
    ],
  ),
  ...tow(VSB_1, [
    'Australia: 800 kg of which 80 kg on the ball',
    0,
    '',
    () => braked('AU', 800, 80),
  ]),
  ...tow('UN Regulation 55, D = g T R/(T + R), worked by hand', [
    'Coupling of 2.0 t vehicle and 1.4 t trailer',
    8.0788,
    'kN',
    () => couplingForce(kilograms(2000), kilograms(1400)),
    1e-4,
  ]),
];
