/** How many people of one trade are taken, as steps over time: `taken[i]` holds from `times[i]` on. */
export interface LoadProfile {
  readonly times: number[];
  readonly taken: number[];
}

/** Nobody is taken, at any time. */
export function emptyProfile(): LoadProfile {
  return { times: [Number.NEGATIVE_INFINITY], taken: [0] };
}

/** Takes people from one moment to another; a negative number gives them back. */
export function take(profile: LoadProfile, from: number, to: number, people: number): void {
  if (!(to > from)) return;
  const first = stepAt(profile, from);
  const last = stepAt(profile, to);
  for (let step = first; step < last; step += 1) {
    profile.taken[step] = (profile.taken[step] ?? 0) + people;
  }
}

/**
 * The end of the first step between two moments in which more people are taken than may be.
 *
 * @returns undefined when there is no such step: so many more people are free the whole time
 */
export function endOfConflict(
  { times, taken }: LoadProfile,
  from: number,
  to: number,
  most: number,
): number | undefined {
  for (let step = stepBefore(times, from); step < times.length; step += 1) {
    if ((times[step] ?? 0) >= to) return undefined;
    if ((taken[step] ?? 0) > most) return times[step + 1];
  }
  return undefined;
}

/** The number of the step that starts at a moment; the step is cut there when none does. */
function stepAt(profile: LoadProfile, time: number): number {
  const step = stepBefore(profile.times, time);
  if (profile.times[step] === time) return step;
  profile.times.splice(step + 1, 0, time);
  profile.taken.splice(step + 1, 0, profile.taken[step] ?? 0);
  return step + 1;
}

/** The last step that starts at or before a moment. */
function stepBefore(times: readonly number[], time: number): number {
  let low = 0;
  let high = times.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((times[middle] ?? 0) <= time) low = middle;
    else high = middle - 1;
  }
  return low;
}
