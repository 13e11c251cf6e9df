// Invented for tests: no such shop, boat, person or price exists.
import { computeFigures, type Figures } from '../../src/figures/index.ts';
import type { Finding } from '../../src/findings/index.ts';
import type { Build, BuildItem } from '../../src/resolve/index.ts';
import { outboardFileSchema, trailerFileSchema } from '../../src/schema/index.ts';
import { kilograms } from '../../src/units/index.ts';
import { inventedFigures } from './invented-build.ts';

interface Fitted {
  readonly order?: Readonly<Record<string, unknown>>;
  readonly yard?: Partial<Build['yard']>;
  /** What is otherwise about an item, by its name. */
  readonly items?: Readonly<Record<string, Partial<BuildItem>>>;
  readonly findings?: readonly Finding[];
  readonly trailer?: boolean;
}

const ITEMS = [
  { kind: 'shell', group: 'Hull', name: 'Coot 400 hull shell', price: '12000.10' },
  { kind: 'structure', group: 'Hull', name: 'Coot 400 structure', price: '5300.05' },
  { kind: 'option', group: 'Seats', name: 'Bow seat', price: '480.33', quantity: 2 },
  { kind: 'option', group: 'Electrical', name: 'House battery', price: '910.77', quantity: 2 },
  { kind: 'option', group: 'Electrical', name: 'House battery charger', price: '95.00' },
  { kind: 'outboard', group: 'Outboard', name: 'Outboard 15 kW, long shaft', price: '4100.20' },
] as const;
const TRAILER = { kind: 'trailer', group: 'Trailer', name: 'Road trailer', price: '2100' } as const;

/** A view with plain spaces where no line may break, so that a test can be read. */
export const breakable = <T>(view: T): T =>
  JSON.parse(JSON.stringify(view).replaceAll('\u00A0', ' ')) as T;

/** Figures of an invented boat with an outboard and, unless told otherwise, a trailer. */
export function fittedFigures(wanted: Fitted = {}): Figures {
  const towed = wanted.trailer !== false;
  const { build } = inventedFigures({
    items: towed ? [...ITEMS, TRAILER] : ITEMS,
    order: { fuel: '25', ...wanted.order },
  });
  const items = build.items.map((item) => ({ ...item, ...wanted.items?.[item.name] }));
  return computeFigures(
    {
      ...build,
      items,
      yard: { ...build.yard, ...wanted.yard },
      ...fittedOutboard(build),
      ...(towed && fittedTrailer()),
    },
    wanted.findings ?? [],
  );
}

function fittedOutboard({ items }: Build): Pick<Build, 'outboard'> {
  const mass = items.find(({ kind }) => kind === 'outboard')?.mass;
  const [model] = outboardFileSchema.parse({
    outboards: [
      {
        id: 'outboard-15',
        name: 'Outboard 15 kW',
        power: '15',
        steering: 'tiller',
        starting: 'hand',
        shafts: { long: { part: 'SECRET-PART-1', mass: '52' } },
        class: 'secret-margin-class',
        hours: [{ stage: 'engine', hours: '2' }],
      },
    ],
  }).outboards;
  return model && mass !== undefined ? { outboard: { model, shaft: 'long', mass } } : {};
}

function fittedTrailer(): Pick<Build, 'trailer'> {
  const [trailer] = trailerFileSchema.parse({
    trailers: [
      {
        id: 'road-trailer',
        name: 'Road trailer',
        part: 'SECRET-PART-1',
        tare: '180',
        rating: '900',
        shortest: '3',
        longest: '5',
        length: '5.5',
        width: '1.9',
        axles: '1',
        brakes: 'none',
        class: 'secret-margin-class',
        hours: [{ stage: 'trailer', hours: '1' }],
      },
    ],
  }).trailers;
  return trailer ? { trailer: { ...trailer, tare: trailer.tare ?? kilograms(0) } } : {};
}
