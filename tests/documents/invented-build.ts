// Invented for tests: no such shop, boat, person or price exists.
import { computeFigures, type Figures } from '../../src/figures/index.ts';
import { currencyOf, moneyOf } from '../../src/money/index.ts';
import type { Build, BuildItem } from '../../src/resolve/index.ts';
import { hullSchema, orderSchema, type Yard, yardSchema, STAGES } from '../../src/schema/index.ts';
import {
  amperes,
  cubicMetres,
  kilograms,
  metres,
  parseDecimal,
  ZERO,
} from '../../src/units/index.ts';

/** What a customer must never read; each is planted once in the Build. */
export const SECRETS = [
  'secret-workshop-note',
  'secret-order-note',
  'secret-supplier',
  'SECRET-PART-1',
  'secret-part-description',
  'secret-left-out-reason',
  'secret-margin-class',
];

export interface InventedItem {
  readonly kind: BuildItem['kind'];
  readonly group: string;
  readonly name: string;
  readonly price: string;
  readonly quantity?: number;
}

export interface Invented {
  readonly items?: readonly InventedItem[];
  readonly showPrices?: Yard['showPrices'];
  readonly pricesInclude?: boolean;
  readonly taxRounding?: Yard['tax']['rounding'];
  readonly taxRate?: string;
  readonly charges?: readonly string[];
  readonly shares?: readonly string[];
  readonly order?: Readonly<Record<string, unknown>>;
}

const currency = currencyOf('AUD');
if (!currency) throw new Error('AUD is a currency');

const decimal = (text: string) => parseDecimal(text) ?? ZERO;
const point = (x: number) => ({ x: metres(x), y: metres(0), z: metres(0.4) });

const ITEMS: readonly InventedItem[] = [
  { kind: 'shell', group: 'Hull', name: 'Coot 400 hull shell', price: '12000.10' },
  { kind: 'structure', group: 'Hull', name: 'Coot 400 structure', price: '5300.05' },
  { kind: 'option', group: 'Seats', name: 'Bow seat', price: '480.33', quantity: 2 },
  { kind: 'option', group: 'Electrical', name: 'Anchor light', price: '95.00' },
  { kind: 'extra', group: 'One-off items', name: 'Rack for sieves', price: '610.45' },
];

/** Figures of an invented order, with what a test wants otherwise. */
export function inventedFigures(wanted: Invented = {}): Figures {
  return computeFigures(inventedBuild(wanted), []);
}

function orderOf({ order }: Invented): Build['order'] {
  const parsed = orderSchema.parse(orderText(order));
  return { ...parsed, boat: { ...parsed.boat, water: 'both', people: parsed.boat.people ?? 1 } };
}

function inventedBuild(wanted: Invented): Build {
  return {
    order: orderOf(wanted),
    yard: inventedYard(wanted),
    currency: currency as NonNullable<typeof currency>,
    hull: inventedHull(),
    outboards: [],
    items: (wanted.items ?? ITEMS).map(buildItem),
    tank: { at: point(0.8), builtIn: cubicMetres(0), portable: cubicMetres(0) },
    materials: new Map(),
    charges: (wanted.charges ?? ['168.00', '95.50']).map((amount, index) => ({
      id: `charge-${index}`,
      name: `Charge ${index + 1}`,
      amount: moneyOf(decimal(amount), currency as NonNullable<typeof currency>),
      taxed: false,
    })),
    packages: [],
    pricedOn: inventedDate,
    exchange: {},
    place: () => ({ file: 'orders/2026-001.yaml' }),
  };
}

function buildItem(item: InventedItem, index: number): BuildItem {
  const { kind, group, name, price, quantity = 1 } = item;
  return {
    key: `${kind}:${index}`,
    kind,
    group,
    name,
    description: `What ${name} is.`,
    notes: ['secret-workshop-note'],
    marginClass: 'secret-margin-class',
    quantity,
    massGiven: true,
    parts: [
      {
        code: 'SECRET-PART-1',
        supplier: 'secret-supplier',
        description: 'secret-part-description',
        materialClass: 'resin',
        unit: 'each',
        quantity: decimal('1'),
        unitCost: moneyOf(decimal('7.77'), currency as NonNullable<typeof currency>),
        priceDate: inventedDate,
      },
    ],
    hours: [{ stage: 'fit-out', hours: decimal('1.5') }],
    mass: kilograms(20 + index),
    at: point(0.5 + index * 0.3),
    placed: true,
    current: amperes(0),
    fixedPrice: moneyOf(decimal(price), currency as NonNullable<typeof currency>),
    serial: false,
    place: { file: 'orders/2026-001.yaml' },
  };
}

const orderText = (more: Invented['order'] = {}) => ({
  number: '2026-001',
  status: 'quoted',
  dates: { enquiry: '2026-02-02', quoted: '2026-03-14' },
  customer: { name: 'Sedge Field Station', contact: 'The boat keeper', address: ['1 Reed Lane'] },
  boat: { name: 'Reedling', use: 'To sample shallow lakes', people: 3 },
  hull: 'coot-400',
  fuel: '25',
  leaveOutCharges: [{ charge: 'other', reason: 'secret-left-out-reason' }],
  note: 'secret-order-note',
  ...more,
});

const inventedDate = orderSchema.parse(orderText()).dates.enquiry;

function inventedYard(wanted: Invented): Yard {
  const shares = wanted.shares ?? ['10%', '40%', '50%'];
  return yardSchema.parse({
    shop: { name: 'Dunlin Creek Boatworks', address: ['2 Creek Road'], phone: '00 0000 0000' },
    locale: 'en-AU',
    currency: 'AUD',
    tax: {
      name: 'GST',
      rate: wanted.taxRate ?? '10%',
      pricesInclude: wanted.pricesInclude ?? true,
      rounding: wanted.taxRounding ?? 'document',
      source: 'Invented',
    },
    rates: Object.fromEntries(STAGES.map((stage) => [stage, '50'])),
    overhead: '38',
    margins: { 'secret-margin-class': '30%' },
    marginFloor: '0%',
    wastage: {},
    massContingency: '4%',
    personMass: '80',
    gearPerPerson: '10',
    fuelDensity: '740',
    priceAge: '180',
    quoteDays: '30',
    showPrices: wanted.showPrices ?? 'items',
    payments: shares.map((share, index) => ({
      name: `Payment ${index + 1}`,
      when: 'When it is due',
      share,
    })),
    notIncluded: ['Fuel'],
    terms: ['Prices are in Australian dollars'],
    care: [],
    handoverChecks: [],
    stages: Object.fromEntries(STAGES.map((stage) => [stage, { does: 'Work' }])),
    suppliers: {},
  });
}

function inventedHull(): Build['hull'] {
  const work = { mass: '80', at: { x: '1.8', z: '0.3' }, parts: [], hours: [] };
  return hullSchema.parse({
    id: 'coot-400',
    name: 'Coot 400',
    sentence: 'A small open boat for sheltered water',
    dimensions: {
      length: '4.0',
      beam: '1.7',
      depth: '0.7',
      transomBeam: '1.5',
      transomHeight: '0.51',
      deadrise: '12',
      deckArea: '3.4',
    },
    performance: { chine: 'round', leastFreeboard: '0.25 m' },
    lines: [0, 2, 4].map((x) => ({
      x: String(x),
      points: [
        ['0', '0'],
        ['0.85', '0.05'],
        ['0.85', '0.7'],
      ],
    })),
    ratings: {
      power: '22',
      engineMass: '110',
      people: '4',
      load: '600',
      basis: 'Load trial of the first boat',
    },
    openings: [{ name: 'transom cut-out', at: { x: '0 m', z: '0.51 m' } }],
    seats: Array.from({ length: 4 }, () => ({ x: '1.8 m', z: '0.6 m' })),
    cockpit: { from: '0.4 m', to: '2.4 m', halfBreadth: '0.4 m', seatHeight: '0.5 m' },
    shaft: 'long',
    class: 'secret-margin-class',
    shell: {
      ...work,
      parts: [{ part: 'X-1', quantity: '1' }],
      hours: [{ stage: 'laminate', hours: '1' }],
    },
    structure: work,
    moulds: '0',
    includes: ['Self-draining floor', 'Two rowlock sockets'],
  });
}
