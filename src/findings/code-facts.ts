export type Severity = 'error' | 'warning' | 'note';

export interface CodeFacts {
  readonly severity: Severity;
  /** What a person is told happened. */
  readonly means: string;
  /** What mends it, when the finding itself has nothing more exact to say. */
  readonly mend: string;
  /**
   * A quote with such a finding is not issued; unless allowed: or an order whose `allow:` names the code, with who
   * allows it and why.
   */
  readonly stopsIssue?: 'always' | 'unless allowed';
}
