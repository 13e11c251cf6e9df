/** A published resource-constrained instance: activities numbered from 1, durations in periods. */
export interface Instance {
  readonly durations: readonly number[];
  /** Need of each activity, by resource; same order as `durations`. */
  readonly needs: readonly (readonly number[])[];
  readonly capacities: readonly number[];
  /** Pairs: the second may not start before the first is over. */
  readonly precedences: readonly (readonly [number, number])[];
}

/**
 * Ten activities on two resources; shortest schedule 21.
 *
 * Source: Python-MIP documentation, modelling examples, "Resource Constrained Project Scheduling" (read 2026-11-25).
 */
export const TEN_ACTIVITIES: Instance = {
  durations: [3, 2, 5, 4, 2, 3, 4, 2, 4, 6],
  needs: [
    [5, 1],
    [0, 4],
    [1, 4],
    [1, 3],
    [3, 2],
    [3, 1],
    [2, 4],
    [4, 0],
    [5, 2],
    [2, 5],
  ],
  capacities: [6, 8],
  precedences: [
    [1, 4],
    [1, 5],
    [2, 9],
    [2, 10],
    [3, 8],
    [4, 6],
    [4, 7],
    [5, 9],
    [5, 10],
    [6, 8],
    [6, 9],
    [7, 8],
  ],
};

/** Jobs through machines in a fixed sequence: each row of pairs machine, duration. */
function jobShop(rows: readonly (readonly number[])[], machines: number): Instance {
  const steps = rows.flatMap((row, job) =>
    Array.from({ length: row.length / 2 }, (_, step) => ({
      job,
      step,
      machine: row[2 * step] ?? 0,
      duration: row[2 * step + 1] ?? 0,
    })),
  );
  const numberOf = (job: number, step: number): number =>
    steps.findIndex((one) => one.job === job && one.step === step) + 1;
  return {
    durations: steps.map(({ duration }) => duration),
    needs: steps.map(({ machine }) =>
      Array.from({ length: machines }, (_, index) => (index === machine ? 1 : 0)),
    ),
    capacities: Array.from({ length: machines }, () => 1),
    precedences: steps
      .filter(({ step }) => step > 0)
      .map(({ job, step }) => [numberOf(job, step - 1), numberOf(job, step)] as const),
  };
}

/** Five jobs through two machines; shortest 47. Source: Johnson, Naval Research Logistics Quarterly 1 (1954), example. */
export const JOHNSON: Instance = jobShop(
  [
    [0, 4, 1, 5],
    [0, 4, 1, 1],
    [0, 30, 1, 4],
    [0, 6, 1, 30],
    [0, 2, 1, 3],
  ],
  2,
);

/** Six jobs through six machines; shortest 55. Source: Fisher and Thompson in Industrial Scheduling (1963), "ft06", second hand. */
export const SIX_BY_SIX: Instance = jobShop(
  [
    [2, 1, 0, 3, 1, 6, 3, 7, 5, 3, 4, 6],
    [1, 8, 2, 5, 4, 10, 5, 10, 0, 10, 3, 4],
    [2, 5, 3, 4, 5, 8, 0, 9, 1, 1, 4, 7],
    [1, 5, 0, 5, 2, 5, 3, 3, 4, 8, 5, 9],
    [2, 9, 1, 3, 4, 5, 5, 4, 0, 3, 3, 1],
    [1, 3, 3, 3, 5, 9, 0, 10, 4, 4, 2, 1],
  ],
  6,
);

const alike = (durations: readonly number[], machines: number): Omit<Instance, 'precedences'> => ({
  durations,
  needs: durations.map(() => [1]),
  capacities: [machines],
});

/** Nine tasks on three processors; shortest 12. Source: Graham, SIAM J. Appl. Math. 17 (1969), figures 1 and 2. */
export const GRAHAM_NINE: Instance = {
  ...alike([3, 2, 2, 2, 4, 4, 4, 4, 9], 3),
  precedences: [
    [1, 9],
    [4, 5],
    [4, 6],
    [4, 7],
    [4, 8],
  ],
};

/** The worst case of longest first on three processors: it takes 11, the shortest is 9. Source: Graham (1969), as above. */
export const GRAHAM_SEVEN: Instance = { ...alike([5, 5, 4, 4, 3, 3, 3], 3), precedences: [] };

const J301_1_SUCCESSORS: readonly (readonly number[])[] = [
  [5, 10, 14],
  [6, 7, 12],
  [4, 8, 9],
  [19],
  [29],
  [26],
  [11, 18, 26],
  [13],
  [15, 24],
  [19, 25],
  [13],
  [16, 17],
  [16],
  [24],
  [20, 21],
  [21],
  [19, 21],
  [23, 28],
  [22, 24],
  [27],
  [22],
  [23],
  [29],
  [29],
  [30],
  [27],
  [30],
];

/**
 * Thirty activities on four resources; shortest 43, and 38 when the resources do not bind.
 *
 * Source: PSPLIB, Kolisch and Sprecher, European Journal of Operational Research 96 (1997), instance j301_1 and its
 * list of optima. The activities are numbered without the dummy at the start: ours is theirs less 1.
 */
export const J301_1: Instance = {
  durations: [
    8, 4, 6, 3, 8, 5, 9, 2, 7, 9, 2, 6, 3, 9, 10, 6, 5, 3, 7, 2, 7, 2, 3, 3, 7, 8, 3, 7, 2, 2,
  ],
  needs: [
    [4, 0, 0, 0],
    [10, 0, 0, 0],
    [0, 0, 0, 3],
    [3, 0, 0, 0],
    [0, 0, 0, 8],
    [4, 0, 0, 0],
    [0, 1, 0, 0],
    [6, 0, 0, 0],
    [0, 0, 0, 1],
    [0, 5, 0, 0],
    [0, 7, 0, 0],
    [4, 0, 0, 0],
    [0, 8, 0, 0],
    [3, 0, 0, 0],
    [0, 0, 0, 5],
    [0, 0, 0, 8],
    [0, 0, 0, 7],
    [0, 1, 0, 0],
    [0, 10, 0, 0],
    [0, 0, 0, 6],
    [2, 0, 0, 0],
    [3, 0, 0, 0],
    [0, 9, 0, 0],
    [4, 0, 0, 0],
    [0, 0, 4, 0],
    [0, 0, 0, 7],
    [0, 8, 0, 0],
    [0, 7, 0, 0],
    [0, 7, 0, 0],
    [0, 0, 2, 0],
  ],
  capacities: [12, 13, 4, 12],
  precedences: J301_1_SUCCESSORS.flatMap((successors, index) =>
    successors.map((after) => [index + 1, after] as const),
  ),
};
