import { isMap, isScalar, isSeq, type Pair, type YAMLMap } from 'yaml';
import type { Place } from '../findings/index.ts';
import { rangeOf } from './plain-value.ts';
import type { Path } from './placed.ts';

type Range = readonly [number, number];

/** How far a path is written: the last node on it, its key, and whether the path goes on. */
interface Reached {
  readonly node: unknown;
  readonly key: unknown;
  readonly whole: boolean;
}

/** Finds where the parts of a parsed document are written. */
export class YamlPlaces {
  private readonly file: string;
  private readonly root: unknown;
  private readonly pairs = new WeakMap<YAMLMap, ReadonlyMap<unknown, Pair>>();

  constructor(file: string, root: unknown) {
    this.file = file;
    this.root = root;
  }

  place(path: Path): Place {
    const { node, key, whole } = this.reach(path);
    const range = whole && !isEmpty(node) ? rangeOf(node) : headOf(node, key);
    return this.at(range ?? rangeOf(key) ?? rangeOf(node));
  }

  placeOfKey(path: Path): Place {
    const { node, key, whole } = this.reach(path);
    return this.at(whole ? (rangeOf(key) ?? rangeOf(node)) : headOf(node, key));
  }

  private at(range: Range | undefined): Place {
    return { file: this.file, range: range ?? [0, 0] };
  }

  private reach(path: Path): Reached {
    let node = this.root;
    let key: unknown;
    for (const step of path) {
      if (isMap(node)) {
        const pair = this.pairsOf(node).get(step);
        if (!pair) return { node, key, whole: false };
        ({ key, value: node } = pair);
      } else if (isSeq(node) && typeof step === 'number' && step < node.items.length) {
        node = node.items[step];
        key = undefined;
      } else return { node, key, whole: false };
    }
    return { node, key, whole: true };
  }

  private pairsOf(map: YAMLMap): ReadonlyMap<unknown, Pair> {
    const known = this.pairs.get(map);
    if (known) return known;
    const pairs = new Map<unknown, Pair>();
    for (const pair of map.items) {
      const name = isScalar(pair.key) ? pair.key.value : undefined;
      if (name !== undefined && !pairs.has(name)) pairs.set(name, pair);
    }
    this.pairs.set(map, pairs);
    return pairs;
  }
}

/** What stands for a block in a finding about something that it lacks: its key, else its first key. */
function headOf(node: unknown, key: unknown): Range | undefined {
  const own = rangeOf(key);
  if (own) return own;
  return isMap(node) ? rangeOf(node.items[0]?.key) : rangeOf(node);
}

const isEmpty = (node: unknown): boolean =>
  node === null || node === undefined || (isScalar(node) && node.value === null && !node.source);
