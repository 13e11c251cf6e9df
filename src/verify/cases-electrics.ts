import {
  ampacityOf,
  areaOf,
  chooseFuse,
  type Circuit,
  conductorsFor,
  copperForDrop,
  hoursUntilFlat,
  sizeBank,
  voltsLost,
  WIRE_SIZES,
  type WiringRules,
} from '../electrics/index.ts';
import { amperes, FOOT, metres } from '../units/index.ts';
import { caseIn } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const ABYC = 'ABYC E-11, CM = K I L / E with K = 10.75 (formula from memory), worked by hand';
const CHART = 'a public worked example of the ABYC E-11 chart: 11 ft out, 10 ft back';
const CFR_HOT =
  '33 CFR 183.425, Table 5 note: engine space, 105 C insulation, whole amperes as printed';
const PEUKERT = 'Peukert (1897), t = H (C / (I H))^k, worked by hand';

const RULES: WiringRules = { nominalVolts: 12, insulation: 105, thinnest: '16' };

const circuitOf = (current: number, roundTripFeet: number, drop: Circuit['drop']): Circuit => ({
  name: 'worked example',
  purpose: 'accessory',
  current: amperes(current),
  run: metres((roundTripFeet / 2) * FOOT),
  drop,
  hoursADay: 1,
  continuous: false,
  engineSpace: false,
  bundled: 2,
});

/** Gauge as a number that can be compared: 16 for AWG 16, 0 for 1/0, -1 for 2/0; NaN when none was found. */
function gauge(circuit: Circuit): number {
  const [conductor] = conductorsFor(circuit, RULES);
  return conductor ? numberOf(conductor.awg) : Number.NaN;
}

const numberOf = (awg: string): number =>
  awg.endsWith('/0') ? 1 - Number.parseInt(awg, 10) : Number(awg);

const copper = (current: number, roundTripFeet: number, share: number): number =>
  copperForDrop({
    current: amperes(current),
    roundTrip: metres(roundTripFeet * FOOT),
    allowedVolts: share * 12,
  });

function hotAmpacity(awg: string, engineSpace: boolean, bundled = 2): number {
  const size = WIRE_SIZES.find((one) => one.awg === awg);
  return size ? ampacityOf(size, { insulation: 105, engineSpace, bundled }) : Number.NaN;
}

const areaOfGauge = (awg: string): number => {
  const size = WIRE_SIZES.find((one) => one.awg === awg);
  return size ? areaOf(size) : Number.NaN;
};

function flatAfter(current: number, peukert: number): number {
  const hours = hoursUntilFlat(
    { ratedAmpereHours: 100, ratingHours: 20, peukert },
    amperes(current),
  );
  return typeof hours === 'number' ? hours : Number.NaN;
}

function fuseFor(current: number, ampacity: number, continuous: boolean): number {
  const circuit = { ...circuitOf(current, 10, 'general'), continuous };
  const fuse = chooseFuse(circuit, { ampacity: amperes(ampacity), awg: '16' });
  return typeof fuse === 'number' ? fuse : Number.NaN;
}

const wiring = caseIn('electrics');

/** Wires, fuses and batteries against standards and worked examples. */
export const ELECTRICS_CASES: readonly PublishedCase[] = [
  wiring('10 A, 20 ft round trip, 12 V, 3 %: copper', ABYC, 5972.2, 'CM', 0.05, () =>
    copper(10, 20, 0.03),
  ),
  wiring('15 A, 30 ft round trip, 12 V, 3 %: copper', ABYC, 13_437.5, 'CM', 0.05, () =>
    copper(15, 30, 0.03),
  ),
  wiring('10 A, 21 ft round trip, 12 V, 10 %: copper', CHART, 1881.25, 'CM', 0.005, () =>
    copper(10, 21, 0.1),
  ),
  wiring('10 A, 21 ft round trip, 12 V, 10 %: gauge', CHART, 16, 'AWG', 0, () =>
    gauge(circuitOf(10, 21, 'general')),
  ),
  wiring('10 A, 20 ft round trip, 12 V, 3 %: gauge', ABYC, 12, 'AWG', 0, () =>
    gauge(circuitOf(10, 20, 'critical')),
  ),
  wiring('15 A, 30 ft round trip, 12 V, 3 %: gauge', ABYC, 8, 'AWG', 0, () =>
    gauge(circuitOf(15, 30, 'critical')),
  ),
  wiring('100 A, 16 ft round trip, 12 V, 3 %: gauge', ABYC, 3, 'AWG', 0, () =>
    gauge(circuitOf(100, 16, 'critical')),
  ),
  wiring('10 A through 20 ft of AWG 12: voltage lost', ABYC, 0.329_25, 'V', 5e-6, () =>
    voltsLost(amperes(10), metres(20 * FOOT), 6530),
  ),
  wiring(
    'AWG 10 in mm2',
    'ASTM B258, table of dimensions, second hand (5.261 mm2)',
    5.261,
    'mm2',
    2e-3,
    () => areaOfGauge('10'),
  ),
  wiring(
    'AWG 4/0 in mm2',
    'ASTM B258, table of dimensions, second hand (107.2 mm2)',
    107.2,
    'mm2',
    0.05,
    () => areaOfGauge('4/0'),
  ),
  wiring('AWG 14, 105 C, engine space', CFR_HOT, 30, 'A', 0.5, () => hotAmpacity('14', true)),
  wiring('AWG 6, 105 C, engine space', CFR_HOT, 102, 'A', 0.5, () => hotAmpacity('6', true)),
  wiring('AWG 2/0, 105 C, engine space', CFR_HOT, 280, 'A', 0.5, () => hotAmpacity('2/0', true)),
  wiring(
    'AWG 10, 105 C, six conductors in one bundle',
    'ABYC E-11 (from memory): 4 to 6 conductors carry 60 % of 60 A',
    36,
    'A',
    1e-12,
    () => hotAmpacity('10', false, 6),
  ),
  wiring(
    '8 A without rest on a wire of 25 A: fuse',
    'common practice, no source: 125 % of the load, next rating sold',
    10,
    'A',
    0,
    () => fuseFor(8, 25, true),
  ),
  wiring(
    '22 A on a wire of 25 A: the largest fuse that protects it',
    '33 CFR 183.455 (from memory): at most the ampacity',
    25,
    'A',
    0,
    () => fuseFor(22, 25, false),
  ),
  wiring('100 Ah at 20 h, k 1.25, at 10 A', PEUKERT, 8.408_96, 'h', 1e-5, () =>
    flatAfter(10, 1.25),
  ),
  wiring('100 Ah at 20 h, k 1.25, at 25 A', PEUKERT, 2.674_96, 'h', 1e-5, () =>
    flatAfter(25, 1.25),
  ),
  wiring('100 Ah at 20 h, k 1.05, at 10 A', PEUKERT, 9.659_36, 'h', 1e-5, () =>
    flatAfter(10, 1.05),
  ),
  wiring(
    '60 Ah a day for 2 days from 100 Ah batteries, half usable',
    'derived, worked by hand: 240 Ah',
    3,
    'batteries',
    0,
    () => {
      const bank = sizeBank({
        dailyAmpereHours: 60,
        days: 2,
        usable: 0.5,
        batteryAmpereHours: 100,
      });
      return 'batteries' in bank ? bank.batteries : Number.NaN;
    },
  ),
];
