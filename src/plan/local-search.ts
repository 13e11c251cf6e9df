import type { WorkCalendar } from './calendar.ts';
import { type Placement, type Schedule, scheduleInSequence } from './schedule.ts';
import type { PlanInput, PlanStage } from './types.ts';

interface Found {
  readonly placements: readonly Placement[];
  readonly schedule: Schedule;
  readonly tries: number;
}

/**
 * Tries other sequences of orders and of stages and keeps the best schedule: fewest shut out, then fewest days late
 * in all, then the earliest last finish, then the earliest finishes in all.
 *
 * Each try moves one order, or one stage of one order, to another place; a schedule that is no worse replaces the one
 * before, so that the search can walk along a plateau. It draws its moves from a fixed sequence of numbers: the same
 * orders give the same plan.
 *
 * @param fixed - how many orders at the front keep their place
 * @param tries - how many schedules are tried, no more
 */
export function localSearch(
  start: readonly Placement[],
  calendar: WorkCalendar,
  trades: PlanInput['trades'],
  fixed: number,
  tries: number,
): Found {
  let best = start;
  let schedule = scheduleInSequence(best, calendar, trades);
  let score = scoreOf(schedule);
  const draw = numbersFrom(1);
  let tried = 0;
  for (let round = 0; round < tries; round += 1) {
    const candidate = moveOne(best, fixed, draw);
    if (!candidate) continue;
    tried += 1;
    const next = scheduleInSequence(candidate, calendar, trades);
    const nextScore = scoreOf(next);
    if (isWorse(nextScore, score)) continue;
    best = candidate;
    schedule = next;
    score = nextScore;
  }
  return { placements: best, schedule, tries: tried };
}

type Draw = (below: number) => number;

/**
 * Whole numbers in a fixed sequence, each below a limit.
 *
 * @source Park and Miller, Communications of the ACM 31 (1988): x = 48271 x mod (2^31 - 1)
 */
function numbersFrom(seed: number): Draw {
  let state = seed;
  return (below) => {
    state = (state * 48_271) % 2_147_483_647;
    return Math.floor((state / 2_147_483_647) * below);
  };
}

/** The placements with one order or one stage elsewhere; undefined when the move drawn is none, or is not allowed. */
function moveOne(
  placements: readonly Placement[],
  fixed: number,
  draw: Draw,
): readonly Placement[] | undefined {
  const movable = placements.length - fixed;
  if (movable > 1 && draw(2) === 0) {
    return moved(placements, fixed + draw(movable), fixed + draw(movable));
  }
  const which = draw(placements.length);
  const placement = placements[which];
  if (!placement) return undefined;
  const { stages } = placement;
  const next = moved(stages, draw(stages.length), draw(stages.length));
  if (!next || !respectsPredecessors(next)) return undefined;
  return placements.map((one, index) => (index === which ? { ...one, stages: next } : one));
}

function moved<T>(list: readonly T[], from: number, to: number): readonly T[] | undefined {
  const item = list[from];
  if (from === to || item === undefined) return undefined;
  const rest = list.toSpliced(from, 1);
  return rest.toSpliced(to, 0, item);
}

function respectsPredecessors(stages: readonly PlanStage[]): boolean {
  const placed = new Set<string>();
  return stages.every(({ id, after }) => {
    placed.add(id);
    return after.every((before) => placed.has(before));
  });
}

type Score = readonly number[];

function scoreOf({ orders, shutOut }: Schedule): Score {
  return [
    shutOut.length,
    orders.reduce((sum, { daysLate = 0 }) => sum + Math.max(0, daysLate), 0),
    orders.reduce((last, { end }) => Math.max(last, end), 0),
    orders.reduce((sum, { end }) => sum + end, 0),
  ];
}

function isWorse(score: Score, than: Score): boolean {
  const differs = score.findIndex((value, index) => value !== than[index]);
  return differs >= 0 && (score[differs] ?? 0) > (than[differs] ?? 0);
}
