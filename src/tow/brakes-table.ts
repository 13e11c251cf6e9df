import { POUND } from '../units/index.ts';
import type { Jurisdiction } from './types.ts';

/** What a law asks for up to a mass. */
export interface BrakeStep {
  /** kg, this mass included. */
  readonly upTo: number;
  readonly braked: 'none' | 'one axle' | 'all wheels';
  /** Brakes worked by the coupling are allowed. */
  readonly overRun: boolean;
  readonly breakaway: boolean;
}

export interface BrakeLaw {
  /** Mass on the trailer's own axles, or trailer and load together. */
  readonly counts: 'axles' | 'total';
  /** Greatest total, kg, for which these rules are the ones to read. */
  readonly covers: number;
  readonly steps: readonly BrakeStep[];
  readonly source: string;
}

const NONE = { braked: 'none', overRun: true, breakaway: false } as const;

export const BRAKE_LAWS: Readonly<Record<Jurisdiction, BrakeLaw>> = {
  AU: {
    counts: 'axles',
    covers: 4500,
    steps: [
      { upTo: 750, ...NONE },
      { upTo: 2000, braked: 'one axle', overRun: true, breakaway: false },
      { upTo: 4500, braked: 'all wheels', overRun: false, breakaway: true },
    ],
    source:
      'Australian Design Rule 38 and Vehicle Standards Bulletin 1, as summarised by suppliers and a state bulletin: GTM to 750 kg on a single axle, to 2,000 kg, above',
  },
  NZ: {
    counts: 'total',
    covers: 3500,
    steps: [
      { upTo: 2000, ...NONE },
      { upTo: 2500, braked: 'one axle', overRun: true, breakaway: true },
      { upTo: 3500, braked: 'all wheels', overRun: true, breakaway: true },
    ],
    source:
      'Land Transport Rule: Light-vehicle Brakes 2002, as summarised by suppliers; chains may stand for the breakaway to 2,500 kg, over-run brakes above need UN ECE R13',
  },
  'UK-EU': {
    counts: 'total',
    covers: 3500,
    steps: [
      { upTo: 750, ...NONE },
      { upTo: 3500, braked: 'all wheels', overRun: true, breakaway: true },
    ],
    source:
      'UN Regulation 13, categories O1 and O2; unbraked to 750 kg and half the {kerb} mass of the car: Road Vehicles (Construction and Use) Regulations 1986, reg. 87 (number from memory)',
  },
  US: {
    counts: 'total',
    covers: 10_000 * POUND,
    steps: [
      { upTo: 3000 * POUND, ...NONE },
      { upTo: 10_000 * POUND, braked: 'all wheels', overRun: true, breakaway: true },
    ],
    source:
      '49 CFR 393.42 and 393.43, which bind commerce only: 3,000 lb; most states draw the line for others at 1,500, 3,000 or 4,500 lb',
  },
};
