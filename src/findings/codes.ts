import type { CodeFacts } from './code-facts.ts';
import { FLOAT_CODES } from './codes-float.ts';
import { ISSUED_CODES } from './codes-issued.ts';
import { PERFORMANCE_CODES } from './codes-performance.ts';
import { WORKSHOP_CODES } from './codes-workshop.ts';

/** Every finding that a check can raise. A code never changes its meaning. */
export const FINDING_CODES = {
  FILE_MISSING: {
    severity: 'error',
    means: 'A file or folder that a workspace needs is missing',
    mend: 'Make it, or name another folder with --workspace',
  },
  FILE_TOO_LARGE: {
    severity: 'error',
    means: 'A file is larger than any order or catalogue file can be',
    mend: 'Split it, or take out what does not belong in it',
  },
  YAML_SYNTAX: {
    severity: 'error',
    means: 'The text cannot be read as YAML',
    mend: 'Check the indentation, the colons and the quotes on this line and the one above',
  },
  YAML_NOT_ALLOWED: {
    severity: 'error',
    means: 'The file uses a part of YAML that order files do without',
    mend: 'Write the value out in full',
  },
  DUPLICATE_KEY: {
    severity: 'error',
    means: 'A field stands twice in one block',
    mend: 'Keep one of the two',
  },
  UNKNOWN_KEY: {
    severity: 'error',
    means: 'A field is not one that this file has',
    mend: 'Correct its spelling or take it out',
  },
  MISSING_KEY: {
    severity: 'error',
    means: 'A field that must be there is missing',
    mend: 'Add it',
  },
  WRONG_TYPE: {
    severity: 'error',
    means: 'A value is not of the kind that the field holds',
    mend: 'Write it as described',
  },
  WRONG_VALUE: {
    severity: 'error',
    means: 'A value is not one of those that the field may have',
    mend: 'Choose one of those named',
  },
  UNIT_KIND: {
    severity: 'error',
    means: 'A quantity is written in a unit of another kind',
    mend: 'Write it in one of the units named',
  },
  UNIT_UNKNOWN: {
    severity: 'error',
    means: 'A quantity is written in a unit that is not known',
    mend: 'Write it in one of the units named',
  },
  OUT_OF_RANGE: {
    severity: 'error',
    means: 'A number is outside the range that makes sense here',
    mend: 'Check the number and its unit',
  },
  CSV_ROW: {
    severity: 'error',
    means: 'A row of a price list cannot be read',
    mend: 'Save the list as CSV in UTF-8 with the header row unchanged and points for decimals',
  },
  DUPLICATE_ID: {
    severity: 'error',
    means: 'Two entries have the same number, id or part code',
    mend: 'Give one of them another',
  },
  UNKNOWN_ID: {
    severity: 'error',
    means: 'A name points to nothing in the catalogue',
    mend: 'Correct its spelling, or add the entry to the catalogue',
  },
  REQUIREMENT_UNMET: {
    severity: 'error',
    means: 'An item needs another one that is not in the order',
    mend: 'Add what it needs, or take it out',
  },
  REQUIREMENT_CIRCULAR: {
    severity: 'error',
    means: 'Options require each other in a circle',
    mend: 'Take one of the requirements out of the catalogue',
  },
  EXCLUDED: {
    severity: 'error',
    means: 'Two items that exclude each other are in one order',
    mend: 'Take one of the two out',
  },
  DOES_NOT_FIT: {
    severity: 'error',
    means: 'An item does not fit this hull',
    mend: 'Choose one that fits, or correct the list of hulls it fits',
  },
  PLACE_TAKEN: {
    severity: 'error',
    means: 'Two items are in one place',
    mend: 'Move or remove one of the two',
  },
  ORDERED_TWICE: {
    severity: 'error',
    means: 'An option stands twice in one order',
    mend: 'Keep one line and give it a quantity',
  },
  QUANTITY_OUT_OF_RANGE: {
    severity: 'error',
    means: 'More or fewer of an item are ordered than it allows',
    mend: 'Change the quantity',
  },
  DATES_OUT_OF_ORDER: {
    severity: 'error',
    means: 'Two dates are in the wrong order',
    mend: 'Correct one of the two',
  },
  STATUS_NEEDS: {
    severity: 'error',
    means: 'The order lacks what its status calls for',
    mend: 'Add it, or set the status back',
  },
  POWER_OVER_RATING: {
    severity: 'error',
    means: 'The outboard has more power than the hull is rated for',
    mend: 'Choose a smaller outboard',
  },
  ENGINE_TOO_HEAVY: {
    severity: 'error',
    means: 'The outboard is heavier than the transom is rated for',
    mend: 'Choose a lighter outboard',
  },
  PEOPLE_OVER_RATING: {
    severity: 'error',
    means: 'More people are ordered for than the hull is rated for',
    mend: 'Lower the number of people, or choose a larger hull',
  },
  LOAD_OVER_RATING: {
    severity: 'error',
    means: 'People, gear, fitted options and engine come to more than the hull is rated to carry',
    mend: 'Take something out, lower the number of people, or choose a larger hull',
  },
  SHAFT_LENGTH: {
    severity: 'error',
    means: "The outboard's shaft does not suit the height of the transom",
    mend: 'Choose the shaft length that the hull is built for',
  },
  TRAILER_OVERLOADED: {
    severity: 'error',
    means: 'The boat on its trailer is heavier than the trailer is rated for',
    mend: 'Choose a stronger trailer, or take something out of the boat',
  },
  TRAILER_LENGTH: {
    severity: 'warning',
    means: 'The hull is longer or shorter than the trailer is made for',
    mend: 'Choose a trailer that suits the length, or have its maker confirm it',
  },
  PART_PRICE_LATER: {
    severity: 'note',
    means: 'Parts have no price of the day that the order is priced on, so a later one stands in',
    mend: 'Keep the rows of earlier days in the price list, or quote again with a new date',
  },
  EXCHANGE_DATE: {
    severity: 'warning',
    means: 'The exchange rate of an order is too old for its day, or later than it',
    mend: 'Add a row of that day to exchange: in the yard file',
  },
  PACKAGE_SAVES_NOTHING: {
    severity: 'warning',
    means: 'A package costs no less than its options on their own',
    mend: 'Lower its price in the yard file, or take it out of the order',
  },
  PAID_TOO_MUCH: {
    severity: 'warning',
    means: 'Trade-in and payments come to more than the drive-away price',
    mend: 'Check the amounts, or agree how the difference goes back',
  },
  PROMISED_DATE_PASSED: {
    severity: 'warning',
    means: 'The promised date has passed and the boat is not handed over',
    mend: 'Agree a new date with the customer and write it in the order',
  },
  PLAN_LATE: {
    severity: 'warning',
    means: 'The plan finishes the boat after the day that was promised',
    mend: 'Free what binds, or agree a new date with the customer and write it in the order',
  },
  PLAN_REFUSED: {
    severity: 'error',
    means: 'The order cannot be planned',
    mend: 'Correct people and stages in the yard file, or the hours of the record',
  },
  ORDER_PART_NOW: {
    severity: 'warning',
    means: 'Parts are not ordered, and the plan waits for them from tomorrow on',
    mend: 'Order them today and write it in the order under bought:',
  },
  ...ISSUED_CODES,
  ...WORKSHOP_CODES,
  ...FLOAT_CODES,
  ...PERFORMANCE_CODES,
  MARGIN_BELOW_FLOOR: {
    severity: 'warning',
    means: "The order's margin is under the least that the shop set for itself",
    mend: 'Lower the discount, or have the owner agree to it',
  },
  ITEM_NOT_PLACED: {
    severity: 'note',
    means: 'An item with a mass has no position, so it is counted at the middle of the boat',
    mend: 'Say with at: how far forward of the transom and up from the baseline it goes',
  },
} as const satisfies Readonly<Record<string, CodeFacts>>;

export type FindingCode = keyof typeof FINDING_CODES;
