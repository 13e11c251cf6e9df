import { describePlace, type Finding, finding } from '../findings/index.ts';
import type { Catalogue, ListedPart } from '../schema/index.ts';
import { clip } from './words.ts';

type Rows = Pick<Catalogue, 'parts' | 'partRows'>;

/**
 * Rows of price lists by code. A code may have a row for each day from which another price holds; two rows of one day,
 * or rows of two suppliers, are a mistake, and so are rows that count in different units.
 *
 * @returns the newest row of each code and all of them, with a finding at each row that cannot stand beside the first
 */
export function rowsByCode(
  parts: readonly ListedPart[],
  sources: ReadonlyMap<string, string>,
): Rows & { readonly findings: readonly Finding[] } {
  const rows = new Map<string, ListedPart[]>();
  const findings: Finding[] = [];
  for (const part of parts) {
    const before = rows.get(part.value.code) ?? [];
    const ill = clash(part, before, sources);
    if (ill) findings.push(ill);
    else rows.set(part.value.code, [...before, part]);
  }
  const partRows = new Map([...rows].map(([code, list]) => [code, list.toSorted(byDay)] as const));
  const newestRows = [...partRows].flatMap(([code, list]) => newest(code, list));
  return { parts: new Map(newestRows), partRows, findings };
}

const byDay = (a: ListedPart, b: ListedPart): number =>
  a.value.price_date < b.value.price_date ? -1 : 1;

function newest(code: string, list: readonly ListedPart[]): readonly [string, ListedPart][] {
  const last = list.at(-1);
  return last ? [[code, last]] : [];
}

function clash(
  part: ListedPart,
  before: readonly ListedPart[],
  sources: ReadonlyMap<string, string>,
): Finding | undefined {
  const [first] = before;
  if (!first) return undefined;
  const { code, unit, price_date: day } = part.value;
  const same = before.find((one) => one.supplier !== part.supplier || one.value.price_date === day);
  if (same) {
    const where = describePlace(same.place(['code']), sources.get(same.file));
    const received = `the code "${clip(code)}", which stands at ${where} already`;
    return finding('DUPLICATE_ID', part.place(['code']), { received });
  }
  if (unit === first.value.unit) return undefined;
  return finding('WRONG_VALUE', part.place(['unit']), {
    received: `${clip(code)} by the ${unit}`,
    expected: `by the ${first.value.unit}, as in its first row: quantities count in it`,
  });
}
