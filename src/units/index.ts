export * from './constants.ts';
export * from './quantity.ts';
export * from './decimal.ts';
export {
  addDays,
  daysBetween,
  formatDate,
  formatDay,
  formatDayOfMonth,
  type IsoDate,
  parseIsoDate,
  weekdayOf,
} from './dates.ts';
export {
  createFormatter,
  type Formatter,
  formatterOf,
  NO_BREAK,
  type UnitSystem,
  withMinus,
} from './format.ts';
export { isQuantity, QUANTITIES, type QuantityName } from './quantities.ts';
export { PART_UNITS, partUnitSize, partUnitText } from './part-units.ts';
export {
  type Computed,
  dataMissing,
  known,
  type NotComputed,
  searchFailed,
  whyNot,
} from './not-computed.ts';
export { parseQuantity, type ParsedQuantity, type QuantityProblem } from './parse-quantity.ts';
export { atLeast, atMost, type Margin } from './margin.ts';
export { GRAVITY, NAUTICAL_MILE, UNIT_KINDS, type UnitKind, unitsOf } from './unit-table.ts';
