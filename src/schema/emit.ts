import { z } from 'zod';
import type { Catalogue, Sourced } from './catalogue.ts';
import { fieldFacts, type NameList } from './field-facts.ts';
import { YAML_FILES } from './files.ts';
import { editedData } from '../words/index.ts';

/** A name that a field may have, with what it stands for. */
interface Named {
  readonly name: string;
  readonly means: string;
}
type Names = Readonly<Record<NameList, readonly Named[]>>;

/**
 * The JSON Schema (draft-07) of each kind of file, for a text editor to complete and check with.
 *
 * @param catalogue - its ids, part codes and classes become the values that an editor offers; left out: any name
 * @returns the text of each schema by its file name, the same on every run
 */
export function emitJsonSchemas(catalogue?: Catalogue): ReadonlyMap<string, string> {
  const names = catalogue && namesOf(catalogue);
  const edition = catalogue?.yard.value ?? { locale: 'en-GB' };
  return new Map(
    Object.entries(YAML_FILES).map(([name, { schema }]) => [
      `${name}.schema.json`,
      `${JSON.stringify(editedData(jsonSchema(schema, names), edition), undefined, 2)}\n`,
    ]),
  );
}

/** A list of names stands once among the definitions, however many fields must be in it. */
function jsonSchema(schema: z.ZodType, names: Names | undefined): object {
  const definitions = new Map<NameList, object>();
  const json = z.toJSONSchema(schema, {
    io: 'input',
    target: 'draft-07',
    override({ zodSchema, jsonSchema: field }) {
      const from = fieldFacts.get(zodSchema)?.from;
      const offered = (from && names?.[from]) ?? [];
      if (!from || offered.length === 0) return;
      field.allOf = [{ $ref: `#/definitions/${from}` }];
      definitions.set(from, {
        enum: offered.map(({ name }) => name),
        enumDescriptions: offered.map(({ means }) => means),
      });
    },
  });
  return { ...json, ...(definitions.size > 0 && { definitions: Object.fromEntries(definitions) }) };
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
