import { expect, it } from 'vitest';
import { freeboards, lowestOf, lowestOpening } from '../../src/float/freeboard.ts';
import { felt, raisedByFreeSurface } from '../../src/float/free-surface.ts';
import { stateOf } from '../../src/float/floating-state.ts';
import { kilogramsPerCubicMetre, metres } from '../../src/units/index.ts';
import { at, box, loadAt, plane } from './boats.ts';

const BARGE = box(5, 2, 0.8);
const LOAD = loadAt(3075, 2.5, 0, 0.6);
const state = (trim: number, heel = 0) => stateOf(BARGE, LOAD, plane(0.3, trim, heel), [], 0);

it('freeboards are heights of bow, side and transom on the side that lies lower, named with it', () => {
  const { sine, cosine } = { sine: Math.sin(0.1), cosine: Math.cos(0.1) };
  // By the stern by 0.05 and to starboard by 0.1: a corner at (x, y, 0.8) stands x sin t + (0.8 cos h - y sin h) cos t.
  const over = (x: number) => x * Math.sin(0.05) + (0.8 * cosine - sine) * Math.cos(0.05) - 0.3;
  const told = (y: number) =>
    freeboards(BARGE.hull, plane(0.3, 0.05, 0.1), [{ name: 'hatch', at: at(2.5, y, 0.45) }]);
  const { bow, side, transom, lowest } = told(0);
  const near = (x: number) => expect.closeTo(over(x), 9);
  expect(bow).toEqual({ name: 'bow', side: 'starboard', freeboard: near(5) });
  expect(transom).toEqual({ name: 'transom corner', side: 'starboard', freeboard: near(0) });
  expect(side.name).toBe('sheer');
  expect(side.freeboard).toBeGreaterThan(transom.freeboard);
  expect(side.freeboard).toBeLessThan(bow.freeboard);
  expect([lowest.name, lowest.side]).toEqual(['hatch', 'centre']);
  expect([told(0.4), told(-0.4)].map((all) => all.lowest.side)).toEqual(['starboard', 'port']);
  expect(lowestOf(BARGE.hull, [], plane(0.3, -0.05, -0.1))).toMatchObject({
    name: 'bow',
    side: 'port',
  });
  expect(lowestOpening(plane(0.3), [])).toBeUndefined();
});

it('draughts are depths of the ends of the baseline, square to the water', () => {
  const { draughtAft, draughtFore } = state(0.05);
  expect(draughtAft).toBeCloseTo(0.3, 12);
  expect(draughtFore).toBeCloseTo(0.3 - 5 * Math.sin(0.05), 12);
});

it('what nobody aboard would notice is level and upright, beyond it the word says which way', () => {
  const degree = Math.PI / 180;
  const trims = [-0.3, -0.2, 0.2, 0.3].map((by) => state(by * degree).trims);
  expect(trims).toEqual(['by the bow', 'level', 'level', 'by the stern']);
  const leans = [-0.6, -0.4, 0.4, 0.6].map((by) => state(0, by * degree).leans);
  expect(leans).toEqual(['to port', 'upright', 'upright', 'to starboard']);
});

it('a free surface stands for a rise of all weight by its moment over the mass', () => {
  expect(raisedByFreeSurface(LOAD, 30.75).centre).toEqual({ ...LOAD.centre, z: metres(0.61) });
  const nothing = loadAt(0, 0, 0, 0);
  expect(raisedByFreeSurface(nothing, 30.75)).toEqual(nothing);
  const surface = {
    length: metres(1),
    breadth: metres(0.6),
    density: kilogramsPerCubicMetre(740),
    compartments: 2,
  };
  // Two of 0.3 m: 740 x 2 x 0.3^3 / 12.
  expect(felt({ ...LOAD, masses: [{ surface }, {}] }).centre.z).toBeCloseTo(0.6 + 3.33 / 3075, 12);
});
