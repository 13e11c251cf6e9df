/** One value of ours held against one that somebody else published, or that is exact. */
export interface PublishedCase {
  readonly area: string;
  /** What is computed, in a sentence. */
  readonly name: string;
  /** Who published it and where: standard and clause, law and section, paper and equation. */
  readonly source: string;
  readonly published: number;
  readonly unit: string;
  /** Largest difference that still passes, in the unit. */
  readonly tolerance: number;
  readonly ours: () => number;
}

/** How near to whoever knows it a value was had, the nearest first. */
export const TIERS = [
  'first hand',
  'second hand',
  'from memory',
  'derived',
  'own order added again',
] as const;
export type Tier = (typeof TIERS)[number];

/** A case that has been computed. */
export interface Check {
  readonly tier: Tier;
  readonly area: string;
  readonly name: string;
  readonly source: string;
  readonly published: number;
  readonly ours: number;
  readonly unit: string;
  readonly error: number;
  readonly tolerance: number;
  readonly pass: boolean;
}
