import { type CodeFacts, WITH_LIMIT } from './code-facts.ts';

/** What the lay-up, the weigh gates and the wiring of an order can be told. */
export const WORKSHOP_CODES = {
  MASS_OUT_OF_GATE: {
    about: ['gate.*.expected', 'gate.*.tolerance'],
    severity: 'warning',
    audience: 'workshop',
    means: 'A measured mass is outside its weigh gate',
    remedy: 'Weigh again; then look for what was added, left out or laid up too heavy',
  },
  LAYUP_IMPOSSIBLE: {
    severity: 'error',
    audience: 'workshop',
    means: 'A panel’s lay-up cannot be',
    remedy: 'Correct the layers of the panel, or the facts of its materials',
  },
  LAYUP_MASS_OFF: {
    about: ['laminate.total'],
    severity: 'warning',
    audience: 'workshop',
    means: 'A lay-up weighs otherwise than its shell, structure or option is said to',
    remedy: 'Weigh one; then correct the lay-up, or the mass in the catalogue',
  },
  KIT_DIFFERS: {
    about: ['laminate.kit.*'],
    severity: 'warning',
    audience: 'office',
    means: 'A lay-up takes more or less of a material than the list of parts of its item',
    remedy: 'Correct the list, which the price comes from, or the lay-up, which the shop cuts by',
  },
  PANEL_SCREENING_OVER: {
    about: ['bottom.*'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'A panel of the bottom is estimated to be worked harder at speed than our check allows; a designer is to confirm it',
    figures: WITH_LIMIT,
    means: 'A bottom panel is worked harder than the screening allows',
    remedy: 'Add layers or core, or set the stiffeners closer; have a designer confirm it',
  },
  INFUSION_TOO_SLOW: {
    about: ['infusion.fill', 'infusion.limit'],
    severity: 'warning',
    audience: 'workshop',
    means: 'The resin gels before the shell is full',
    remedy: 'Lay more feed lines, warm the resin less, or take a slower gel time',
  },
  CATALYST_OUT_OF_RANGE: {
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer:
      'A resin of the boat would be mixed outside what the maker of its hardener allows, so that it may not cure to its strength',
    means: 'A resin is to be mixed outside what its catalyst’s maker allows',
    remedy: 'Set the share within the maker’s range; too little never cures, too much cures weak',
  },
  WIRE_REFUSED: {
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer: 'No wire and fuse that we can fit make one of the electrical circuits safe',
    means: 'No wire and fuse at hand make a circuit safe',
    remedy: 'Shorten the run, move the battery, or stock a thicker cable',
  },
  FUSE_ABOVE_DEVICE: {
    about: ['wire.*.fuse'],
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer:
      'Something electrical draws more current than the largest fuse that its maker allows',
    figures: WITH_LIMIT,
    means: 'A device draws more than the largest fuse that its maker allows',
    remedy: 'Check the current and the largest fuse of the device',
  },
  PANEL_FULL: {
    severity: 'warning',
    audience: 'workshop',
    means: 'More circuits are switched than the switch panel has places',
    remedy: 'Order the larger panel, or wire one of them to the battery',
  },
  VOLTAGE_WITHOUT_BANK: {
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'Something electrical needs another voltage than the batteries give, and must not be connected to them',
    figures: '{received}',
    means: 'A device needs another voltage than the boat has, and no batteries make it',
    remedy:
      'Order as many house batteries of one kind as make its voltage in series, or a device of the boat’s voltage',
  },
  BANK_TOO_SMALL: {
    about: ['battery.days', 'battery.usable'],
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'The batteries are estimated to run flat sooner than the shop plans for, and all that they feed stops with them',
    figures: '{received}. Needed: {expected}',
    means: 'The batteries do not last the days that the shop asks of them without charging',
    remedy: 'Add a battery, or agree with the customer how the boat is charged',
  },
  MASS_NOT_KNOWN: {
    severity: 'note',
    audience: 'workshop',
    means: 'Something that is listed has no mass, so the boat is heavier than it is counted',
    remedy:
      'Weigh it: mass: of the item, with mass: 0 kg for what weighs nothing, or of the part in its price list',
  },
  FUEL_OVER_TANK: {
    severity: 'error',
    audience: 'customer',
    safety: true,
    toCustomer: 'More fuel is planned than the tanks aboard hold',
    figures: WITH_LIMIT,
    means: 'More fuel is ordered than the tanks hold',
    remedy: 'Order less fuel, or a larger tank',
  },
  ITEM_NOT_PLACED: {
    severity: 'note',
    audience: 'workshop',
    means: 'An item with a mass has no position, so it is counted at the middle of the boat',
    remedy: 'Say with at: how far forward of the transom and up from the baseline it goes',
  },
} as const satisfies Readonly<Record<string, CodeFacts>>;
