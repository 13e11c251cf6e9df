import { z } from 'zod';
import type { Catalogue, Sourced } from './catalogue.ts';
import {
  chargeFileSchema,
  outboardFileSchema,
  trailerFileSchema,
} from './engine-trailer-charge.ts';
import { isNameList, NAMES_FROM, type NameList } from './fields.ts';
import { hullSchema } from './hull.ts';
import { materialFileSchema, stockFileSchema } from './materials.ts';
import { optionFileSchema } from './option.ts';
import { orderSchema } from './order.ts';
import { yardSchema } from './yard.ts';

/** A name that a field may have, with what it stands for. */
interface Named {
  readonly name: string;
  readonly means: string;
}
type Names = Readonly<Record<NameList, readonly Named[]>>;

const SCHEMAS = {
  order: orderSchema,
  yard: yardSchema,
  hull: hullSchema,
  options: optionFileSchema,
  outboards: outboardFileSchema,
  trailers: trailerFileSchema,
  charges: chargeFileSchema,
  materials: materialFileSchema,
  stock: stockFileSchema,
} as const;

/**
 * The JSON Schema (draft-07) of each kind of file, for a text editor to complete and check with.
 *
 * @param catalogue - its ids, part codes and classes become the values that an editor offers; left out: any name
 * @returns the text of each schema by its file name, the same on every run
 */
export function emitJsonSchemas(catalogue?: Catalogue): ReadonlyMap<string, string> {
  const names = catalogue ? namesOf(catalogue) : undefined;
  const entries = Object.entries(SCHEMAS).map(([name, schema]) => {
    const json = withNames(topLevel(name, schema), names);
    return [`${name}.schema.json`, `${JSON.stringify(json, undefined, 2)}\n`] as const;
  });
  return new Map(entries);
}

/** The generator puts a schema that has an id among the definitions; an editor wants it at the top. */
function topLevel(name: string, schema: z.ZodType): object {
  const generated = z.toJSONSchema(schema, { io: 'input', target: 'draft-07' });
  const definitions: readonly (readonly [string, unknown])[] = Object.entries(
    generated.definitions ?? {},
  );
  const [, root] = definitions.find(([key]) => key === name) ?? [];
  const others = Object.fromEntries(definitions.filter(([key]) => key !== name));
  const rest = Object.keys(others).length > 0 ? { definitions: others } : {};
  return { $schema: generated.$schema, ...(typeof root === 'object' && root), ...rest };
}

function namesOf(catalogue: Catalogue): Names {
  const { yard, hulls, options, outboards, trailers, charges, parts } = catalogue;
  const named = (entries: ReadonlyMap<string, Sourced<{ readonly name: string }>>) =>
    [...entries].map(([name, { value }]) => ({ name, means: value.name }));
  const classes = (table: Readonly<Record<string, unknown>>, means: string) =>
    Object.keys(table).map((name) => ({ name, means }));
  return {
    hulls: named(hulls),
    options: named(options),
    outboards: named(outboards),
    trailers: named(trailers),
    charges: named(charges),
    parts: [...parts].map(([name, { value, supplier }]) => ({
      name,
      means: `${value.description} (${supplier}, per ${value.unit})`,
    })),
    marginClasses: classes(yard.value.margins, 'A margin class of the yard.'),
    packages: yard.value.packages.map(({ id, name }) => ({ name: id, means: name })),
    wastageClasses: classes(yard.value.wastage, 'A class of material of the yard.'),
  };
}

/** Puts the names in the place of every mark that `fields.ts` left. */
function withNames(json: unknown, names: Names | undefined): unknown {
  if (Array.isArray(json)) return json.map((item: unknown) => withNames(item, names));
  if (typeof json !== 'object' || json === null) return json;
  const from = NAMES_FROM in json ? json[NAMES_FROM] : undefined;
  const offered = names && isNameList(from) ? names[from] : [];
  const facts = Object.entries(json)
    .filter(([key]) => key !== NAMES_FROM)
    .map(([key, value]): readonly [string, unknown] => [key, withNames(value, names)]);
  const list = {
    enum: offered.map(({ name }) => name),
    enumDescriptions: offered.map(({ means }) => means),
  };
  return { ...Object.fromEntries(facts), ...(offered.length > 0 && list) };
}
