/** A figure that could not be had, and why, in words for a person. */
export interface NotComputed {
  readonly notComputed: string;
}

/** A result, or why there is none. */
export type Computed<Result> = Result | NotComputed;
