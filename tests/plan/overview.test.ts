import { expect, it } from 'vitest';
import { figureOrders } from '../../src/figures/index.ts';
import { moneyToText } from '../../src/money/index.ts';
import { overviewOrders } from '../../src/plan/index.ts';
import { readWorkspace } from '../../src/read/index.ts';
import { parseIsoDate } from '../../src/units/index.ts';
import { ORDER, workspaceOf } from '../read/samples.ts';
import { rmSync } from 'node:fs';

function overview(orders: Readonly<Record<string, string>>, day: string) {
  const folder = workspaceOf({ 'orders/t-1.yaml': undefined, ...orders });
  const { catalogue, orders: read, brokenIds } = readWorkspace(folder);
  rmSync(folder, { recursive: true });
  const today = parseIsoDate(day);
  if (!catalogue || !today) throw new Error('the sample cannot be read');
  return overviewOrders(figureOrders(read, catalogue, brokenIds), 30, today);
}

const QUOTED = ORDER.replace('status: enquiry', 'status: quoted').replace(
  'enquiry: 2026-03-14',
  'enquiry: 2026-03-14\n  quoted: 2026-03-20',
);
const PROMISED = ORDER.replace('status: enquiry', 'status: accepted').replace(
  'enquiry: 2026-03-14',
  'enquiry: 2026-03-14\n  quoted: 2026-03-20\n  accepted: 2026-03-25\n  promised: 2026-06-30',
);

it('a quote is open on its last day and expired on the next', () => {
  const on = (day: string) => overview({ 'orders/q.yaml': QUOTED }, day).orders[0];
  expect(on('2026-04-19')).toMatchObject({
    expired: false,
    findings: [{ code: 'QUOTE_NOT_ISSUED' }],
  });
  expect(on('2026-04-20')).toMatchObject({
    expired: true,
    findings: [{ code: 'QUOTE_EXPIRED' }, { code: 'QUOTE_NOT_ISSUED' }],
  });
});

it('a boat is late on the day after the promised one', () => {
  const on = (day: string) => overview({ 'orders/p.yaml': PROMISED }, day).orders[0];
  expect(on('2026-06-30')).toMatchObject({ late: false, findings: [] });
  expect(on('2026-07-01')).toMatchObject({
    late: true,
    findings: [{ code: 'PROMISED_DATE_PASSED' }],
  });
});

it('adds up the orders of each status, and counts those without a price', () => {
  const { totals, orders } = overview(
    {
      'orders/a.yaml': ORDER,
      'orders/b.yaml': ORDER.replace('T-1', 'T-2'),
      'orders/c.yaml': ORDER.replace('T-1', 'T-3').replace('- seat', '- saet'),
      'orders/q.yaml': QUOTED.replace('T-1', 'T-4'),
    },
    '2026-03-21',
  );
  const each = orders.flatMap(({ entry }) =>
    entry.figures ? [Number(moneyToText(entry.figures.price.driveAway))] : [],
  );
  expect(totals.map(({ status, count }) => [status, count])).toEqual([
    ['enquiry', 3],
    ['quoted', 1],
  ]);
  const total = totals[0]?.driveAway;
  expect(total && Number(moneyToText(total))).toBeCloseTo((each[0] ?? 0) + (each[1] ?? 0), 6);
});
