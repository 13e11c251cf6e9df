import { isAlias, isMap, isScalar, isSeq, type Pair, type Scalar, type YAMLMap } from 'yaml';
import { type Finding, finding, type Place } from '../findings/index.ts';
import { clip, CONTROL } from './words.ts';

/** Blocks within blocks: no file of a workspace comes near it. */
const DEEPEST = 50;

interface Walk {
  readonly file: string;
  readonly findings: Finding[];
}

/**
 * The plain value of a parsed document: numbers as the text that was typed, and `undefined` where something
 * was refused, with a finding at the place.
 */
export function plainValue(root: unknown, walk: Walk): unknown {
  return valueOf(root, walk, 0);
}

function valueOf(node: unknown, walk: Walk, depth: number): unknown {
  if (node === null || node === undefined) return null;
  if (depth > DEEPEST) return refuse(walk, node, `blocks more than ${DEEPEST} deep`);
  if (isAlias(node)) return refuse(walk, node, `the alias *${clip(node.source)}`);
  if (isScalar(node) || isMap(node) || isSeq(node)) {
    if (node.tag !== undefined) return refuse(walk, node, `the tag ${clip(node.tag)}`);
    if (node.anchor !== undefined) return refuse(walk, node, `the anchor &${clip(node.anchor)}`);
  }
  if (isScalar(node)) return scalarValue(node, walk);
  if (isSeq(node)) return node.items.map((item) => valueOf(item, walk, depth + 1));
  if (isMap(node)) return blockValue(node, walk, depth);
  return refuse(walk, node, 'a part of YAML that is not a value, a list or a block');
}

function scalarValue(node: Scalar, walk: Walk): unknown {
  const { value } = node;
  if (typeof value === 'number' || typeof value === 'bigint') return node.source ?? String(value);
  if (typeof value === 'boolean' || value === null) return value;
  if (typeof value !== 'string') return refuse(walk, node, 'a value that is not text');
  if (CONTROL.test(value)) return refuse(walk, node, 'text with a control character in it');
  return value;
}

function blockValue(map: YAMLMap, walk: Walk, depth: number): unknown {
  const block: Record<string, unknown> = {};
  for (const pair of map.items) {
    const key = keyOf(pair, walk);
    if (key === undefined) continue;
    if (Object.hasOwn(block, key)) {
      const place = placeOfNode(walk.file, pair.key);
      walk.findings.push(finding('DUPLICATE_KEY', place, { received: `"${clip(key)}:" again` }));
      continue;
    }
    block[key] = valueOf(pair.value, walk, depth + 1);
  }
  return block;
}

function keyOf({ key }: Pair, walk: Walk): string | undefined {
  if (!isScalar(key)) return refuse(walk, key, 'a key that is not plain text');
  if (key.tag !== undefined) return refuse(walk, key, `the tag ${clip(key.tag)}`);
  if (key.anchor !== undefined) return refuse(walk, key, `the anchor &${clip(key.anchor)}`);
  if (typeof key.value !== 'string') {
    const written = key.source ? `the key ${clip(key.source)}, which is not text` : 'an empty key';
    return refuse(walk, key, written, 'Put the key in quotes, or correct it');
  }
  if (key.value === '<<' || key.value === '__proto__')
    return refuse(walk, key, `the key ${key.value}`);
  return key.value;
}

function refuse(walk: Walk, node: unknown, received: string, remedy?: string): undefined {
  const place = placeOfNode(walk.file, node);
  walk.findings.push(finding('YAML_NOT_ALLOWED', place, { received, ...(remedy && { remedy }) }));
  return undefined;
}

/** Where a node is written; the file alone for a node that is made up. */
function placeOfNode(file: string, node: unknown): Place {
  const range = rangeOf(node);
  return range ? { file, range } : { file };
}

/** The characters of a node, without what follows it on the line. */
export function rangeOf(node: unknown): readonly [number, number] | undefined {
  if (!isScalar(node) && !isMap(node) && !isSeq(node) && !isAlias(node)) return undefined;
  return node.range ? [node.range[0], node.range[1]] : undefined;
}
