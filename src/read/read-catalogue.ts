import path from 'node:path';
import type { z } from 'zod';
import {
  type Catalogue,
  type Charge,
  chargeFileSchema,
  type GroupedOption,
  hullSchema,
  type Hull,
  type Material,
  materialFileSchema,
  optionFileSchema,
  type Outboard,
  outboardFileSchema,
  type Sourced,
  type StockFile,
  stockFileSchema,
  type Trailer,
  trailerFileSchema,
  type Yard,
  yardSchema,
} from '../schema/index.ts';
import { filesIn, isThere, readSource, type Reading, YAML_FILE } from './folder.ts';
import { entriesOf, idOf, readChecked, validEntries } from './read-entries.ts';
import { readPartLists } from './read-part-lists.ts';
import { byUniqueName } from './unique.ts';

export interface ReadCatalogue {
  /** Whatever of the catalogue is sound; undefined when the yard is not. */
  readonly catalogue: Catalogue | undefined;
  /** Ids and part codes of entries that are there and could not be read. */
  readonly brokenIds: ReadonlySet<string>;
}

/** Reads the catalogue of a workspace; what is wrong with it is added to the findings of the reading. */
export function readCatalogue(reading: Reading): ReadCatalogue {
  const broken = new Set<string>();
  const yard = readYard(reading);
  const hulls = unique(reading, readHulls(reading, broken));
  const options = unique(reading, readOptions(reading, broken));
  const outboards = unique<Sourced<Outboard>>(
    reading,
    readList(reading, broken, 'catalogue/outboards.yaml', 'outboards', outboardFileSchema),
  );
  const trailers = unique<Sourced<Trailer>>(
    reading,
    readList(reading, broken, 'catalogue/trailers.yaml', 'trailers', trailerFileSchema),
  );
  const charges = unique<Sourced<Charge>>(
    reading,
    readList(reading, broken, 'catalogue/charges.yaml', 'charges', chargeFileSchema),
  );
  const materials = readMaterials(reading);
  const stock = readStock(reading);
  const lists = readPartLists(reading, broken, yard?.value);
  const catalogue = yard && {
    yard,
    hulls,
    options,
    outboards,
    trailers,
    charges,
    materials,
    ...(stock && { stock }),
    ...lists,
  };
  return { catalogue, brokenIds: broken };
}

function unique<T extends Sourced<{ readonly id: string }>>(
  reading: Reading,
  entries: readonly T[],
): ReadonlyMap<string, T> {
  const { byName, findings } = byUniqueName(
    entries,
    'id',
    ({ value }) => value.id,
    reading.sources,
  );
  reading.findings.push(...findings);
  return byName;
}

/** A YAML file under a name that people write either way; the name with `.yaml` when there is neither. */
function eitherEnding(reading: Reading, file: string): string {
  const other = file.replace(/\.yaml$/, '.yml');
  const folder = filesIn({ ...reading, findings: [] }, 'catalogue', YAML_FILE);
  return !folder.includes(file) && folder.includes(other) ? other : file;
}

function readYard(reading: Reading): Sourced<Yard> | undefined {
  const file = eitherEnding(reading, 'catalogue/yard.yaml');
  const text = readSource(reading, file);
  if (text === undefined) return undefined;
  const { sourced, findings } = readChecked<Yard>(yardSchema, text, file);
  reading.findings.push(...findings);
  return sourced;
}

/** The text of a file that a workspace may do without. */
function optionalSource(reading: Reading, name: string): string | undefined {
  const file = eitherEnding(reading, name);
  return isThere(path.join(reading.workspace, file)) ? readSource(reading, file) : undefined;
}

function readMaterials(reading: Reading): ReadonlyMap<string, Sourced<Material>> {
  const name = 'catalogue/materials.yaml';
  const text = optionalSource(reading, name);
  if (text === undefined) return new Map();
  const file = eitherEnding(reading, name);
  const { sourced, source, findings } = readChecked(materialFileSchema, text, file);
  const entries = sourced ? entriesOf(sourced.value.materials, source, 'materials') : [];
  const named = byUniqueName(entries, 'part', ({ value }) => value.part, reading.sources);
  reading.findings.push(...findings, ...named.findings);
  return named.byName;
}

function readStock(reading: Reading): Sourced<StockFile> | undefined {
  const name = 'catalogue/stock.yaml';
  const text = optionalSource(reading, name);
  if (text === undefined) return undefined;
  const file = eitherEnding(reading, name);
  const { sourced, findings } = readChecked<StockFile>(stockFileSchema, text, file);
  reading.findings.push(...findings);
  return sourced;
}

function readHulls(reading: Reading, broken: Set<string>): readonly Sourced<Hull>[] {
  const hulls: Sourced<Hull>[] = [];
  for (const file of filesIn(reading, 'catalogue/hulls', YAML_FILE)) {
    const text = readSource(reading, file);
    if (text === undefined) continue;
    const { sourced, source, findings } = readChecked<Hull>(hullSchema, text, file);
    reading.findings.push(...findings);
    if (sourced) hulls.push(sourced);
    else for (const id of idOf(source)) broken.add(id);
  }
  return hulls;
}

function readOptions(reading: Reading, broken: Set<string>): readonly GroupedOption[] {
  const options: GroupedOption[] = [];
  if (!isThere(path.join(reading.workspace, 'catalogue/options'))) return options;
  for (const file of filesIn(reading, 'catalogue/options', YAML_FILE)) {
    const text = readSource(reading, file);
    if (text === undefined) continue;
    const { sourced, source, findings } = readChecked(optionFileSchema, text, file);
    reading.findings.push(...findings);
    // The options that are sound stay on sale; only the head of the file is read on its own.
    const head = headSchema.safeParse(source.value);
    const { sound, broken: ids } = sourced
      ? { sound: entriesOf(sourced.value.options, source, 'options'), broken: [] }
      : validEntries(optionFileSchema.shape.options.element, source, 'options');
    for (const id of ids) broken.add(id);
    if (head.success) {
      const { group, order } = head.data;
      options.push(...sound.map((one) => ({ ...one, group, groupOrder: order })));
    } else for (const { value } of sound) broken.add(value.id);
  }
  return options;
}

const headSchema = optionFileSchema.pick({ group: true, order: true }).strip();

function readList<T>(
  reading: Reading,
  broken: Set<string>,
  name: string,
  key: string,
  schema: z.ZodObject<Readonly<Record<string, z.ZodArray<z.ZodType<T>>>>>,
): readonly Sourced<T>[] {
  const text = optionalSource(reading, name);
  if (text === undefined) return [];
  const file = eitherEnding(reading, name);
  const { sourced, source, findings } = readChecked(schema, text, file);
  reading.findings.push(...findings);
  const list = schema.shape[key];
  if (sourced) return entriesOf<T>(sourced.value[key] ?? [], source, key);
  if (!list) return [];
  const entries = validEntries(list.element, source, key);
  for (const id of entries.broken) broken.add(id);
  return entries.sound;
}
