import type { PublishedCase } from './types.ts';

type Computation = PublishedCase['ours'];

/** Makes the cases of one area, each with the tolerance that its source allows, in its unit. */
export const caseIn =
  (area: string) =>
  (
    name: string,
    source: string,
    published: number,
    unit: string,
    tolerance: number,
    ours: Computation,
  ): PublishedCase => ({ area, name, source, published, unit, tolerance, ours });

/** Makes the cases of an area whose values are exact but for the last digits of the machine. */
export const exactCaseIn = (area: string) => {
  const make = caseIn(area);
  return (
    name: string,
    source: string,
    published: number,
    unit: string,
    ours: Computation,
    tolerance = 1e-9,
  ): PublishedCase => make(name, source, published, unit, tolerance, ours);
};
