import { type Plan, type PlanInput, planOrders } from '../plan/index.ts';
import { parseIsoDate } from '../units/index.ts';
import {
  GRAHAM_NINE,
  GRAHAM_SEVEN,
  type Instance,
  J301_1,
  JOHNSON,
  SIX_BY_SIX,
  TEN_ACTIVITIES,
} from './instances-table.ts';
import { casesIn, type Row } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const TRIES = 4000;

/** A published instance as one order in a shop that never rests: an hour for a period, a trade for a resource. */
export function asPlanInput(instance: Instance, tries: number): PlanInput | undefined {
  const origin = parseIsoDate('2026-01-05');
  if (origin === undefined) return undefined;
  const stages = instance.durations.map((hours, index) => ({
    id: String(index + 1),
    after: instance.precedences
      .filter(([, later]) => later === index + 1)
      .map(([earlier]) => String(earlier)),
    hours,
    passes: 'work' as const,
    crew: (instance.needs[index] ?? []).flatMap((people, resource) =>
      people > 0 ? [{ trade: String(resource + 1), people }] : [],
    ),
  }));
  return {
    calendar: {
      origin,
      workdays: [1, 2, 3, 4, 5, 6, 7],
      startsAt: 0,
      hoursADay: 24,
      holidays: [],
    },
    trades: Object.fromEntries(
      instance.capacities.map((capacity, resource) => [String(resource + 1), capacity]),
    ),
    orders: [{ number: 'instance', release: origin, stages }],
    tries,
  };
}

function makespan(instance: Instance, tries = TRIES): number {
  const input = asPlanInput(instance, tries);
  const plan = input && planOrders(input);
  return plan && 'orders' in plan && isFeasible(plan, instance)
    ? Math.max(...plan.orders.map(({ end }) => end))
    : Number.NaN;
}

/** Holds a plan against the instance itself, period by period, without the planner's own books. */
function isFeasible(plan: Plan, { durations, needs, capacities, precedences }: Instance): boolean {
  const planned = plan.orders.flatMap(({ stages }) => stages);
  const at = new Map(planned.map(({ stage, start, end }) => [Number(stage.id), { start, end }]));
  if (durations.some((_, index) => !at.has(index + 1))) return false;
  const inOrder = precedences.every(
    ([earlier, later]) => (at.get(earlier)?.end ?? 0) <= (at.get(later)?.start ?? -1) + 1e-9,
  );
  return (
    inOrder &&
    planned.every(({ start }) =>
      capacities.every((capacity, resource) => {
        const load = planned
          .filter((one) => one.start <= start && one.end > start)
          .reduce((sum, { stage }) => sum + (needs[Number(stage.id) - 1]?.[resource] ?? 0), 0);
        return load <= capacity;
      }),
    )
  );
}

const shortest = (name: string, periods: number, instance: Instance): Row => [
  `${name}: length`,
  periods,
  'periods',
  () => makespan(instance),
  0,
];

const plan = casesIn('plan');

/** Schedules of small published instances: feasible, or no number at all, and as short as the shortest known. */
export const PLAN_CASES: readonly PublishedCase[] = [
  ...plan(
    'Python-MIP documentation, example of resource constrained project scheduling, as printed',
    shortest('Ten activities on two resources', 21, TEN_ACTIVITIES),
  ),
  ...plan(
    'Johnson, Naval Research Logistics Quarterly 1 (1954), example (from memory; also by our own enumeration)',
    shortest('Five jobs through two machines', 47, JOHNSON),
  ),
  ...plan(
    'Graham, SIAM J. Appl. Math. 17 (1969), figures 1 and 2 (from memory; also by our own enumeration)',
    shortest('Nine tasks on three processors', 12, GRAHAM_NINE),
    shortest('Seven tasks on three processors, where longest first takes 11', 9, GRAHAM_SEVEN),
  ),
  ...plan(
    'Fisher and Thompson in Muth and Thompson (eds.), Industrial Scheduling (1963), "ft06", second hand',
    shortest('Six jobs through six machines', 55, SIX_BY_SIX),
  ),
  ...plan(
    'PSPLIB, instance j301_1, list of optima and MPM time, as printed',
    shortest('Thirty activities on four resources', 43, J301_1),
    shortest('The same with people enough, the longest chain', 38, {
      ...J301_1,
      capacities: [999, 999, 999, 999],
    }),
  ),
];
