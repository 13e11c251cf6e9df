import { type CodeFacts, WITH_LIMIT } from './code-facts.ts';

/** What a check of speed, limits and towing can find. */
export const PERFORMANCE_CODES = {
  DOES_NOT_PLANE: {
    about: ['drive.loaded.speed'],
    severity: 'warning',
    audience: 'customer',
    toCustomer:
      'With this load the outboard is estimated to be too weak to lift the boat onto the plane',
    figures: '{received}',
    means: 'The outboard is too weak to lift the boat onto the plane, loaded as ordered',
    remedy: 'Choose a stronger outboard, carry less, or tell the customer',
  },
  MAY_PORPOISE: {
    about: ['drive.loaded.trim', 'drive.loaded.porpoises-above'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'At full throttle the bow may begin to rise and fall by itself and throw people about: slow down if it does',
    figures: WITH_LIMIT,
    means: 'At full throttle the boat may begin to porpoise',
    remedy:
      'Give batteries or gear places further forward in the order; on the trial trim the outboard in and look for it',
  },
  BOW_MOTOR_WEAK: {
    about: ['drive.bow-motor.needed'],
    severity: 'warning',
    audience: 'customer',
    toCustomer:
      'The bow motor is estimated to be too weak to hold the boat in the wind and current that the shop allows for',
    figures: '{received}. Needed: {expected}',
    means: 'The bow motor cannot hold the boat against the wind and current that the yard names',
    remedy: 'Choose a stronger motor, or tell the customer in how much wind it holds',
  },
  SPEED_METHODS_DIFFER: {
    about: ['drive.*.speed', 'drive.*.speed-crouch'],
    severity: 'note',
    audience: 'customer',
    toCustomer:
      'Two ways of estimating the speed differ by more than a fifth: take the speed for a guess until the trial',
    means: 'Two methods differ by more than a fifth on the speed',
    remedy: 'Tell the customer that the speed is a guess until the trial',
  },
  OUTSIDE_METHOD_RANGE: {
    about: ['drive.*.speed'],
    severity: 'note',
    audience: 'customer',
    toCustomer:
      'The speed is estimated outside the range that the method was made for: a rough guess only until the trial',
    means: 'A speed is estimated outside the range that its method was made for',
    remedy: 'Tell the customer that the speed is a guess until the trial',
  },
  PEOPLE_OVER_METHOD: {
    about: ['limits.*.people'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer: 'More people are to go aboard than one of our methods is estimated to allow',
    figures: '{received} people. Limit: {expected}',
    means: 'More people are ordered for than a method that the yard goes by allows',
    remedy:
      'Lower the number of people or take something out; or prove more by a test and take the method out of the yard file',
  },
  POWER_OVER_METHOD: {
    about: ['limits.*.power'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer: 'The outboard has more power than one of our methods is estimated to allow',
    figures: WITH_LIMIT,
    means: 'The outboard has more power than a method that the yard goes by allows',
    remedy:
      'Choose a smaller outboard; or prove more by a test and take the method out of the yard file',
  },
  LOAD_OVER_METHOD: {
    about: ['limits.*.load', 'limits.iso.as-ordered.load'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer: 'The boat is estimated to carry more than one of our methods allows',
    figures: WITH_LIMIT,
    means: 'The order carries more than a method that the yard goes by allows',
    remedy:
      'Take something out or lower the number of people; or prove more by a test and take the method out of the yard file',
  },
  STERN_FREEBOARD_LOW: {
    about: ['limits.engine.stern-freeboard'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'With the outboard on and nobody aboard, the stern is estimated to lie low: a wave from behind may come in',
    figures: '{received} above the water. Limit: {expected}',
    means: 'With the outboard on and nobody aboard, an opening at the stern is close to the water',
    remedy:
      'Choose a lighter outboard, move batteries and tanks forward, or close the opening; look at it on the trial',
  },
  STEERING_MISMATCH: {
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer: 'Outboard, steering and control do not go together',
    figures: '{received}',
    means: 'Outboard, steering and control do not go together',
    remedy: 'Choose steering and control that suit the outboard',
  },
  CATEGORY_NOT_SCREENED: {
    about: ['limits.category.*'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'Loaded as ordered, the boat is estimated to fail our check for a design category: keep to calm, sheltered water until its stability is tested',
    figures: '{received}',
    means: 'Loaded as ordered, the boat fails the design-category check',
    remedy:
      'Lower the number of people or take something out; have the stability tested before any category is named',
  },
  NOT_REQUIRED_BY_LAW: {
    severity: 'note',
    audience: 'workshop',
    means: 'A method that the yard goes by does not cover this boat',
    remedy: 'Add a method that covers it to methods: under limits: in the yard file',
  },
  BRAKES_MISSING: {
    about: ['tow.brakes'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer: 'The trailer lacks brakes that the rules ask for at this mass',
    figures: '{received}',
    means: 'The trailer lacks brakes that the rules ask for at this mass',
    remedy: 'Choose a trailer with such brakes',
  },
  BRAKES_ADVISED: {
    about: ['tow.brakes'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'The rules let this trailer do without brakes that a stricter reading asks for: ask the authority before you tow',
    figures: '{received}. Advised: {expected}',
    means: 'The rules let the trailer do without brakes that a stricter reading asks for',
    remedy: 'Choose a trailer with brakes, or ask the authority',
  },
  BALL_LOAD_LOW: {
    about: ['tow.ball-share', 'tow.on-ball'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer: 'Too little of the mass is estimated to rest on the tow ball: the trailer may sway',
    figures: WITH_LIMIT,
    means: 'Too little of the mass is on the tow ball: the trailer may sway',
    remedy: 'Move the winch post forward',
  },
  BALL_LOAD_HIGH: {
    about: ['tow.ball-share', 'tow.on-ball'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'Too much of the mass is estimated to rest on the tow ball: the vehicle may steer and brake badly',
    figures: WITH_LIMIT,
    means: 'Too much of the mass is on the tow ball',
    remedy: 'Move the winch post aft',
  },
  AXLE_OR_TYRE_OVERLOADED: {
    about: ['tow.load-of-an-axle.left', 'tow.load-of-a-tyre.left'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer:
      'An axle or a {tyre} of the trailer is estimated to carry more than it is rated for',
    figures: WITH_LIMIT,
    means: 'An axle or a {tyre} of the trailer carries more than it is rated for',
    remedy: 'Choose a stronger trailer, or take something out of the boat',
  },
  TRAILER_TOO_WIDE: {
    about: ['tow.width.left'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'The boat on its trailer is estimated to be wider than the road allows without a permit',
    figures: WITH_LIMIT,
    means: 'Boat or trailer is wider than the road allows',
    remedy: 'Ask the authority for a permit, or choose a narrower trailer',
  },
  TRAILER_TOO_LONG: {
    about: ['tow.length', 'tow.length-on-the-road.left'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'The boat on its trailer is estimated to be longer than the road, or the place that you named, allows',
    figures: WITH_LIMIT,
    means: 'Boat and trailer are longer than the road, or the place that the order names, allows',
    remedy:
      'Move the winch post forward, choose a shorter trailer, or ask the authority for a permit',
  },
  WINCH_POST_OUT_OF_REACH: {
    about: ['tow.winch-post'],
    severity: 'warning',
    audience: 'workshop',
    means: 'The order sets the winch post where the trailer does not let it stand',
    remedy: 'Set winchPost: within what the trailer allows, or leave it out',
  },
  VEHICLE_OVERLOADED: {
    about: ['tow.*.left'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer:
      'Your vehicle is estimated to tow more than its maker allows, by what you told us of it',
    figures: WITH_LIMIT,
    means: 'The towing vehicle is asked for more than its maker allows',
    remedy: 'Take something out of the boat, choose a lighter trailer, or tow with another vehicle',
  },
  ROOF_OVERLOADED: {
    about: ['tow.roof.*.left'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer:
      'The boat is estimated to be heavier than the roof of your vehicle or its rack may carry',
    figures: WITH_LIMIT,
    means: 'The boat is heavier than the roof or its bars may carry',
    remedy: 'Take something out of the boat, or carry it on a trailer',
  },
} as const satisfies Readonly<Record<string, CodeFacts>>;
