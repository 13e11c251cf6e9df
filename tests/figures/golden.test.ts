import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { figuresData } from '../../src/figures/index.ts';
import { orders } from '../demonstration/workspace.ts';

const numbers = orders.map(({ order }) => order.value.number);

it('there is a golden file for every order of the demonstration, and no other', () => {
  const golden = readdirSync(new URL('golden/', import.meta.url));
  expect(golden.toSorted()).toEqual(numbers.map((number) => `${number}.json`).toSorted());
});

/** A figure a line, so that a difference shows each figure that changed, once. */
function oneALine(figures: Readonly<Record<string, unknown>>): string {
  const lines = Object.entries(figures).map(
    ([key, figure]) => `${JSON.stringify(key)}: ${JSON.stringify(figure)}`,
  );
  return `{\n${lines.join(',\n')}\n}\n`;
}

// After a change that is meant: npm test -- tests/figures --update, then read the difference before committing it.
it.each(numbers)('every figure of %s is what it was', async (number) => {
  const entry = orders.find(({ order }) => order.value.number === number);
  expect(entry?.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  if (!entry?.figures) throw new Error(`${number} has no figures`);
  const text = oneALine(figuresData(entry.figures));
  await expect(text).toMatchFileSnapshot(`golden/${number}.json`);
});
