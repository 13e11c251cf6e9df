/** What a figure rests on, for the line that is printed beside it. */
export interface Basis {
  readonly method: string;
  readonly validity: string;
  readonly caution: string;
}
