import type { Basis } from '../units/index.ts';

/** The words beside every figure of this room that could hurt someone when wrong. */
export const ELECTRICS_BASIS = {
  wiring: {
    method:
      'Conductor: the larger of ABYC E-11 voltage drop (K = 10.75, 3 % or 10 %) and 33 CFR 183.425 Table 5 ampacity with bundling and heat. Fuse: at least the load, at most the ampacity.',
    validity: 'Direct current up to 50 V, copper of full AWG area, one conductor each way.',
    caution:
      'Estimated to ABYC E-11 and 33 CFR 183.425; verify by measuring the drop under load. To be confirmed by a licensed electrician under local rules.',
  },
  battery: {
    method: 'Daily budget over the usable share of the bank; hours at a current by Peukert’s law.',
    validity: 'New batteries at 25 °C; follow the maker’s data sheet.',
    caution:
      'Estimated to Peukert’s law (emptied faster, a battery gives less); verify by a discharge test.',
  },
  starter: {
    method: 'Starter cable by ABYC E-11 voltage drop while cranking.',
    validity: 'Cranking for seconds only; follow the engine maker’s cable table.',
    caution: 'Estimated to ABYC E-11; verify by the voltage at the starter while cranking.',
  },
} as const satisfies Readonly<Record<string, Basis>>;
