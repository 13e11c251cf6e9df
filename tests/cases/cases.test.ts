import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { computeFigures, figuresData } from '../../src/figures/index.ts';
import { readYaml } from '../../src/read/index.ts';
import { YARD } from '../read/samples.ts';
import { resolveSample } from '../resolve/invented.ts';

const HERE = import.meta.dirname;
/** The files of a case, and where they stand in the sample workspace that they change. */
const FILES = {
  'hull.yaml': 'catalogue/hulls/tern-400.yaml',
  'options.yaml': 'catalogue/options/seats.yaml',
  'trailers.yaml': 'catalogue/trailers.yaml',
  'order.yaml': 'orders/t-1.yaml',
} as const;

const expectedSchema = z.strictObject({
  figures: z
    .array(
      z.strictObject({
        figure: z.string(),
        value: z.coerce.number(),
        within: z.coerce.number().min(0),
        /** How a hand comes to it. */
        by: z.string().min(1),
      }),
    )
    .min(3),
});

/** What the boats together must have a hand-worked figure of. */
const KINDS = {
  mass: /^mass\./,
  draught: /draught/,
  trim: /trim$/,
  GM: /\.gm$/,
  heel: /\.heel$/,
  people: /^float\.side\./,
  speed: /^drive\..*speed/,
  'ball load': /^tow\.on-ball$/,
  wire: /^wire\..*area$/,
  price: /^price\.drive-away$/,
} as const;

const folders = readdirSync(HERE, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

const textIn = (folder: string, file: string): string | undefined => {
  const found = path.join(HERE, folder, file);
  return existsSync(found) ? readFileSync(found, 'utf8') : undefined;
};

const expectedOf = (folder: string) =>
  expectedSchema.parse(
    readYaml(textIn(folder, 'expected.yaml') ?? '', `${folder}/expected.yaml`).value,
  ).figures;

function figuresOf(folder: string) {
  const changed = Object.entries(FILES).flatMap(([file, place]) => {
    const text = textIn(folder, file);
    return text === undefined ? [] : [[place, text] as const];
  });
  const yard = `${YARD}${textIn(folder, 'yard-more.yaml') ?? ''}`;
  const { build, spots } = resolveSample({
    ...Object.fromEntries(changed),
    'catalogue/yard.yaml': yard,
  });
  if (!build) throw new Error(spots.join(', '));
  return figuresData(computeFigures(build, []));
}

describe.each(folders)('a boat worked by hand: %s', (folder) => {
  const ours = figuresOf(folder);

  it.each(expectedOf(folder).map(({ figure, ...more }) => [figure, more] as const))(
    '%s',
    (figure, { value, within }) => {
      expect(Math.abs(Number(ours[figure]?.value) - value)).toBeLessThanOrEqual(within + 1e-9);
    },
  );
});

it('are at least six, and leave no kind of figure out', () => {
  expect(folders.length).toBeGreaterThanOrEqual(6);
  const all = folders.flatMap((folder) => expectedOf(folder).map(({ figure }) => figure));
  const missing = Object.entries(KINDS).filter(([, name]) => !all.some((one) => name.test(one)));
  expect(missing.map(([kind]) => kind)).toEqual([]);
});
