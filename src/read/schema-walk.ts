import { z } from 'zod';
import { innerSchema, type Schema } from '../schema/index.ts';
import { isBlock, type Path } from './placed.ts';

/** The schema of a part of a value; through a union, that of the first branch that has the part. */
export function schemaAt(schema: Schema, path: Path): Schema | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return schema;
  const inner = innerSchema(schema);
  if (inner instanceof z.core.$ZodUnion) {
    return firstDefined(inner._zod.def.options, (branch) => schemaAt(branch, path));
  }
  const child = childOf(inner, step);
  return child && schemaAt(child, rest);
}

function childOf(inner: Schema, step: string | number): Schema | undefined {
  if (inner instanceof z.core.$ZodObject) {
    const { shape } = inner._zod.def;
    return Object.hasOwn(shape, step) ? shape[step] : undefined;
  }
  if (inner instanceof z.core.$ZodArray) return inner._zod.def.element;
  if (inner instanceof z.core.$ZodTuple) return inner._zod.def.items[Number(step)];
  if (inner instanceof z.core.$ZodRecord) return inner._zod.def.valueType;
  return undefined;
}

function firstDefined<T, R>(items: readonly T[], find: (item: T) => R | undefined): R | undefined {
  for (const item of items) {
    const found = find(item);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** The keys that a block may have, in any branch of a union; empty when any will do. */
export function knownKeys(schema: Schema | undefined): readonly string[] {
  if (!schema) return [];
  const inner = innerSchema(schema);
  if (inner instanceof z.core.$ZodObject) return Object.keys(inner._zod.def.shape);
  if (inner instanceof z.core.$ZodUnion)
    return [...new Set(inner._zod.def.options.flatMap(knownKeys))];
  if (inner instanceof z.core.$ZodRecord) {
    const keys = innerSchema(inner._zod.def.keyType);
    return keys instanceof z.core.$ZodEnum ? Object.keys(keys._zod.def.entries) : [];
  }
  return [];
}

/** What a schema takes, in words. */
export function kindInWords(schema: Schema | undefined): string {
  if (!schema) return 'a value';
  const inner = innerSchema(schema);
  if (inner instanceof z.core.$ZodObject || inner instanceof z.core.$ZodRecord)
    return 'a block of fields';
  if (inner instanceof z.core.$ZodArray) return 'a list, each entry after a hyphen';
  if (inner instanceof z.core.$ZodTuple) return `a list of ${inner._zod.def.items.length}`;
  if (inner instanceof z.core.$ZodBoolean) return 'true or false';
  if (inner instanceof z.core.$ZodUnion) {
    const kinds = inner._zod.def.options.map(kindInWords);
    return [...new Set(kinds)].join(', or ');
  }
  return 'a value on one line';
}

/** True when a value is of the kind that a schema takes, whatever is in it. */
export function takesKindOf(schema: Schema, value: unknown): boolean {
  const inner = innerSchema(schema);
  if (inner instanceof z.core.$ZodUnion)
    return inner._zod.def.options.some((branch) => takesKindOf(branch, value));
  if (inner instanceof z.core.$ZodObject || inner instanceof z.core.$ZodRecord)
    return isBlock(value);
  if (inner instanceof z.core.$ZodArray || inner instanceof z.core.$ZodTuple)
    return Array.isArray(value);
  if (inner instanceof z.core.$ZodBoolean) return typeof value === 'boolean';
  return typeof value === 'string';
}
