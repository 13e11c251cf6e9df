import { z } from 'zod';
import type { FieldFacts } from './field-facts.ts';
import { FILES } from './files.ts';
import { mayBeLeftOut, peel, type Schema } from './walk.ts';

/** One field of a kind of file, as whoever writes the file needs to know it. */
export interface Field {
  /** "structure.laminate.flat[].layers": dots lead into blocks, "[]" into each entry of a list, "*" is any key. */
  readonly path: string;
  readonly description: string;
  /** In a word or two: "mass", "list of text". */
  readonly kind: string;
  /** What a bare number means. */
  readonly note: string;
  /** The values allowed: the words, or the limits. */
  readonly allowed: string;
  /** The list of the catalogue that it must be in. */
  readonly from?: FieldFacts['from'];
  readonly needed: boolean;
  /** What counts when it is left out; undefined when nothing does. */
  readonly usual?: unknown;
  /** Where not every kind of block has it: those that have ("kind: coat"), or what the others have ("or share"). */
  readonly within: readonly string[];
}

export interface FileFields {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly file: string;
  readonly fields: readonly Field[];
}

/** Every field of every kind of file, a block before what is in it. */
export function listFields(): readonly FileFields[] {
  return Object.entries(FILES).map(([id, { schema, file }]) => {
    const { title = id, description = '' } = z.globalRegistry.get(schema) ?? {};
    return { id, title, description, file, fields: fieldsIn(schema, '') };
  });
}

/** The fields of a block, or of the blocks in a list or under any key. */
function fieldsIn(schema: Schema, path: string): readonly Field[] {
  const { inner } = peel(schema);
  if (inner instanceof z.core.$ZodObject)
    return Object.entries(inner._zod.def.shape).flatMap(([key, child]) => {
      const at = path === '' ? key : `${path}.${key}`;
      return [fieldOf(child, at), ...fieldsIn(child, at)];
    });
  if (inner instanceof z.core.$ZodArray) return fieldsIn(inner._zod.def.element, `${path}[]`);
  if (inner instanceof z.core.$ZodRecord) return fieldsIn(inner._zod.def.valueType, `${path}.*`);
  if (inner instanceof z.core.$ZodTuple)
    return inner._zod.def.items.map((item, index) => fieldOf(item, `${path}[${index + 1}]`));
  return inner instanceof z.core.$ZodUnion ? fieldsOfUnion(inner._zod.def.options, path) : [];
}

/** The fields of several kinds of block: one that all have stands once, another says in which it stands. */
function fieldsOfUnion(branches: readonly Schema[], path: string): readonly Field[] {
  const blocks = branches.filter((branch) => fieldsIn(branch, path).length > 0);
  const found = new Map<string, Field>();
  for (const block of blocks)
    for (const field of fieldsIn(block, path)) {
      const key = JSON.stringify(field);
      const before = found.get(key)?.within ?? field.within;
      found.set(key, { ...field, within: [...before, nameOfBlock(block, blocks)] });
    }
  return [...found.values()].map((field) =>
    field.within.length < blocks.length ? field : { ...field, within: [] },
  );
}

/** What tells a block from the others: "kind: coat", or the fields that those have instead. */
function nameOfBlock(block: Schema, blocks: readonly Schema[]): string {
  const shape = shapeOf(block);
  const fixed = Object.entries(shape).find(
    ([, child]) => peel(child).inner instanceof z.core.$ZodLiteral,
  );
  if (fixed) return `${fixed[0]}: ${wordsOf(fixed[1]).allowed}`;
  const others = blocks.flatMap((other) => Object.keys(shapeOf(other)));
  return `or ${others.filter((key) => !(key in shape)).join(', ')}`;
}

function shapeOf(schema: Schema): Readonly<Record<string, Schema>> {
  const { inner } = peel(schema);
  return inner instanceof z.core.$ZodObject ? inner._zod.def.shape : {};
}

function fieldOf(schema: Schema, path: string): Field {
  const { inner, description = '', usual } = peel(schema);
  const each =
    inner instanceof z.core.$ZodArray && fieldsIn(schema, path).length === 0
      ? peel(inner._zod.def.element).description
      : undefined;
  return {
    path,
    description: each === undefined ? description : `${description} Each entry: ${each}`,
    note: '',
    allowed: '',
    ...wordsOf(schema),
    needed: !mayBeLeftOut(schema),
    ...(usual !== undefined && { usual }),
    within: [],
  };
}

type Words = Pick<Field, 'kind' | 'from'> & Partial<Pick<Field, 'note' | 'allowed'>>;

function wordsOf(schema: Schema): Words {
  const { inner, facts } = peel(schema);
  if (facts) {
    const { range, ...words } = facts;
    return { ...words, ...(range !== undefined && { allowed: range }) };
  }
  if (inner instanceof z.core.$ZodEnum || inner instanceof z.core.$ZodLiteral)
    return { kind: 'word', allowed: [...(inner._zod.values ?? [])].map(String).join(', ') };
  if (inner instanceof z.core.$ZodBoolean) return { kind: 'true or false' };
  if (inner instanceof z.core.$ZodObject) return { kind: 'block' };
  if (inner instanceof z.core.$ZodTuple) return { kind: `list of ${inner._zod.def.items.length}` };
  if (inner instanceof z.core.$ZodRecord) {
    const { allowed = '' } = wordsOf(inner._zod.def.keyType);
    return { kind: `block of names, each: ${wordsOf(inner._zod.def.valueType).kind}`, allowed };
  }
  if (inner instanceof z.core.$ZodArray) {
    const { minimum: least } = inner._zod.bag;
    const element = wordsOf(inner._zod.def.element);
    const many = typeof least === 'number' && least > 1 ? `, ${least} at least` : '';
    return { ...element, kind: `list${many}, each: ${element.kind}` };
  }
  if (!(inner instanceof z.core.$ZodUnion)) return { kind: 'text' };
  const all = inner._zod.def.options.map(wordsOf);
  const joined = (texts: readonly (string | undefined)[], by: string): string =>
    [...new Set(texts.filter(Boolean))].join(by);
  const kinds = all.map((one) => one.kind);
  const allowed = all.map((one) => one.allowed);
  return {
    ...all.find((one) => one.from ?? one.note),
    kind: joined(kinds, ', or '),
    allowed: joined(allowed, ', '),
  };
}
