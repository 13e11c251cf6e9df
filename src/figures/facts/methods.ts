import { ARITHMETIC, type Method, method, money, PRACTICE } from './method.ts';
import { WORKSHOP_METHODS } from './methods-workshop.ts';

const WEIGH = 'Verify by weighing.';
const TRIAL = 'Verify by trial.';
const BUILDER = 'The builder confirms it by test under local rules.';
const STILL_WATER = 'Still water; the hull as its lines are drawn, closed at the sheer.';

/** Methods by what they are about, in the order of a page that lists them. */
export const METHODS_BY_SUBJECT = {
  general: {
    ordered: method({
      title: 'As given',
      how: 'As written in the order or in the shop’s own files.',
      source: 'the files of the shop',
    }),
    known: method({
      title: 'How well it is known',
      how: 'What the weighing band of the shop, the place of the masses, the lines taken the other way, the share of the power and the drag of the air each do to a figure: the root of the sum of their squares.',
      source: `derived; the spreads: ${PRACTICE}`,
      verify: 'Weigh, float and try the boat.',
    }),
  },
  price: {
    cost: money(
      'Cost',
      'Materials by the pack, freight, {labour}, overhead and other cost of each line. The price of a line is cost / (1 - margin), unless its list price is fixed.',
    ),
    linePrice: money(
      'Price before tax',
      'Each line is priced and rounded by itself; the price is their sum, less savings and discount.',
    ),
    sumOfLines: money('Sum of the lines', 'The lines added up, before discount.'),
    tax: money('Tax', 'The shop’s tax rate on the price before tax.'),
    charges: money('Charges', 'Passed on at what they cost.'),
    finalPrice: money('Final price', 'Price before tax, tax, and charges with the tax on them.'),
    toPay: money('Still to pay', 'The final price, less trade-in and payments.'),
    sealed: money(
      'Price as agreed',
      'As in the quote that was accepted, with the changes signed since.',
    ),
    margin: money('Margin', 'Price before tax, after discount, less cost.'),
    hourCost: money('Cost of an hour', 'As given, or wage × (1 + on-costs) / productive share.'),
    costedAgain: money(
      'Margin if something changes',
      'The order costed again with one thing changed and the price held.',
    ),
  },
  mass: {
    masses: method({
      title: 'Mass and load',
      how: 'All items added up, with the shop’s allowance for what is not listed (contingency); the {centre} of mass from where each item is.',
      source: ARITHMETIC,
      verify: WEIGH,
    }),
    gate: method({
      title: 'Target weights',
      how: 'What is aboard after each stage. The tolerance joins the spreads of the stages and of the scale (root of the sum of squares).',
      source: PRACTICE,
      verify: WEIGH,
    }),
  },
  floating: {
    hydrostatics: method({
      title: '{Draught}, trim, heel, freeboard and stability',
      how: 'The drawn hull is lowered and tilted until it carries the masses counted. Stability (GM and righting arms) is that of the same hull heeled over and free to trim.',
      source: 'Archimedes’ law; equilibrium as the least potential energy',
      validity: STILL_WATER,
      verify: 'Verify by weighing, by {draught} marks and by an inclining test.',
    }),
    crew: method({
      title: 'People to one side',
      how: 'So many people move abreast of their seats to the edge of the cockpit, the others stay seated; the most that leave the heel and freeboard of the shop’s screen. Beside it, the mass at that edge until water comes in, held against 0.6 of the rated people’s.',
      source: `the limits that the yard file names; the idea of 33 CFR 183.41(a)(2); places of people: ${PRACTICE}`,
      validity: STILL_WATER,
      verify: 'Verify by an offset-load test.',
    }),
    ballast: method({
      title: 'Ballast tank',
      how: 'The open tank counts as part of the sea (lost buoyancy). It fills and drains through outlet and vent by Torricelli’s law.',
      source: 'lost buoyancy; Torricelli’s law',
      validity: 'The boat standing still: getting under way does not help it drain.',
      verify: 'Verify by {draught} marks, by timing a roll and by timing the tank.',
    }),
    handbook: method({
      title: 'Foam by the rule',
      how: 'The foam needed to stay afloat, by the Handbook’s tables; neither core nor fuel counts.',
      source: 'US Coast Guard Boatbuilder’s Handbook on 33 CFR 183 subpart G',
      validity: 'Monohull outboard boats shorter than 20 ft.',
      verify: 'Verify by a swamping test.',
    }),
    archimedes: method({
      title: 'Swamped',
      how: 'The lift of all that floats (foam, core, fuel, loose gear), less what everything weighs under water. People are half under water; air in lockers does not count.',
      source: 'Archimedes’ law',
      validity: 'The fuel tank stays shut, and loose gear stays aboard.',
      verify: 'Verify by a swamping test.',
    }),
    growth: method({
      title: 'Weight gained over the years',
      how: 'What the boat itself gains beyond the contingency, at its own {centre} raised as the yard file allows; the difference of two equilibria.',
      source: PRACTICE,
      validity: STILL_WATER,
      verify: 'Verify by weighing the boat again.',
    }),
  },
  speed: {
    planing: method({
      title: 'Speed',
      how: 'Savitsky’s method for planing boats, in calm water with a clean bottom and no wind. The band runs from the least to the most of the outboard’s power that may reach the water.',
      source: 'Savitsky, Hydrodynamic Design of Planing Hulls, Marine Technology 1(1), 1964',
      validity:
        'One hull with hard chines, on the plane: speed coefficient 0.60 to 13, trim 2° to 15°, at most 4 beams wetted.',
      verify: TRIAL,
    }),
    prePlaning: method({
      title: 'Speed before planing',
      how: 'Drag before planing by Mercier and Savitsky’s regression, planing by Savitsky’s method; where both answer, evenly from the one to the other, and the band takes in both.',
      source: 'Mercier and Savitsky, Davidson Laboratory R-1667, 1973; coefficients second hand',
      validity: 'Calm water, a transom stern, volume Froude numbers from 1.0 to 2.0.',
      verify: TRIAL,
    }),
    crouch: method({
      title: 'Speed, second estimate',
      how: 'Crouch’s formula, which uses mass and power only.',
      source: 'Crouch’s formula, from secondary sources',
      validity: 'Planing boats.',
      verify: TRIAL,
    }),
    porpoising: method({
      title: 'Porpoising (a steady bounce of the bow)',
      how: 'The trim where it starts, by Celano’s regression, with the outboard trimmed level.',
      source: 'Celano, US Naval Academy, 1998, from memory',
      validity: 'Deadrise 5° to 25°; square root of CL/2 from 0.13 to 0.36.',
      verify: TRIAL,
    }),
    fuel: method({
      title: 'Fuel and range',
      how: 'What the engine burns at full throttle, adjusted for part load. Range is how far the fuel ordered, less the reserve, goes at that rate.',
      source: PRACTICE,
      validity: 'No wind, no current. Not for planning a passage until measured.',
      verify: TRIAL,
    }),
    propeller: method({
      title: 'Propeller pitch',
      how: 'Speed / (turns of the propeller × (1 - slip)), at full throttle, loaded.',
      source: `${ARITHMETIC}; slip: ${PRACTICE}`,
      verify: TRIAL,
    }),
    holding: method({
      title: 'Bow motor',
      how: 'The thrust to hold the boat against gusts and current from the same side: wind on the outline of the hull, a fifth more for outboard and canopy, and on the people. It lasts for the usable charge divided by the current drawn at that thrust.',
      source: PRACTICE,
      validity: 'Water moving at up to 1.5 m/s.',
      verify: TRIAL,
    }),
  },
  limits: {
    rating: method({
      title: 'People, load and power',
      how: 'Estimates by published methods, beside the shop’s own rating.',
      source: 'named with each method',
      verify: BUILDER,
    }),
    peopleByLoad: method({
      title: 'People within the rated load',
      how: 'The rated load less what is fitted and full tanks, divided by a person with gear: whole people, at most as many as the hull is rated for.',
      source: 'the shop’s rating',
      verify: BUILDER,
    }),
    carries: method({
      title: 'What the boat may carry',
      how: 'The least of the shop’s rating, what the rated load leaves beside what is fitted, each method, and the boat as loaded: seated, tanks full, afloat as it then lies, to the least freeboard, the heel of the shop’s screen and the lowest opening. A test on the water stands instead of that.',
      source: 'arithmetic',
      verify: BUILDER,
    }),
    loadCounted: method({
      title: 'Load as ISO counts it',
      how: 'People at 75 kg with effects, tanks at 95 %, ballast water in full.',
      source: 'ISO 14946, from secondary sources, not checked against the standard',
      verify: BUILDER,
    }),
    category: method({
      title: 'Screening for a design category',
      how: 'Three checks only, each with what is left of its limit: freeboard, heel, and the height where water can come in (downflooding). An estimate; it gives the boat no category.',
      source: 'ISO 12217-1:2015, from secondary sources, not checked against the standard',
      validity: 'Loaded as ordered.',
      verify: 'Verify by the tests of ISO 12217.',
    }),
    engineTrim: method({
      title: 'Trim by the outboard',
      how: 'Moment of the outboard / (displacement × longitudinal GM).',
      source: ARITHMETIC,
      validity: 'Small angles.',
      verify: 'Verify afloat.',
    }),
  },
  towing: {
    ballLoad: method({
      title: 'Load on the tow ball, winch post',
      how: 'Moments about the axle on level ground, with fuel and loose gear aboard.',
      source: `moments: ${ARITHMETIC}; shares of the total: ${PRACTICE}`,
      validity: 'The trailer as the catalogue describes it.',
      verify: 'Verify by weighing the coupling and on a weighbridge.',
    }),
    roadRules: method({
      title: 'Limits on the road',
      how: 'Mass, length and width against the limits of trailer, vehicle and roof rack, and of the place.',
      source: 'limits as given; rules of the place from secondary sources and from memory',
      verify: 'Check the plates, and confirm the rules with the authority.',
    }),
    coupling: method({
      title: 'Coupling',
      how: 'The D-value (force between vehicle and trailer) that the coupling must be rated for.',
      source: 'UN Regulation 55',
      validity: 'Vehicles up to 3.5 t with a drawbar trailer.',
      verify: 'Confirm with the authority.',
    }),
  },
  ...WORKSHOP_METHODS,
} as const satisfies Readonly<Record<string, Readonly<Record<string, Method>>>>;

export type MethodSubject = keyof typeof METHODS_BY_SUBJECT;

/** Every method that a figure of an order is found by. */
export const METHODS = {
  ...METHODS_BY_SUBJECT.general,
  ...METHODS_BY_SUBJECT.price,
  ...METHODS_BY_SUBJECT.mass,
  ...METHODS_BY_SUBJECT.floating,
  ...METHODS_BY_SUBJECT.speed,
  ...METHODS_BY_SUBJECT.limits,
  ...METHODS_BY_SUBJECT.towing,
  ...METHODS_BY_SUBJECT.laminate,
  ...METHODS_BY_SUBJECT.wiring,
  ...METHODS_BY_SUBJECT.workshop,
};

export type MethodId = keyof typeof METHODS;
