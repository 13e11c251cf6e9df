/** √(CL/2) of each column of the table below. */
export const LOADINGS = [0.13, 0.15, 0.2, 0.25, 0.3, 0.35] as const;

/** Trim in degrees above which a hull porpoises, by deadrise in degrees, one value for each of the loadings. */
export const PORPOISING_TRIMS: readonly (readonly [deadrise: number, trims: readonly number[]])[] =
  [
    [0, [1.1, 1.7, 3.8, 6.4, 9.3, 12.1]],
    [10, [2.7, 3.2, 5, 7.2, 9.8, 12.2]],
    [20, [3.4, 4, 5.8, 8, 10.5, 13.1]],
  ];
