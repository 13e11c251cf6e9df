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
import { casesIn, type Row } from './case-in.ts';
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

const ofSize = (awg: string, value: (size: (typeof WIRE_SIZES)[number]) => number) => () => {
  const size = WIRE_SIZES.find((one) => one.awg === awg);
  return size && value(size);
};
const ampacity = (awg: string, engineSpace: boolean, bundled = 2) =>
  ofSize(awg, (size) => ampacityOf(size, { insulation: 105, engineSpace, bundled }));
const hot = (awg: string, amps: number): Row => [
  `AWG ${awg}, 105 C, engine space`,
  amps,
  'A',
  ampacity(awg, true),
  0.5,
];

const flatAfter = (current: number, peukert: number, hours: number): Row => [
  `100 Ah at 20 h, k ${peukert}, at ${current} A`,
  hours,
  'h',
  () => hoursUntilFlat({ ratedAmpereHours: 100, ratingHours: 20, peukert }, amperes(current)),
  1e-5,
];

const fuseFor = (current: number, amps: number, continuous: boolean) => () =>
  chooseFuse(
    { ...circuitOf(current, 10, 'general'), continuous },
    { ampacity: amperes(amps), awg: '16' },
  );
const bank = () => {
  const sized = sizeBank({ dailyAmpereHours: 60, days: 2, usable: 0.5, batteryAmpereHours: 100 });
  return 'batteries' in sized ? sized.batteries : sized;
};

const wiring = casesIn('electrics');

/** Wires, fuses and batteries against standards and worked examples. */
export const ELECTRICS_CASES: readonly PublishedCase[] = [
  ...wiring(
    ABYC,
    ['10 A, 20 ft round trip, 12 V, 3 %: copper', 5972.2, 'CM', () => copper(10, 20, 0.03), 0.05],
    ['15 A, 30 ft round trip, 12 V, 3 %: copper', 13_437.5, 'CM', () => copper(15, 30, 0.03), 0.05],
    [
      '10 A, 20 ft round trip, 12 V, 3 %: gauge',
      12,
      'AWG',
      () => gauge(circuitOf(10, 20, 'critical')),
    ],
    [
      '15 A, 30 ft round trip, 12 V, 3 %: gauge',
      8,
      'AWG',
      () => gauge(circuitOf(15, 30, 'critical')),
    ],
    [
      '100 A, 16 ft round trip, 12 V, 3 %: gauge',
      3,
      'AWG',
      () => gauge(circuitOf(100, 16, 'critical')),
    ],
    [
      '10 A through 20 ft of AWG 12: voltage lost',
      0.329_25,
      'V',
      () => voltsLost(amperes(10), metres(20 * FOOT), 6530),
      5e-6,
    ],
  ),
  ...wiring(
    CHART,
    ['10 A, 21 ft round trip, 12 V, 10 %: copper', 1881.25, 'CM', () => copper(10, 21, 0.1), 0.005],
    [
      '10 A, 21 ft round trip, 12 V, 10 %: gauge',
      16,
      'AWG',
      () => gauge(circuitOf(10, 21, 'general')),
    ],
  ),
  ...wiring(
    'ASTM B258, table of dimensions, second hand',
    ['AWG 10 in mm2', 5.261, 'mm2', ofSize('10', areaOf), 2e-3],
    ['AWG 4/0 in mm2', 107.2, 'mm2', ofSize('4/0', areaOf), 0.05],
  ),
  ...wiring(CFR_HOT, hot('14', 30), hot('6', 102), hot('2/0', 280)),
  ...wiring('ABYC E-11 (from memory): 4 to 6 conductors carry 60 % of 60 A', [
    'AWG 10, 105 C, six conductors in one bundle',
    36,
    'A',
    ampacity('10', false, 6),
  ]),
  ...wiring('common practice, no source: 125 % of the load, next rating sold', [
    '8 A without rest on a wire of 25 A: fuse',
    10,
    'A',
    fuseFor(8, 25, true),
  ]),
  ...wiring('33 CFR 183.455 (from memory): at most the ampacity', [
    '22 A on a wire of 25 A: the largest fuse that protects it',
    25,
    'A',
    fuseFor(22, 25, false),
  ]),
  ...wiring(
    PEUKERT,
    flatAfter(10, 1.25, 8.408_96),
    flatAfter(25, 1.25, 2.674_96),
    flatAfter(10, 1.05, 9.659_36),
  ),
  ...wiring('derived, worked by hand: 240 Ah', [
    '60 Ah a day for 2 days from 100 Ah batteries, half usable',
    3,
    'batteries',
    bank,
  ]),
];
