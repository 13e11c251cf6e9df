import { type CodeFacts, WITH_LIMIT } from './code-facts.ts';

/** What a check of how it floats can find. */
export const FLOAT_CODES = {
  LINES_UNSOUND: {
    severity: 'error',
    audience: 'workshop',
    means: 'The lines of a hull do not close to a shape that could float',
    remedy: 'Correct the cross-sections named, from the transom forward and from keel to sheer',
  },
  LINES_ODD: {
    severity: 'warning',
    audience: 'workshop',
    means: 'The lines of a hull look like a typing mistake',
    remedy: 'Look at the cross-section named; keep it if it is as drawn',
  },
  LINES_DIFFER: {
    severity: 'warning',
    audience: 'workshop',
    means:
      'The lines of a hull differ by more than 2 % from the dimensions or the volume that are declared',
    remedy: 'Measure again, then correct the lines or what is declared',
  },
  LINES_COARSE: {
    about: ['float.lines-spread.displacement'],
    severity: 'warning',
    audience: 'workshop',
    means:
      'The cross-sections of a hull stand so far apart that its displacement depends on how the lines run between them',
    remedy: 'Measure more cross-sections where the shape changes most',
  },
  FLOAT_SWAMPED: {
    about: ['float.fully-loaded.outcome'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer: 'Loaded as ordered and lying still, the boat is estimated to take in water',
    means: 'Loaded as ordered, the boat takes in water at rest',
    remedy: 'Take something out, lower the number of people, or choose a larger hull',
  },
  FLOAT_NOT_UPRIGHT: {
    about: ['float.fully-loaded.outcome'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer: 'Loaded as ordered and lying still, the boat is estimated to turn over',
    means: 'Loaded as ordered, the boat turns over',
    remedy: 'Bring weight lower and nearer to the {centreline}',
  },
  FLOAT_GOES_DOWN: {
    about: ['float.fully-loaded.outcome'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer: 'Loaded as ordered and lying still, the boat is estimated to go down by one end',
    means: 'Loaded as ordered, the boat goes down by the bow or by the stern',
    remedy: 'Move weight to the other end, or take something out',
  },
  FLOAT_NOT_COMPUTED: {
    about: ['float.*.outcome'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer: 'How the boat floats could not be computed, so nothing is said about its stability',
    means: 'The program did not find how the boat floats; that says nothing about the boat',
    remedy:
      'Send this workspace to whoever keeps the program; until then have a qualified person judge stability and freeboard',
  },
  FLOAT_LOLLS: {
    about: ['float.fully-loaded.gm'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'The boat is estimated not to stand upright by itself: it leans to one side until it steadies',
    means: 'Upright, the boat has no stability: it leans to one side until it steadies',
    remedy: 'Bring weight lower, or take something heavy and high out of the boat',
  },
  TRIM_OUT_OF_BAND: {
    about: ['float.fully-loaded.trim'],
    severity: 'warning',
    audience: 'customer',
    toCustomer:
      'Fully loaded and lying still, one end of the boat is estimated to lie lower than suits this hull',
    figures: '{received}. Suitable: {expected}',
    means: 'At rest, fully loaded, the boat trims more than the hull file allows',
    remedy: 'Move weight forward or aft',
  },
  ITEMS_IN_ONE_PLACE: {
    severity: 'warning',
    audience: 'workshop',
    means: 'Two items of known size stand in one another as they are placed',
    remedy:
      'Give one of them another place with at: in the order, or take one out; when one is meant to stand in the other, say so with within: in the catalogue',
  },
  LIST_AT_REST: {
    about: ['float.fully-loaded.heel'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer: 'Fully loaded and lying still, the boat is estimated to lean to one side',
    figures: WITH_LIMIT,
    means: 'At rest, fully loaded, the boat leans to one side',
    remedy: 'Move weight to the other side',
  },
  RATING_NOT_AFLOAT: {
    about: ['float.rated.outcome'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer:
      'With the people and load that the shop rates it for, seated and in calm water, the boat is estimated to take in water or turn over',
    figures: '{received}',
    means: 'At the shop’s own rating, everyone seated, the boat does not float',
    remedy: 'Lower the rating of the hull: people, load, or both',
  },
  EDGE_BEARS_LITTLE: {
    about: ['float.edge.*'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer:
      'People who lean over one side together are estimated to let water in before the shop’s limit',
    figures: WITH_LIMIT,
    means: 'The edge of the cockpit bears less than 0.6 of the rated people before water comes in',
    remedy: 'Lower the number of people that the hull is rated for',
  },
  ONE_AT_EDGE: {
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer: 'One person at the edge is estimated to bring water aboard',
    means: 'One person alone aboard, at the edge of the cockpit, brings water aboard',
    remedy: 'Take weight out of the boat, or choose a larger hull',
  },
  FEW_TO_ONE_SIDE: {
    about: ['float.side.*'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'Only few of the people aboard may be on one side at once: keep people seated and spread out',
    figures: 'At most {received}',
    means: 'Fewer than half of the people may go to one side within the shop’s limits',
    remedy:
      'Lower the number of people, or seat them lower and nearer to the {centreline}; confirm by test',
  },
  CROWD_AT_END: {
    about: ['float.*-aft.outcome', 'float.*-forward.outcome'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer: 'With everyone at one end the boat is estimated to take in water or go down',
    figures: '{received}',
    means: 'With everyone aft, or everyone forward, the boat does not float',
    remedy: 'Lower the number of people, or choose a lighter outboard; confirm by test',
  },
  BOX_OUTSIDE_HULL: {
    severity: 'error',
    audience: 'workshop',
    means: 'An item of known size stands out of the hull as it is placed',
    remedy: 'Correct at: of the item, or its size:, against the lines of the hull',
  },
  RESTS_ON_DEFAULTS: {
    severity: 'warning',
    audience: 'workshop',
    means: 'What the boat may carry rests on facts of the hull that nobody gave',
    remedy: 'Measure them and say them in the hull file',
  },
  HULL_WITHOUT_LINES: {
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer: 'How the boat floats was not computed: the shop has no lines of this hull',
    means: 'The hull has no lines, so nothing says how the boat floats',
    remedy: 'Measure cross-sections and give them as lines: of the hull',
  },
  TANK_OUTSIDE_HULL: {
    severity: 'error',
    audience: 'workshop',
    means: 'A ballast tank lies outside the hull',
    remedy: 'Correct from:, to: and top: of the tank against the lines of the hull',
  },
  TANK_OPENING_TOO_LARGE: {
    severity: 'error',
    audience: 'workshop',
    means: 'An opening of a ballast tank is larger than what it is cut in',
    remedy: 'Correct outlet: or vent: of the tank, or make the tank larger there',
  },
  TANK_DOES_NOT_DRAIN: {
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'Water in the ballast tank is estimated to stay aboard under way, so that the boat stays heavier and lower in the water',
    figures: '{received}',
    means: 'A ballast tank does not empty by itself under way',
    remedy: 'Lower the outlet, or give the tank a vent',
  },
  GROWTH_OVER_LIMIT: {
    about: ['float.growth.first', 'float.growth.allowed'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'What is added to the boat over the years may take it past one of its limits: ask us before you add anything heavy',
    figures: WITH_LIMIT,
    means:
      'The weight that the shop allows its boats to gain over the years takes this one past a limit',
    remedy: 'Leave more margin, or tell the customer how much weight the boat may gain',
  },
  FOAM_SHORT: {
    about: ['float.swamped.foam-still-needed', 'float.swamped.reserve'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'The buoyancy foam is estimated to be too little to hold the boat up as it should when it is full of water',
    figures: '{received}. Needed: {expected}',
    means: 'The buoyancy foam is less than the method for swamped boats asks for',
    remedy: 'Fit more foam, high and near the sides; verify by a swamping test',
  },
  FLOTATION_RULE_NOT_APPLICABLE: {
    about: ['float.swamped.foam-needed'],
    severity: 'note',
    audience: 'customer',
    safety: true,
    toCustomer:
      'Our method for buoyancy foam does not cover this hull, so it does not say whether the boat stays up when it is full of water',
    means: 'The method for the foam of swamped boats does not cover this hull',
    remedy: 'Have a qualified person say what buoyancy it needs',
  },
} as const satisfies Readonly<Record<string, CodeFacts>>;
