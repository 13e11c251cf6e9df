import { rmSync } from 'node:fs';
import type { Finding } from '../../src/findings/index.ts';
import { describePlace } from '../../src/findings/index.ts';
import { readWorkspace } from '../../src/read/index.ts';
import { type Build, checkCatalogue, resolveOrder } from '../../src/resolve/index.ts';
import type { Catalogue } from '../../src/schema/index.ts';
import { type Files, workspaceOf } from '../read/samples.ts';

export interface ResolvedSample {
  readonly build: Build | undefined;
  readonly catalogue: Catalogue;
  /** Of the order. */
  readonly findings: readonly Finding[];
  readonly ofCatalogue: readonly Finding[];
  /** Code and place of every finding, of the order and of the catalogue. */
  readonly spots: readonly string[];
}

/** Reads the sample workspace with some files changed and resolves its first order. */
export function resolveSample(changes: Files = {}): ResolvedSample {
  const folder = workspaceOf(changes);
  try {
    const { catalogue, orders, brokenIds, sources, findings: ofFiles } = readWorkspace(folder);
    const [order] = orders;
    if (!catalogue || !order) throw new Error(ofFiles.map(({ code }) => code).join(', '));
    const { build, findings } = resolveOrder(order, catalogue, brokenIds);
    const ofCatalogue = checkCatalogue(catalogue, brokenIds);
    const spots = [...findings, ...ofCatalogue].map(
      ({ code, place }) => `${code} ${describePlace(place, sources.get(place.file))}`,
    );
    return { build, catalogue, findings, ofCatalogue, spots };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
