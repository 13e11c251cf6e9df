import type { Instance } from '../../src/verify/instances-table.ts';

/** A load by period and resource that is added to and taken back. */
type Load = number[][];

/**
 * The shortest schedule of a small instance, by trying every sequence of its activities: an answer of our own that
 * knows nothing of the planner. Periods are whole; each activity starts at the earliest period that is left.
 */
export function shortestByEnumeration(instance: Instance): number {
  const { durations, needs, capacities, precedences } = instance;
  const count = durations.length;
  const horizon = durations.reduce((sum, one) => sum + one, 0);
  const load: Load = Array.from({ length: horizon }, () => capacities.map(() => 0));
  const ends: (number | undefined)[] = Array.from({ length: count });
  const before = durations.map((_, index) =>
    precedences.filter(([, later]) => later === index + 1).map(([earlier]) => earlier - 1),
  );
  const tails = tailsOf(instance);
  let best = horizon + 1;

  const fits = (activity: number, start: number): boolean => {
    for (let period = start; period < start + (durations[activity] ?? 0); period += 1) {
      const over = capacities.some(
        (most, r) => (load[period]?.[r] ?? 0) + (needs[activity]?.[r] ?? 0) > most,
      );
      if (over) return false;
    }
    return true;
  };
  const put = (activity: number, start: number, sign: number): void => {
    for (let period = start; period < start + (durations[activity] ?? 0); period += 1) {
      const row = load[period] ?? [];
      (needs[activity] ?? []).forEach((need, r) => {
        row[r] = (row[r] ?? 0) + sign * need;
      });
    }
  };
  const search = (placed: number, length: number): void => {
    if (placed === count) {
      best = Math.min(best, length);
      return;
    }
    for (let activity = 0; activity < count; activity += 1) {
      if (ends[activity] !== undefined) continue;
      const earlier = (before[activity] ?? []).map((one) => ends[one]);
      if (earlier.includes(undefined)) continue;
      let start = Math.max(0, ...earlier.map((end) => end ?? 0));
      while (!fits(activity, start)) start += 1;
      if (start + (tails[activity] ?? 0) >= best) continue;
      const end = start + (durations[activity] ?? 0);
      put(activity, start, 1);
      ends[activity] = end;
      search(placed + 1, Math.max(length, end));
      ends[activity] = undefined;
      put(activity, start, -1);
    }
  };
  search(0, 0);
  return best;
}

/** From the start of each activity to the end by its longest chain. */
function tailsOf({ durations, precedences }: Instance): readonly number[] {
  const tails = [...durations];
  for (let round = 0; round < durations.length; round += 1) {
    for (const [earlier, later] of precedences) {
      const through = (durations[earlier - 1] ?? 0) + (tails[later - 1] ?? 0);
      tails[earlier - 1] = Math.max(tails[earlier - 1] ?? 0, through);
    }
  }
  return tails;
}
