import { z } from 'zod';

/** Lists of the catalogue whose names other files point at. */
export type NameList =
  | 'hulls'
  | 'options'
  | 'outboards'
  | 'trailers'
  | 'charges'
  | 'parts'
  | 'marginClasses'
  | 'wastageClasses'
  | 'packages';

/** What a field takes, where its schema cannot tell. */
export interface FieldFacts {
  /** In a word or two: "mass", "percentage". */
  readonly kind: string;
  /** The end of its description: what a bare number means. */
  readonly note?: string;
  /** "at least 0 kg and at most 3000 kg"; may be the end of the description too. */
  readonly range?: string;
  /** The list that it must be in, for an editor to complete. */
  readonly from?: NameList;
}

export const fieldFacts = z.registry<FieldFacts>();
