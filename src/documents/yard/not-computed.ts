import type { MethodSubject } from '../../figures/index.ts';

/** What is not computed in a subject, and what to watch out for. */
interface Limits {
  /** The subject in words. */
  readonly heading: string;
  readonly limits: readonly string[];
}

/** Said once, for the page of methods; README.md has a row for each heading. */
export const NOT_COMPUTED: Readonly<Record<MethodSubject, Limits>> = {
  general: {
    heading: 'All figures',
    limits: [
      'Every figure is an estimate from what the shop typed. Nothing here is proof of compliance with a standard or a law.',
      'The boat’s weight, stability, load and towing must be weighed, tried and confirmed by test, under local rules, by a competent person.',
      'Resin, catalyst, wiring and lifting are dangerous. A build sheet only reminds of that: makers’ data sheets and local rules come first.',
      'A seal shows that an issued quote was changed, not who changed it. It is not an electronic signature, and the clock is the machine’s own.',
      'Latin letters are printed in the fonts that come with the program, letters of other scripts in whatever the machine has.',
    ],
  },
  price: {
    heading: 'Price and tax',
    limits: [
      'Tax is one rate with one rounding rule for the whole workspace. Rates by class of item and caps on tax are not computed. Four tax systems are tested: Australia, New Zealand, United Kingdom, one US state.',
      'Taxes and charges are as typed. Check them with your accountant, also which charges are taxed: something that the shop buys and passes on usually is.',
      'A workspace sells in one currency. Parts may be priced in another, at the dated rate and buffer in yard.yaml.',
      'What an old quote would cost today is not computed if it was issued by an earlier version and its data can no longer be priced.',
    ],
  },
  mass: {
    heading: 'Mass',
    limits: [
      'A {centre} of mass is only as good as the positions typed. A one-off item without a position is counted amidships, and a note says so.',
      'The weight a boat gains over the years is what massGrowth in yard.yaml allows. Left out, it is none.',
    ],
  },
  floating: {
    heading: 'Floating and stability',
    limits: [
      'Waves, wind and movement are not computed. The hull is closed at the sheer: what a deck above it would keep out is not counted.',
      'The hull file says where people sit, where water can come in and what foam the boat has. An order may add a condition of its own; yard.yaml has the limits for people to one side.',
      'The drawn lines are checked against a volume found elsewhere only if the hull file gives one (enclosedVolume).',
      'A better place proposed for an item is checked only against things that have a size. What has none is taken not to be in the way.',
      'Two things that overlap by more than 20 mm where they are placed are reported, each as a box, several of one side by side; an option may be “within” others. Whether a thing stands out of the hull is checked as a box, against the outside of the {moulding}.',
    ],
  },
  speed: {
    heading: 'Speed and fuel',
    limits: [
      'Speed is not computed below a volume Froude number of 1.0 (about 5 kn), nor where the boat is too fast for the method or too much of its bottom is wetted. Below 2° of trim it is, with a note that this is outside the method.',
      'Drag of air, of the outboard’s leg and of appendages is computed from the areas in the files. Waves, wind, a foul bottom and losses of the propeller are not.',
      'The drag on the plane was held against two models that were towed; the drag before planing against none.',
    ],
  },
  limits: {
    heading: 'People, load and power',
    limits: [
      'A rating in a hull file is the shop’s own. Methods and the boat as it floats loaded stand beside it, and the least of them counts; none of them proves it.',
      'An order’s own load is checked against the load of the ISO small craft standards where the yard uses them.',
      'Of 33 CFR 183 only outboard monohulls are computed, without the performance test of 183.53(b). Of AS 1799.1 only people are: load and power are in the text that must be bought.',
      'The capacity plate is a draft. It is not valid until the builder has confirmed and signed it.',
    ],
  },
  towing: {
    heading: 'Towing',
    limits: [
      'The load on the ball is computed only if trailers.yaml has the trailer’s axle and {centre} of mass.',
      'Brake thresholds, width and length are those of the place that yard.yaml or the order names, some of them from memory. Confirm them with its authority.',
      'Rear overhang, the rating of a coupling, the United Kingdom’s 7 m limit on a trailer’s body and how a load swings are not checked.',
    ],
  },
  laminate: {
    heading: 'Laminate',
    limits: [
      'Lay-ups are computed for the shell, the structure and those options whose files have one. Composite panels and {mouldings} that are bought count as their makers describe them, without strength.',
      'An infused part of the structure or of an option has thickness, resin and kit, but no infusion plan; resin that stays in its mesh is not counted.',
      'If the yard file has no share of {fibre} by mass, the usual share of the process is taken (ISO 12215-5, from memory).',
      'Bonding paste, consumables and catalyst are as listed.',
    ],
  },
  wiring: {
    heading: 'Wiring and batteries',
    limits: [
      'Parallel conductors, cables between batteries, and charging of batteries in series (a 24 V motor on a 12 V boat) are not planned.',
    ],
  },
  workshop: {
    heading: 'Hours, plan and purchases',
    limits: [
      'The plan knows the hours of the catalogue and the record, and the people, {moulds}, parts and holidays that the files name. It knows no illness, weather or rework.',
      'It is a plan that can be kept, improved by a limited search; it is not proved to be the shortest. A stage with hours written down is taken to have its parts.',
      'Stock is as counted in stock.yaml and nothing of it is reserved: count again after using some. The stage that starts first takes first, and a part that is in stock in full does not wait for a supplier.',
      'A date that can be promised counts on what the accepted orders leave in stock.',
      'A one-off item with only a cost is bought as one line; how long it takes is what the order says (leadDays).',
    ],
  },
};
