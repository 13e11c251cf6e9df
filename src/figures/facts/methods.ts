/** How a figure was found: said once, for whoever asks how far to trust it. */
export interface Method {
  /** What it finds, as a heading. */
  readonly title: string;
  readonly how: string;
  /** A standard, a book, a law of nature; "common practice, no source" is a source that may be named. */
  readonly source: string;
  /** Where it holds; empty where it holds always. */
  readonly validity: string;
  /** Who or what confirms it; empty where nothing is left to confirm. */
  readonly verify: string;
}

const DERIVED = 'arithmetic';
const PRACTICE = 'common practice, no source';
const WEIGH = 'Verify by weighing.';
const TRIAL = 'Verify by trial.';
const E11 = 'ABYC E-11 and 33 CFR 183.425';
const ISO_LAMINATE = 'ISO 12215-5:2008 Annex C, defaults, not tested';
const STILL_WATER = 'Still water; the hull as its lines are drawn, closed at the sheer.';

const money = (how: string, source = DERIVED): Method => ({
  title: 'Price',
  how,
  source,
  validity: '',
  verify: '',
});

const laminate = (title: string, how: string, verify: string): Method => ({
  title,
  how,
  source: ISO_LAMINATE,
  validity: 'E-glass in polyester or vinylester without voids.',
  verify,
});

/** Every method that a figure of an order is found by. */
export const METHODS = {
  ordered: {
    title: 'As ordered',
    how: 'As the order, the catalogue or the yard file says.',
    source: 'the files of the shop',
    validity: '',
    verify: '',
  },
  cost: money('Materials, packs, freight, labour, overhead and other cost of the lines.'),
  linePrice: money(
    'Cost / (1 - margin), rounded half away from zero once a line; or the list price that is fixed.',
  ),
  sumOfLines: money('The sum of the lines.'),
  tax: money('The rate of the yard file on the price before tax.'),
  charges: money('Passed on at cost.'),
  finalPrice: money('Price before tax, tax, and charges with their tax.'),
  toPay: money('The final price less trade-in and what is paid.'),
  sealed: money('As sealed in the quote that was accepted, with the changes that were signed.'),
  margin: money('Price before tax, after discount, less cost.'),
  hourCost: money('As the yard gives it, or wage x (1 + on-costs) / productive share.'),
  costedAgain: money('Costed again with one thing moved, the price held.'),
  hours: {
    title: 'Hours',
    how: 'The hours of the items, times what the first boats of a hull take longer.',
    source: 'the catalogue',
    validity: '',
    verify: '',
  },
  masses: {
    title: 'Mass and load',
    how: 'The sum of the items with the shop’s contingency; centres by moments about the boat’s axes.',
    source: DERIVED,
    validity: '',
    verify: WEIGH,
  },
  planing: {
    title: 'Speed',
    how: 'Savitsky’s method for planing boats, between the least and the most of the outboard’s power that may reach the water. Calm water, clean bottom, no wind.',
    source: 'Savitsky, Hydrodynamic Design of Planing Hulls, Marine Technology 1(1), 1964',
    validity:
      'One hull with hard chines, on the plane; speed coefficient 0.60 to 13, trim 2° to 15°, at most 4 beams wetted.',
    verify: TRIAL,
  },
  crouch: {
    title: 'Speed, second estimate',
    how: 'Crouch’s formula, which knows mass and power only.',
    source: 'Crouch’s formula, from secondary sources',
    validity: 'Planing boats.',
    verify: TRIAL,
  },
  porpoising: {
    title: 'Porpoising',
    how: 'Celano’s regression, with the outboard trimmed level.',
    source: 'Celano, US Naval Academy, 1998, from memory',
    validity: 'Deadrise 5° to 25°; square root of CL/2 from 0.13 to 0.36.',
    verify: TRIAL,
  },
  fuel: {
    title: 'Fuel and range',
    how: 'The engine’s consumption with its shape at part load; the fuel ordered less the reserve, over the flow.',
    source: PRACTICE,
    validity: 'No wind, no current. Not for planning a passage until measured.',
    verify: TRIAL,
  },
  propeller: {
    title: 'Propeller',
    how: 'Speed / (turns of the propeller x (1 - slip)), at full throttle, loaded.',
    source: DERIVED,
    validity: '',
    verify: TRIAL,
  },
  holding: {
    title: 'Bow motor',
    how: 'Wind with gusts and current from the same side on the profile of the lines, with a fifth more for outboard and canopy, and the people; usable charge over the current at that thrust.',
    source: PRACTICE,
    validity: 'Current up to 1.5 m/s.',
    verify: TRIAL,
  },
  rating: {
    title: 'People, load and power',
    how: 'Estimates by method, to stand beside the shop’s own rating.',
    source: 'see the method',
    validity: '',
    verify: 'To be confirmed by the builder by test under local rules.',
  },
  loadCounted: {
    title: 'Load as ISO counts it',
    how: 'People at 75 kg with effects, tanks at 95 %, water in full.',
    source: 'ISO 14946, from secondary sources, not checked against the standard',
    validity: '',
    verify: 'To be confirmed by the builder by test under local rules.',
  },
  category: {
    title: 'Screening for a design category',
    how: 'Freeboard, heel and downflooding height only; what is left of each limit. An estimate, not a category.',
    source: 'ISO 12217-1:2015, from secondary sources, not checked against the standard',
    validity: 'Loaded as ordered.',
    verify: 'Verify by the tests of ISO 12217.',
  },
  engineTrim: {
    title: 'Trim by the outboard',
    how: 'Moment of the outboard / (displacement x longitudinal GM).',
    source: DERIVED,
    validity: 'Small angles.',
    verify: 'Verify afloat.',
  },
  ballLoad: {
    title: 'Towing',
    how: 'Moments about the axle on level ground, fuel and loose gear aboard.',
    source: `moments: ${DERIVED}; shares of the total: ${PRACTICE}`,
    validity: 'The trailer as the catalogue describes it.',
    verify: 'Verify by weighing the coupling and on a weighbridge.',
  },
  roadRules: {
    title: 'Rules of the road',
    how: 'Mass, length and width against the thresholds of the place.',
    source: 'see the place; from secondary sources and from memory',
    validity: '',
    verify: 'Confirm with the authority.',
  },
  coupling: {
    title: 'Coupling',
    how: 'D-value of towing vehicle and trailer.',
    source: 'UN Regulation 55',
    validity: '',
    verify: 'Confirm with the authority.',
  },
  hydrostatics: {
    title: 'Draught, trim, heel, freeboard and stability',
    how: 'The drawn hull sinks and turns until it carries the counted masses; GM and righting arms from the heeled volume with trim free.',
    source: 'Archimedes; equilibrium as the least potential energy',
    validity: STILL_WATER,
    verify: 'Verify by weighing, by draught marks and by an inclining test.',
  },
  offsetLoad: {
    title: 'People to one side',
    how: 'Everyone moves to one side; heel and freeboard that are left, by hydrostatics.',
    source: 'the screen that the yard file names',
    validity: STILL_WATER,
    verify: 'Verify by an offset-load test.',
  },
  ballast: {
    title: 'Ballast tank',
    how: 'Lost buoyancy: the open tank counts as part of the sea. Filling and draining by Torricelli’s law through outlet and vent.',
    source: 'lost buoyancy; Torricelli',
    validity: 'No help from the boat gathering way.',
    verify: 'Verify by draught marks, by timing a roll and by timing the tank.',
  },
  handbook: {
    title: 'Foam by the rule',
    how: 'Flotation by the Handbook’s tables; neither core nor fuel counts.',
    source: 'US Coast Guard Boatbuilder’s Handbook on 33 CFR 183 subpart G',
    validity: 'Monohull outboard boats shorter than 20 ft.',
    verify: 'Verify by a swamping test.',
  },
  archimedes: {
    title: 'Swamped',
    how: 'Lift of all that floats less what all weighs under water; people half under water, air in lockers not counted.',
    source: 'Archimedes',
    validity: 'The fuel tank stays shut, and loose gear stays aboard.',
    verify: 'Verify by a swamping test.',
  },
  growth: {
    title: 'Growth',
    how: 'What the boat itself puts on beyond the contingency, at its own centre raised as the yard allows; differences of two equilibria.',
    source: PRACTICE,
    validity: STILL_WATER,
    verify: 'Verify by weighing the boat again.',
  },
  layUp: laminate(
    'Laminate',
    'Area times lay-up: thickness from fibre mass and fibre by mass.',
    'Verify by weighing and by a burn-off test.',
  ),
  strength: laminate(
    'Strength of a lay-up',
    'Beam and sandwich theory on a strip of the lay-up.',
    'Verify by testing a panel of the shop’s own.',
  ),
  screening: {
    title: 'Bottom panel',
    how: 'Bottom pressure of a planing boat against one clamped flat panel; half of the ultimate strength is used.',
    source: 'ISO 12215-5:2008, formulas not read again since',
    validity: 'Monohull, waterline 2.5 m to 24 m, planing, up to 50 kn. A screening.',
    verify: 'Verify by a designer’s full calculation and by test.',
  },
  cutting: {
    title: 'Cutting',
    how: 'Strips placed side by side on the roll.',
    source: DERIVED,
    validity: '',
    verify: '',
  },
  infusion: {
    title: 'Infusion',
    how: 'Darcy’s law in one dimension from each feed line; a share of the gel time is the limit.',
    source: 'Darcy’s law',
    validity: 'Feed lines opened together; permeability of the same stack.',
    verify: 'Verify by infusing a sample of the same stack.',
  },
  gate: {
    title: 'Target masses',
    how: 'What is aboard after a stage; the band joins the spreads of the stages and the scale’s as the root of the sum of squares.',
    source: PRACTICE,
    validity: '',
    verify: WEIGH,
  },
  wire: {
    title: 'Wiring',
    how: 'Conductor: the larger of voltage drop (K = 10.75, 3 % or 10 %) and ampacity with bundling and heat. Fuse: at least the load, at most the ampacity. Runs along the axes, times the routing factor.',
    source: E11,
    validity: 'Direct current up to 50 V, copper of full AWG area, one conductor each way.',
    verify:
      'Verify by measuring the drop under load; a licensed electrician confirms it under local rules.',
  },
  starter: {
    title: 'Starter cable',
    how: 'Voltage drop while cranking; at least what the engine’s maker asks for.',
    source: 'ABYC E-11',
    validity: 'Cranking for seconds only. Follow the engine maker’s cable table.',
    verify: 'Verify by the voltage at the starter while cranking.',
  },
  battery: {
    title: 'Batteries',
    how: 'Current times hours a day, over the usable share of the bank; hours at a current by Peukert’s law.',
    source: 'Peukert’s law (emptied faster, a battery gives less)',
    validity: 'New batteries at 25 °C. Follow the maker’s data sheet.',
    verify: 'Verify by a discharge test.',
  },
} as const satisfies Readonly<Record<string, Method>>;

export type MethodId = keyof typeof METHODS;
