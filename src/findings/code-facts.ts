export type Severity = 'error' | 'warning' | 'note';

/** Who may read a finding or a fact, from the one who sees least: whoever comes later sees it too. */
export const AUDIENCES = ['customer', 'workshop', 'office'] as const;
export type Audience = (typeof AUDIENCES)[number];

/** How most findings give their figures to a customer. */
export const WITH_LIMIT = '{received}. Limit: {expected}';

/** A person could be hurt when a finding of safety is ignored; so it is always told to the customer, in plain words. */
export type CodeFacts = {
  readonly severity: Severity;
  /** The facts that it is about, by their names in figures.json, a star for what differs; left out: none. */
  readonly about?: readonly string[];
  /** What a person is told happened. */
  readonly means: string;
  /** What remedies it, when the finding itself has nothing more exact to say. */
  readonly remedy: string;
  /**
   * A quote with such a finding is not issued; unless allowed: or an order whose `allow:` names the code, with who
   * allows it and why.
   */
  readonly stopsIssue?: 'always' | 'unless allowed';
} & (
  | {
      readonly audience: 'customer';
      readonly safety?: true;
      /** What it means, for a customer. */
      readonly toCustomer: string;
      /** What the customer reads of the finding itself; left out where it is written for the shop alone. */
      readonly figures?: string;
    }
  | {
      readonly audience: 'workshop' | 'office';
      readonly safety?: never;
      readonly toCustomer?: never;
      readonly figures?: never;
    }
);
