/**
 * How long floating takes, for every hull of the demonstration: median CPU time of many runs, after as many to warm
 * up. Beside each stands its ratio to a peer of the same run: the equilibrium, which all the others are made of.
 */
import { loadWorkspace } from '../../src/cli/load.ts';
import { ballastTank, hullLines, openingsOf } from '../../src/figures/float/input.ts';
import {
  buildHull,
  floatConditions,
  findEquilibrium,
  rightingCurve,
} from '../../src/float/index.ts';
import { weighBoat } from '../../src/mass/index.ts';
import { massInput } from '../../src/figures/mass/input.ts';
import { SEA_WATER_DENSITY } from '../../src/units/index.ts';

/** Milliseconds that each may take, as the design wants it. */
const WANTED = { equilibrium: 2, 'righting curve': 40, 'all conditions': 150 } as const;
const RUNS = 40;

function median(work: () => unknown): number {
  const times = Array.from({ length: 2 * RUNS }, () => {
    const begun = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(begun);
    return (user + system) / 1000;
  });
  return times.slice(RUNS).toSorted((a, b) => a - b)[RUNS / 2] ?? Number.NaN;
}

const { orders } = loadWorkspace(new URL('../../', import.meta.url).pathname);
const seen = new Set<string>();
for (const { figures } of orders) {
  const build = figures?.build;
  const { form } = build ? buildHull(hullLines(build)) : {};
  const body = form && { hull: form, flooded: [], water: SEA_WATER_DENSITY };
  if (!build || !body || seen.has(build.hull.id)) continue;
  seen.add(build.hull.id);
  const mass = weighBoat(massInput(build));
  const { space } = ballastTank(build, body) ?? {};
  const input = {
    body,
    openings: openingsOf(build),
    loadings: mass.loadings,
    ...(space && { ballast: space }),
  };
  const load = { mass: mass.ready.mass, centre: mass.ready.centre };
  const times = {
    equilibrium: median(() => findEquilibrium(body, load, input.openings)),
    'righting curve': median(() => rightingCurve(body, load, 'starboard', input.openings)),
    'all conditions': median(() => floatConditions(input)),
  };
  for (const [name, time] of Object.entries(times)) {
    const most = WANTED[name as keyof typeof WANTED];
    const ratio = (time / times.equilibrium).toFixed(1);
    console.log(
      `${build.hull.name}: ${name} ${time.toFixed(2)} ms (${ratio} equilibria); wanted: under ${most} ms: ${time < most ? 'yes' : 'NO'}`,
    );
  }
}
