import { rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type LoadedWorkspace, loadWorkspace } from '../../src/cli/load.ts';
import { moneyToText } from '../../src/money/index.ts';
import { ORDER, workspaceOf, YARD } from '../read/samples.ts';

let folder: string;
let before: LoadedWorkspace;

beforeEach(() => {
  folder = workspaceOf({
    'orders/t-1.yaml': ORDER,
    'orders/t-2.yaml': ORDER.replace('T-1', 'T-2'),
  });
  before = loadWorkspace(folder);
});
afterEach(() => rmSync(folder, { recursive: true }));

const save = (file: string, text: string) => writeFileSync(path.join(folder, file), text);
const prices = ({ orders }: LoadedWorkspace) =>
  orders.map(({ figures }) => figures && moneyToText(figures.price.driveAway));

it('computes again only the order whose file was saved', () => {
  save('orders/t-2.yaml', ORDER.replace('T-1', 'T-2').replace('people: 3', 'people: 2'));
  const after = loadWorkspace(folder, { earlier: before });
  expect(after.computed[0]).toBe(before.computed[0]);
  expect(after.computed[1]?.figures?.build.order.boat.people).toBe(2);
});

it('computes all again when the catalogue was saved, as a fresh start does', () => {
  save('catalogue/yard.yaml', YARD.replace('hull: 28%', 'hull: 40%'));
  const after = loadWorkspace(folder, { earlier: before });
  expect(prices(after)).toHaveLength(2);
  expect(prices(after)).not.toEqual(prices(before));
  expect(prices(after)).toEqual(prices(loadWorkspace(folder)));
});
