import type { WorkCalendar } from './calendar.ts';
import type { PlanInput, PlanOrder, PlanStage } from './types.ts';

/** The longest that one stage may take, hours: a slip of the pen must not keep the planner busy for ever. */
const LONGEST_STAGE = 20_000;

/**
 * Stages in an order that respects their predecessors, the one with the longest way to the end first.
 *
 * @returns stages; shorter than the order's when some wait for each other in a circle
 */
export function criticalPathFirst({ stages }: PlanOrder): readonly PlanStage[] {
  const tails = tailsOf(stages);
  const tail = (stage: PlanStage): number => tails.get(stage.id) ?? 0;
  const sequence: PlanStage[] = [];
  const placed = new Set<string>();
  let left = [...stages];
  for (;;) {
    const free = left.filter(({ after }) => after.every((id) => placed.has(id)));
    const [first] = free.toSorted((a, b) => tail(b) - tail(a));
    if (!first) return sequence;
    sequence.push(first);
    placed.add(first.id);
    left = left.filter((stage) => stage !== first);
  }
}

/** Hours from the start of each stage to the end of the order by its longest way, people and moulds left aside. */
function tailsOf(stages: readonly PlanStage[]): ReadonlyMap<string, number> {
  const tails = new Map(stages.map(({ id, hours }) => [id, hours]));
  for (let round = 0; round < stages.length; round += 1) {
    let changed = false;
    for (const { id, after } of stages) {
      for (const before of after) {
        const through =
          (stages.find((one) => one.id === before)?.hours ?? 0) + (tails.get(id) ?? 0);
        if (through <= (tails.get(before) ?? 0)) continue;
        tails.set(before, through);
        changed = true;
      }
    }
    if (!changed) break;
  }
  return tails;
}

/** Why an order cannot be planned at all; undefined when it can. */
export function whyRefused(
  order: PlanOrder,
  trades: PlanInput['trades'],
  calendar: WorkCalendar,
): string | undefined {
  const ids = order.stages.map(({ id }) => id);
  const twice = ids.find((id, index) => ids.indexOf(id) !== index);
  if (twice !== undefined) return `the stage ${twice} stands twice`;
  for (const stage of order.stages) {
    const reason = whyStageRefused(stage, ids, trades, calendar);
    if (reason !== undefined) return `${stage.id}: ${reason}`;
  }
  const moulds = new Set(order.stages.map(({ mould }) => mould));
  const idle = order.inMoulds?.find((mould) => !moulds.has(mould));
  if (idle !== undefined) return `it is in the {mould} ${idle}, and no stage takes it out`;
  return criticalPathFirst(order).length < ids.length
    ? 'some stages wait for each other in a circle'
    : undefined;
}

function whyStageRefused(
  { after, hours, crew, oneSitting, passes }: PlanStage,
  ids: readonly string[],
  trades: PlanInput['trades'],
  calendar: WorkCalendar,
): string | undefined {
  const unknown = after.find((id) => !ids.includes(id));
  if (unknown !== undefined) return `waits for ${unknown}, which is not a stage of the order`;
  if (!(hours >= 0 && hours <= LONGEST_STAGE)) return 'its hours are no number of hours';
  const short = crew.find(({ trade, people }) => !(people >= 0 && people <= (trades[trade] ?? 0)));
  if (short) {
    return `needs ${short.people} of ${short.trade}, and there are ${trades[short.trade] ?? 0}`;
  }
  return oneSitting === true && passes === 'work' && hours > calendar.hoursADay
    ? 'is longer than a day and must be done in one'
    : undefined;
}
