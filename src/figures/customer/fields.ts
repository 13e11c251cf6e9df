// What a customer's document may be made of: each list is the type and what is kept, so that nothing else passes.

export const SAID = ['code', 'severity', 'received', 'expected', 'accepted'] as const;

export const ORDER = [
  'number',
  'status',
  'dates',
  'customer',
  'boat',
  'fuel',
  'zeroRated',
  'tradeIn',
] as const;
export const RECORD = ['hullNumber', 'masses', 'serials', 'trials'] as const;

export const YARD = [
  'shop',
  'locale',
  'finalPrice',
  'units',
  'tax',
  'showPrices',
  'quoteDays',
  'notIncluded',
  'terms',
  'care',
  'handoverChecks',
  'massContingency',
  'personMass',
  'gearPerPerson',
  'drive',
] as const;

export const HULL = [
  'name',
  'sentence',
  'dimensions',
  'lines',
  'ratings',
  'shaft',
  'includes',
] as const;
export const OUTBOARD = ['name', 'power', 'steering', 'starting'] as const;
export const TRAILER = [
  'name',
  'tare',
  'rating',
  'length',
  'width',
  'axles',
  'brakes',
  'brakedWheels',
] as const;

export const ITEM = [
  'key',
  'kind',
  'group',
  'name',
  'description',
  'quantity',
  'instances',
  'mass',
  'at',
  'placed',
  'serial',
] as const;

export const PRICE = [
  'listPrice',
  'discount',
  'discountWithTax',
  'rounding',
  'taxable',
  'tradeInTax',
  'tax',
  'boatWithTax',
  'chargeLines',
  'charges',
  'chargesTax',
  'driveAway',
] as const;
export const LINE = ['key', 'saving', 'price', 'priceWithTax'] as const;
export const PAYMENT = ['name', 'when', 'amount'] as const;

export const MASS = ['completed', 'ready', 'onTrailer', 'load'] as const;
export const LOADING = ['name', 'loading', 'applies', 'speed'] as const;
export const TOWED = ['place', 'ball', 'brakes', 'length', 'widest', 'vehicle'] as const;
export const LIMITS = ['ratings', 'asLoaded', 'carries', 'plate'] as const;
export const CIRCUIT = ['name', 'current', 'hoursADay'] as const;
export const BANK = ['rated', 'usable', 'daysOfAutonomy', 'hoursAtPeak'] as const;

export const DIFFERENCES = ['driveAway', 'massOnTrailer', 'people', 'speed', 'onBall'] as const;
export const VARIATION = ['name', 'asked', 'days', 'agreed'] as const;
