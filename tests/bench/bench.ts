/**
 * How long the slow computations take: `npm run bench`. Times are medians on this machine, printed beside the target.
 * A machine that is busy is slow at everything, so each is also printed as a multiple of a floor that is timed in
 * between: a million steps of arithmetic.
 */
import { fileURLToPath } from 'node:url';
import { loadWorkspace } from '../../src/cli/load.ts';
import { conditionsInput, floatingHull, openingsOf } from '../../src/figures/float-input.ts';
import { floatFigures } from '../../src/figures/float-figures.ts';
import { findEquilibrium, floatConditions, rightingCurve } from '../../src/float/index.ts';

const { orders } = loadWorkspace(fileURLToPath(new URL('../../', import.meta.url)));

interface Row {
  readonly what: string;
  readonly median: number;
  readonly floors: number;
  /** Milliseconds. */
  readonly target?: number;
}

const WARM = 5;
const TIMED = 25;

function floor(): number {
  let sum = 0;
  for (let step = 1; step <= 1_000_000; step++) sum += Math.sqrt(step) / step;
  return sum;
}

function elapsed(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

const medianOf = (times: readonly number[]): number =>
  times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;

/** Medians of a computation and of the floor, timed by turns. */
function time(what: string, run: () => unknown, target?: number): Row {
  for (let count = 0; count < WARM; count++) run();
  const pairs = Array.from({ length: TIMED }, () => [elapsed(run), elapsed(floor)] as const);
  const median = medianOf(pairs.map(([own]) => own));
  const floors = median / medianOf(pairs.map(([, base]) => base));
  return { what, median, floors, ...(target !== undefined && { target }) };
}

function rowsOf(number: string): readonly Row[] {
  const figures = orders.find(({ order }) => order.value.number === number)?.figures;
  if (!figures) throw new Error(`${number} has no figures`);
  const { build, mass } = figures;
  const { body } = floatingHull(build);
  if (!body) throw new Error(`${number} has no form`);
  const input = conditionsInput(build, mass, body, undefined);
  const full = floatConditions(input).find(({ name }) => name === 'fully loaded');
  if (!full) throw new Error('every order is fully loaded once');
  const openings = openingsOf(build);
  return [
    time(`${number} one equilibrium`, () => findEquilibrium(body, full.load, openings), 2),
    time(
      `${number} one curve of righting arms`,
      () => {
        rightingCurve(body, full.load, 'starboard', openings);
      },
      40,
    ),
    time(`${number} all conditions`, () => floatConditions(input), 150),
    time(`${number} everything afloat`, () => floatFigures(build, mass)),
  ];
}

const rows = ['DC-2603', 'DC-2607', 'DC-2608'].flatMap(rowsOf);
for (const { what, median, floors, target } of rows) {
  const aim =
    target === undefined ? '' : `target ${target} ms: ${median <= target ? 'met' : 'MISSED'}`;
  console.log(
    `${what.padEnd(40)}${median.toFixed(2).padStart(8)} ms ${floors.toFixed(2).padStart(8)} floors  ${aim}`,
  );
}
