import { z } from 'zod';
import { type FieldFacts, fieldFacts } from './field-facts.ts';

export type Schema = z.core.$ZodType;

interface Peeled {
  readonly inner: Schema;
  readonly description?: string;
  readonly facts?: FieldFacts;
  /** What a field that is left out stands for. */
  readonly usual?: unknown;
}

/** The schema within optional, default, and the input side of a pipe; with what is said on the way, the first of each. */
export function peel(schema: Schema): Peeled {
  const description = z.globalRegistry.get(schema)?.description;
  const facts = fieldFacts.get(schema);
  const own = {
    ...(description !== undefined && { description }),
    ...(facts && { facts }),
    ...(hasDefault(schema) && { usual: schema._zod.def.defaultValue }),
  };
  const next = within(schema);
  return next ? { ...peel(next), ...own } : { ...own, inner: schema };
}

function within(schema: Schema): Schema | undefined {
  if (schema instanceof z.core.$ZodPipe) return schema._zod.def.in;
  if (schema instanceof z.core.$ZodOptional || hasDefault(schema)) return schema._zod.def.innerType;
  return undefined;
}

const hasDefault = (schema: Schema): schema is z.core.$ZodDefault | z.core.$ZodPrefault =>
  schema instanceof z.core.$ZodDefault || schema instanceof z.core.$ZodPrefault;

/** A schema without what makes it optional or turns its value into another. */
export const innerSchema = (schema: Schema): Schema => peel(schema).inner;

/** What a schema says of its own field. */
export const descriptionOf = (schema: Schema | undefined): string | undefined =>
  schema && peel(schema).description;

/** True when a field may be left out. */
export const mayBeLeftOut = (schema: Schema | undefined): boolean =>
  schema?._zod.optin !== undefined;
