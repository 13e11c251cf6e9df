import { type Method, method, money } from './method.ts';

const E11 = 'ABYC E-11, from memory, and 33 CFR 183.425';
const ISO_LAMINATE = {
  source: 'ISO 12215-5:2008 Annex C, defaults from memory, not tested',
  validity: 'E-glass in polyester or vinylester without voids.',
};

/** Methods of laminate, wiring and hours, in the order of a page that lists them. */
export const WORKSHOP_METHODS = {
  laminate: {
    layUp: method({
      title: 'Laminate',
      how: 'Area × lay-up; thickness from the mass of {fibre} and its share of the mass.',
      ...ISO_LAMINATE,
      verify: 'Verify by weighing and by a burn-off test.',
    }),
    strength: method({
      title: 'Strength of a lay-up',
      how: 'Beam and sandwich theory on a strip of the lay-up.',
      ...ISO_LAMINATE,
      verify: 'Verify by testing a panel of the shop’s own.',
    }),
    screening: method({
      title: 'Bottom panel',
      how: 'Bottom pressure of a planing boat on one flat panel, held fast at its edges; half of the ultimate strength is used.',
      source: 'ISO 12215-5:2008, formulas not checked again since',
      validity: 'Monohull, waterline 2.5 m to 24 m, planing, up to 50 kn. A screening.',
      verify: 'Verify by a designer’s full calculation and by test.',
    }),
    cutting: money('Cutting', 'Strips placed side by side on the roll.'),
    infusion: method({
      title: 'Infusion',
      how: 'Flow of the resin from each feed line in one dimension; the part must be full within a share of the gel time.',
      source: 'Darcy’s law',
      validity: 'Feed lines opened together; permeability of the same stack.',
      verify: 'Verify by infusing a sample of the same stack.',
    }),
  },
  wiring: {
    wire: method({
      title: 'Wires and fuses',
      how: 'Conductor: the larger of what voltage drop (K = 10.75, 3 % or 10 %) and ampacity with bundling and heat ask for. Fuse: at least the load, at most the ampacity. Runs along the axes, times the routing factor.',
      source: E11,
      validity: 'Direct current up to 50 V, copper of full AWG area, one conductor each way.',
      verify:
        'Verify by measuring the drop under load; a licensed electrician confirms it under local rules.',
    }),
    starter: method({
      title: 'Starter cable',
      how: 'Voltage drop while cranking; at least what the engine’s maker asks for.',
      source: 'ABYC E-11, from memory',
      validity: 'Cranking for seconds only. Follow the engine maker’s cable table.',
      verify: 'Verify by the voltage at the starter while cranking.',
    }),
    battery: method({
      title: 'Batteries',
      how: 'Use is current × hours a day. The batteries last for their usable share divided by that; at one steady current, by Peukert’s law.',
      source: 'Peukert’s law (emptied faster, a battery gives less)',
      validity: 'New batteries at 25 °C. Follow the maker’s data sheet.',
      verify: 'Verify by a discharge test.',
    }),
  },
  workshop: {
    hours: method({
      title: 'Hours',
      how: 'The hours of all items, with the extra time that the first boats of a hull take.',
      source: 'the catalogue',
    }),
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Method>>>>;
