import { type Field, listFields, type Yard } from '../../schema/index.ts';
import { UNIT_KINDS } from '../../units/index.ts';
import { pageHead, type PageHead } from '../sections/head.ts';

interface FieldRow {
  /** Where a link may lead: a field at the top of its file. */
  readonly anchor: string;
  /** The dotted path, in pieces between which a line may break. */
  readonly path: readonly string[];
  /** Where not every kind of block has the field: "kind: coat, resin", "or share". */
  readonly within: string;
  readonly description: string;
  readonly kind: string;
  readonly allowed: string;
  /** Whether it must be there, or what counts when it is left out. */
  readonly need: string;
  readonly needed: boolean;
}

export interface FieldsView {
  readonly document: PageHead;
  readonly files: readonly {
    readonly id: string;
    readonly title: string;
    readonly file: string;
    readonly description: string;
    readonly rows: readonly FieldRow[];
  }[];
  readonly units: readonly { readonly kind: string; readonly units: string }[];
}

/** Every field of every file that the shop writes, as the schemas describe them. */
export function fieldsView(yard: Yard): FieldsView {
  return {
    document: pageHead(
      yard,
      'Fields of all files',
      'Every field of every file, with its unit, its values and its default',
    ),
    files: listFields().map(({ id, fields, ...file }) => ({
      ...file,
      id,
      rows: fields.map((field) => fieldRow(field, id)),
    })),
    units: Object.entries(UNIT_KINDS).map(([kind, units]) => ({
      kind,
      units: Object.keys(units).join(', '),
    })),
  };
}

function fieldRow(field: Field, file: string): FieldRow {
  const { path, description, kind, note, allowed, from, needed, usual, within } = field;
  return {
    anchor: /^[A-Za-z_]+$/.test(path) ? `${file}.${path}` : '',
    path: path.split(/(?<=\.)/),
    within: within.join(', ').replaceAll(/, \w+: /g, ', '),
    description: description.replace(note, '').replace(allowed, '').trim(),
    kind: [kind, note].filter(Boolean).join('. '),
    allowed: [from && `one of the ${LISTS[from]}`, allowed].filter(Boolean).join(', or '),
    need: usual === undefined ? (needed ? 'needed' : 'optional') : `default: ${usualWords(usual)}`,
    needed,
  };
}

const LISTS: Readonly<Record<NonNullable<Field['from']>, string>> = {
  hulls: 'hulls',
  options: 'options',
  outboards: 'outboards',
  trailers: 'trailers',
  charges: 'charges',
  parts: 'codes in the price lists',
  marginClasses: 'margins in yard.yaml',
  wastageClasses: 'wastage classes in yard.yaml',
  packages: 'packages in yard.yaml',
};

/** A default as it would be typed. */
function usualWords(usual: unknown): string {
  if (Array.isArray(usual)) return usual.length === 0 ? 'none' : usual.map(usualWords).join(', ');
  if (!isBlock(usual)) return String(usual);
  const fields = Object.entries(usual).map(([key, value]) => `${key}: ${usualWords(value)}`);
  return fields.length === 0 ? 'that of each field in it' : fields.join(', ');
}

const isBlock = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
