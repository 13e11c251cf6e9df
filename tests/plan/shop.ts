import fc from 'fast-check';
import type { Plan, PlanInput, PlannedStage, PlanOrder, PlanStage } from '../../src/plan/index.ts';
import { addDays, type IsoDate, weekdayOf } from '../../src/units/index.ts';

/** A Monday. */
export const ORIGIN = '2026-03-02' as IsoDate;
export const day = (number: number): IsoDate => addDays(ORIGIN, number);

export const CALENDAR: PlanInput['calendar'] = {
  origin: ORIGIN,
  workdays: [1, 2, 3, 4, 5],
  startsAt: 7,
  hoursADay: 8,
  // Easter: Good Friday and the Monday after.
  holidays: ['2026-04-03', '2026-04-06'] as IsoDate[],
};

export const stage = (id: string, hours: number, some: Partial<PlanStage> = {}): PlanStage => ({
  id,
  hours,
  after: [],
  passes: 'work',
  crew: [],
  ...some,
});

export const order = (
  number: string,
  stages: readonly PlanStage[],
  some: Partial<PlanOrder> = {},
): PlanOrder => ({ number, release: ORIGIN, stages, ...some });

export const shop = (orders: readonly PlanOrder[], some: Partial<PlanInput> = {}): PlanInput => ({
  calendar: CALENDAR,
  trades: { laminator: 2, fitter: 1 },
  orders,
  tries: 0,
  ...some,
});

const crewOf = (trade: string, most: number) =>
  fc.integer({ min: 1, max: most }).map((people) => [{ trade, people }]);

/** A boat: mould stages one after the other with a cure among them, then fitting with a part to wait for. */
const boat = fc
  .record({
    hull: fc.constantFrom('teal mould', 'dunlin mould'),
    gelcoat: fc.integer({ min: 0, max: 8 }),
    laminate: fc.integer({ min: 1, max: 30 }),
    infusion: fc.integer({ min: 1, max: 8 }),
    cure: fc.integer({ min: 0, max: 72 }),
    release: fc.integer({ min: 1, max: 6 }),
    fitOut: fc.integer({ min: 1, max: 50 }),
    wiring: fc.integer({ min: 1, max: 16 }),
    crew: crewOf('laminator', 2),
    arrives: fc.integer({ min: 0, max: 60 }),
  })
  .map((of): readonly PlanStage[] => [
    stage('gelcoat', of.gelcoat, { mould: of.hull, crew: of.crew, oneSitting: true }),
    stage('laminate', of.laminate, { mould: of.hull, crew: of.crew, after: ['gelcoat'] }),
    stage('infusion', of.infusion, {
      mould: of.hull,
      crew: [{ trade: 'laminator', people: 2 }],
      after: ['laminate'],
      oneSitting: true,
    }),
    stage('cure', of.cure, { mould: of.hull, passes: 'always', after: ['infusion'] }),
    stage('release', of.release, { mould: of.hull, crew: of.crew, after: ['cure'] }),
    stage('fit-out', of.fitOut, {
      crew: [{ trade: 'fitter', people: 1 }],
      after: ['release'],
      parts: [{ name: 'console', arrives: day(of.arrives) }],
    }),
    stage('wiring', of.wiring, { crew: [{ trade: 'fitter', people: 1 }], after: ['release'] }),
  ]);

/** One to five boats, some promised, the first perhaps in its mould already. */
export const anyShop: fc.Arbitrary<PlanInput> = fc
  .tuple(
    fc.array(
      fc.record({
        stages: boat,
        release: fc.integer({ min: -3, max: 20 }),
        promised: fc.option(fc.integer({ min: 5, max: 120 }), { nil: undefined }),
      }),
      { minLength: 1, maxLength: 5 },
    ),
    fc.boolean(),
    fc.integer({ min: 0, max: 12 }),
  )
  .map(([boats, begun, tries]) => {
    const orders = boats.map(({ stages, release, promised }, index) =>
      order(`26${index + 10}`, stages, {
        release: day(release),
        ...(promised !== undefined && { promised: day(promised) }),
        ...(begun && index === 0 && { inMoulds: stages[0]?.mould ? [stages[0].mould] : [] }),
      }),
    );
    return shop(orders, { tries });
  });

const worksAt = (hour: number): boolean => {
  const date = day(Math.floor(hour / 24));
  const ofDay = hour % 24;
  return weekdayOf(date) <= 5 && !CALENDAR.holidays.includes(date) && ofDay >= 7 && ofDay < 15;
};

/** Whatever is wrong with planned orders, in words; whole hours only. Built without the planner's own books. */
export function faultsOf(plan: Pick<Plan, 'orders'>, { trades }: PlanInput): readonly string[] {
  const all = plan.orders.flatMap(({ stages }) => stages);
  return [
    ...all.flatMap(stageFaults),
    ...plan.orders.flatMap(({ order: { number, release }, stages }) =>
      stages.flatMap(({ stage: { id, after }, start }) => [
        ...after.flatMap((before) => {
          const earlier = stages.find((one) => one.stage.id === before);
          return earlier && earlier.end <= start ? [] : [`${number} ${id} before ${before}`];
        }),
        ...(day(Math.floor(start / 24)) < release ? [`${number} ${id} before release`] : []),
      ]),
    ),
    ...Object.entries(trades).flatMap(([trade, people]) => overloads(all, trade, people)),
    ...sharedMoulds(plan),
  ];
}

function stageFaults({ order: number, stage: one, start, end }: PlannedStage): readonly string[] {
  const faults: string[] = [];
  const name = `${number} ${one.id}`;
  let worked = 0;
  for (let hour = start; hour < end; hour += 1) worked += worksAt(hour) ? 1 : 0;
  if (one.passes === 'work' && worked !== one.hours) faults.push(`${name} worked ${worked} h`);
  if (one.passes === 'always' && end - start !== one.hours) faults.push(`${name} cured short`);
  const sameDay = Math.floor(start / 24) === Math.floor((end - 1e-6) / 24);
  if (one.oneSitting === true && one.hours > 0 && !sameDay) faults.push(`${name} in two sittings`);
  for (const { name: part, arrives } of one.parts ?? []) {
    if (day(Math.floor(start / 24)) < arrives) faults.push(`${name} before its ${part}`);
  }
  return faults;
}

function overloads(all: readonly PlannedStage[], trade: string, most: number): readonly string[] {
  return all.flatMap(({ start }) => {
    const busy = all
      .filter((one) => one.start <= start && one.end > start)
      .flatMap(({ stage: { crew } }) => crew)
      .filter((one) => one.trade === trade)
      .reduce((sum, { people }) => sum + people, 0);
    return busy > most ? [`${busy} of ${trade} at ${start} h`] : [];
  });
}

function sharedMoulds({ orders }: Pick<Plan, 'orders'>): readonly string[] {
  const holds = orders.flatMap(({ order: { number, inMoulds }, stages }) => {
    const moulds = new Set(stages.flatMap(({ stage: { mould } }) => mould ?? []));
    return [...moulds].map((mould) => {
      const inside = stages.filter((one) => one.stage.mould === mould);
      const start = Math.min(...inside.map((one) => one.start));
      const begun = inMoulds?.includes(mould) === true;
      return {
        number,
        mould,
        start: begun ? 0 : start,
        end: Math.max(...inside.map((one) => one.end)),
      };
    });
  });
  return holds.flatMap((one, index) =>
    holds
      .slice(index + 1)
      .filter(
        (other) => other.mould === one.mould && other.start < one.end && other.end > one.start,
      )
      .map((other) => `${one.number} and ${other.number} both in the ${one.mould}`),
  );
}
