import {
  type Computed,
  findHump,
  FOUR_STROKE,
  fuelFlow,
  fuelRange,
  runAt,
  type Running,
  type SpeedEstimate,
  THIRDS_RESERVE,
} from '../../performance/index.ts';
import { findSummit } from '../../maths/index.ts';
import type { Build } from '../../resolve/index.ts';
import type { Outboard } from '../../schema/index.ts';
import {
  dataMissing,
  decimalToNumber,
  type Metres,
  metresPerSecond,
  type MetresPerSecond,
} from '../../units/index.ts';

/** What it burns at a speed. */
export interface FuelUse {
  readonly name: 'cruise' | 'full throttle';
  readonly speed: Computed<MetresPerSecond>;
  /** m³/s. */
  readonly flow: Computed<number>;
  /** On the fuel that it is weighed with, less the reserve. */
  readonly range: Computed<Metres>;
}

/** Share of the fuel that is kept back. */
export const reserveOf = ({ yard }: { readonly yard: Pick<Build['yard'], 'drive'> }): number =>
  yard.drive.reserve === undefined ? THIRDS_RESERVE : decimalToNumber(yard.drive.reserve);

/** Fuel at cruise and at full throttle, loaded. */
export function fuelUse(
  build: Build,
  running: Computed<Running>,
  estimate: Computed<SpeedEstimate>,
): readonly FuelUse[] {
  const { order } = build;
  if ('notComputed' in running) return [];
  if ('notComputed' in estimate) {
    const cruise = order.cruise ?? estimate;
    return [
      useAt(build, 'cruise', cruise, loadAt(build, running, cruise)),
      useAt(build, 'full throttle', estimate, 1),
    ];
  }
  const full = estimate.speed.likely;
  const cruise = order.cruise ?? bestCruise(build, running, full);
  return [
    useAt(build, 'cruise', cruise, loadAt(build, running, cruise)),
    useAt(build, 'full throttle', full, 1),
  ];
}

/** Share of the rated power that a speed takes. */
function loadAt(
  { yard, outboard }: Build,
  running: Running,
  speed: Computed<MetresPerSecond>,
): Computed<number> {
  if (typeof speed === 'object') return speed;
  const state = runAt(running, speed);
  if ('notComputed' in state) return state;
  const rated = outboard?.model.power ?? 0;
  const load = state.effectivePower / decimalToNumber(yard.drive.efficiency.likely) / rated;
  return load <= 1 ? load : { notComputed: 'the speed takes more than the outboard has' };
}

/** The planing speed, past the greatest trim, at which a litre goes furthest. */
function bestCruise(
  build: Build,
  running: Running,
  full: MetresPerSecond,
): Computed<MetresPerSecond> {
  const { outboard } = build;
  const hump = findHump(running);
  if ('notComputed' in hump) return hump;
  const from = hump.state.speed;
  if (!outboard || from >= full) return full;
  const perFlow = (speed: number): number => {
    const load = loadAt(build, running, metresPerSecond(speed));
    const flow = typeof load === 'object' ? load : flowOf(build, outboard.model, load);
    return typeof flow === 'object' ? 0 : speed / flow;
  };
  return metresPerSecond(findSummit(perFlow, from, full, 0.02));
}

const flowOf = ({ yard }: Build, model: Outboard, load: number): Computed<number> =>
  fuelFlow(model.power, load, {
    ...FOUR_STROKE,
    consumption: decimalToNumber(model.consumption),
    density: yard.fuelDensity,
  });

function useAt(
  build: Build,
  name: FuelUse['name'],
  speed: Computed<MetresPerSecond>,
  load: Computed<number>,
): FuelUse {
  const { outboard, order, yard } = build;
  if (!outboard) return { name, speed, ...bothLack('no outboard is in this order') };
  if (typeof load === 'object') return { name, speed, ...bothLack(load.notComputed) };
  const flow = flowOf(build, outboard.model, load);
  const range = (): FuelUse['range'] => {
    if (typeof flow === 'object') return flow;
    if (typeof speed === 'object') return speed;
    if (!order.fuel)
      return dataMissing('the order does not say how much fuel the boat carries', 'fuel');
    return fuelRange(order.fuel, reserveOf({ yard }), speed, flow);
  };
  return { name, speed, flow, range: range() };
}

const bothLack = (notComputed: string) => ({ flow: { notComputed }, range: { notComputed } });
