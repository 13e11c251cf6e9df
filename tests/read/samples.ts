import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** Small sound files of each kind: the least that a workspace may hold. */
export const ORDER = `number: T-1
status: enquiry
dates:
  enquiry: 2026-03-14
customer:
  name: A Field Station
boat:
  use: Sampling on a shallow lake.
  people: 3
hull: tern-400
options:
  - seat
  - option: rod-holder
    quantity: 4
fuel: 20 L
`;

const STAGES =
  'mould-preparation gelcoat laminate infusion cure release fit-out wiring engine trailer water-trial handover';
const each = (line: string): string =>
  STAGES.split(' ')
    .map((stage) => `  ${stage}: ${line}\n`)
    .join('');

export const YARD = `shop:
  name: A Shop
  address: [1 Slip Road]
locale: en-AU
currency: AUD
tax:
  name: GST
  rate: 10%
  pricesInclude: true
  rounding: document
  source: An act.
rates:
${each('50')}overhead: 38
margins:
  hull: 28%
  fit-out: 35%
limits: { categories: [] }
marginFloor: 20%
wastage:
  fabric: 10%
massContingency: 5%
water: sea
personMass: 80 kg
gearPerPerson: 10 kg
fuelDensity: 740 kg/m3
priceAge: 180
quoteDays: 30
showPrices: items
payments:
  - { name: Deposit, when: On order, share: 40% }
  - { name: Balance, when: On handover, share: 60% }
notIncluded: []
terms: [Pay on time.]
care: []
handoverChecks: []
stages:
${each('{ does: Work. }')}suppliers:
  acme-parts: { name: Acme, leadDays: 7 }
`;

/** The sample hull with other cross-sections: a line for each. */
export const withSections = (sections: string): string =>
  HULL.replace(/lines:\n(?: {2}- .*\n)+/, `lines:\n${sections}`);

export const HULL = `id: tern-400
name: Tern 400
sentence: A light boat.
dimensions:
  length: 4 m
  beam: 1.7 m
  depth: 650 mm
  transomBeam: 1.6 m
  transomHeight: 510 mm
  deadrise: 12 deg
  deckArea: 4 m2
lines:
  - { x: 0, points: [[0, 0], [0.75, 0.5]] }
  - { x: 0.5, points: [[0, 0], [0.775, 0.5375]] }
  - { x: 1, points: [[0, 0], [0.8, 0.575]] }
  - { x: 1.5, points: [[0, 0], [0.825, 0.6125]] }
  - { x: 2, points: [[0, 0], [0.85, 0.65]] }
  - { x: 2.5, points: [[0, 0.1], [0.6625, 0.6625]] }
  - { x: 3, points: [[0, 0.2], [0.475, 0.675]] }
  - { x: 3.5, points: [[0, 0.3], [0.2875, 0.6875]] }
  - { x: 4, points: [[0, 0.4], [0.1, 0.7]] }
ratings:
  power: 30 hp
  engineMass: 90 kg
  people: 4
  load: 450 kg
  basis: Trial.
tankVolume: 20 L
openings: [{ name: transom cut-out, at: { x: 0 m, z: 510 mm } }]
seats:
  - { x: 1.8 m, z: 650 mm }
  - { x: 1.8 m, z: 650 mm }
  - { x: 1.8 m, z: 650 mm }
  - { x: 1.8 m, z: 650 mm }
tillerSeat: { x: 20 % length, z: 40 % depth }
cockpit: { from: 10 % length, to: 50 % length, halfBreadth: 0.12 m, seatHeight: 40 % depth }
trimBand: { least: -8 deg, most: 8 deg }
performance: { leastFreeboard: 0.05 m }
shaft: long
class: hull
shell:
  mass: 80 kg
  at: { x: 45 % length, z: 40 % depth }
  parts: [{ part: AC-1, quantity: 12 }]
  hours: [{ stage: laminate, hours: 20 }]
structure:
  mass: 60 kg
  at: { x: 1.8 m, z: 300 mm }
  parts: []
  hours: []
moulds: 400
includes: [A hull.]
`;

/** The sample hull with chines, so that it planes. */
export const CHINED = withSections(`  - { x: 0, points: [[0, 0], [0.75, 0.16], [0.8, 0.6]] }
  - { x: 2, points: [[0, 0], [0.8, 0.19], [0.85, 0.66]] }
  - { x: 4, points: [[0, 0.4], [0.05, 0.46], [0.1, 0.72]] }
`);

export const OPTIONS = `group: Seats
order: 1
options:
  - { id: seat, name: Seat, class: fit-out, free: Part of the hull price. }
  - { id: rod-holder, name: Rod holder, class: fit-out, free: Part of the hull price., quantity: { most: 8 } }
`;

export const OUTBOARDS = `outboards:
  - id: outboard-20
    name: Outboard 20 kW
    power: 20 kW
    steering: tiller
    starting: electric
    shafts: { long: { part: AC-2, mass: 60 kg } }
    class: fit-out
    hours: [{ stage: engine, hours: 3 }]
`;

export const TRAILERS = `trailers:
  - id: trailer-750
    name: Trailer
    part: AC-3
    tare: 180 kg
    rating: 750 kg
    shortest: 3.5 m
    longest: 4.5 m
    length: 5.5 m
    width: 1.9 m
    axles: 1
    brakes: none
    class: fit-out
    hours: [{ stage: trailer, hours: 1 }]
`;

export const CHARGES = `charges:
  - { id: boat-registration, name: Registration, amount: 120.50, taxed: no, when: always, source: The office. }
`;

export const PARTS = `code,description,class,unit,cost,currency,mass,price_date
AC-1,"Cloth, 450 g/m2",fabric,m2,6.80,AUD,0.46,2026-02-02
AC-2,Outboard,outboard,each,5200.00,AUD,60,2026-02-02
AC-3,Trailer,trailer,each,2100.00,AUD,180,2026-02-02
`;

export type Files = Readonly<Record<string, string | Uint8Array | undefined>>;

export const SOUND = {
  'catalogue/yard.yaml': YARD,
  'catalogue/hulls/tern-400.yaml': HULL,
  'catalogue/options/seats.yaml': OPTIONS,
  'catalogue/outboards.yaml': OUTBOARDS,
  'catalogue/trailers.yaml': TRAILERS,
  'catalogue/charges.yaml': CHARGES,
  'catalogue/parts/acme-parts.csv': PARTS,
  'orders/t-1.yaml': ORDER,
} as const satisfies Files;

/** Makes a workspace of the sound files with some changed, added, or (undefined) left out; gives its folder. */
export function workspaceOf(changes: Files = {}): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'orlop-read-'));
  const files: Files = { ...SOUND, ...changes };
  for (const [name, text] of Object.entries(files)) {
    if (text === undefined) continue;
    const file = path.join(folder, name);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  return folder;
}
