import type { CodeFacts } from './code-facts.ts';

/** What the lay-up, the weigh gates and the wiring of an order can be told. */
export const WORKSHOP_CODES = {
  MASS_OUT_OF_GATE: {
    severity: 'warning',
    means: 'A measured mass is outside its weigh gate',
    mend: 'Weigh again; then look for what was added, left out or laid up too heavy',
  },
  LAYUP_IMPOSSIBLE: {
    severity: 'error',
    means: 'A panel’s lay-up cannot be',
    mend: 'Correct the layers of the panel, or the facts of its materials',
  },
  LAYUP_MASS_OFF: {
    severity: 'warning',
    means: 'A lay-up weighs otherwise than its shell, structure or option is said to',
    mend: 'Weigh one; then correct the lay-up, or the mass in the catalogue',
  },
  KIT_DIFFERS: {
    severity: 'warning',
    means: 'A lay-up takes more or less of a material than the list of parts of its item',
    mend: 'Correct the list, which the price comes from, or the lay-up, which the shop cuts by',
  },
  PANEL_SCREENING_OVER: {
    severity: 'warning',
    means: 'A bottom panel is worked harder than the screening allows',
    mend: 'Add layers or core, or set the stiffeners closer; have a designer confirm it',
  },
  INFUSION_TOO_SLOW: {
    severity: 'warning',
    means: 'The resin gels before the shell is full',
    mend: 'Lay more feed lines, warm the resin less, or take a slower gel time',
  },
  CATALYST_OUT_OF_RANGE: {
    severity: 'error',
    means: 'A resin is to be mixed outside what its catalyst’s maker allows',
    mend: 'Set the share within the maker’s range; too little never cures, too much cures weak',
  },
  WIRE_REFUSED: {
    severity: 'error',
    means: 'No wire and fuse at hand make a circuit safe',
    mend: 'Shorten the run, move the battery, or stock a thicker cable',
  },
  FUSE_ABOVE_DEVICE: {
    severity: 'error',
    means: 'A device draws more than the largest fuse that its maker allows',
    mend: 'Check the current and the largest fuse of the device',
  },
  PANEL_FULL: {
    severity: 'warning',
    means: 'More circuits are switched than the switch panel has places',
    mend: 'Order the larger panel, or wire one of them to the battery',
  },
  VOLTAGE_WITHOUT_BANK: {
    severity: 'warning',
    means: 'A device needs another voltage than the boat has, and no batteries make it',
    mend: 'Order as many house batteries of one kind as make its voltage in series, or a device of the boat’s voltage',
  },
  BANK_TOO_SMALL: {
    severity: 'warning',
    means: 'The batteries do not last the days that the shop asks of them without charging',
    mend: 'Add a battery, or agree with the customer how she is charged',
  },
} as const satisfies Readonly<Record<string, CodeFacts>>;
