import { clamp, sum } from '../maths/index.ts';

/**
 * Moves places along a line apart, keeping their order and staying as near as may be to where they were.
 *
 * @param step - least distance between two of them
 * @returns the new place of each, in the order given; within the ends as long as all of them fit between these
 * @source derived: neighbours that touch are held as one block at the mean of where its members want to be
 */
export function spread(
  wanted: readonly number[],
  step: number,
  from: number,
  to: number,
): readonly number[] {
  const order = wanted
    .map((_, index) => index)
    .toSorted((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const blocks: { readonly members: readonly number[]; readonly start: number }[] = [];
  const startOf = (members: readonly number[]): number => {
    const starts = members.map((member, index) => (wanted[member] ?? 0) - index * step);
    return clamp(sum(starts) / members.length, from, to - (members.length - 1) * step);
  };
  for (const member of order) {
    let block = { members: [member], start: startOf([member]) };
    let before = blocks.at(-1);
    while (before && before.start + before.members.length * step > block.start) {
      blocks.pop();
      const members = [...before.members, ...block.members];
      block = { members, start: startOf(members) };
      before = blocks.at(-1);
    }
    blocks.push(block);
  }
  const placed = new Map(
    blocks.flatMap(({ members, start }) =>
      members.map((member, index) => [member, start + index * step] as const),
    ),
  );
  return wanted.map((place, index) => placed.get(index) ?? place);
}
