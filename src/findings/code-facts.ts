export type Severity = 'error' | 'warning' | 'note';

export interface CodeFacts {
  readonly severity: Severity;
  /** What a person is told happened. */
  readonly means: string;
  /** What mends it, when the finding itself has nothing more exact to say. */
  readonly mend: string;
}
