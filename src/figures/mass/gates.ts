import { type StageMass, type WeighGate, weighGates } from '../../laminate/index.ts';
import { massOf, type MassResult, sumMass } from '../../mass/index.ts';
import type { Build, BuildItem } from '../../resolve/index.ts';
import { decimalToNumber, type Kilograms, kilograms } from '../../units/index.ts';

/** Stages after which the boat is weighed. */
const WEIGHED = ['release', 'fit-out', 'wiring', 'engine', 'trailer'] as const;
export type WeighedStage = (typeof WEIGHED)[number];

export type Gate = WeighGate & { readonly stage: WeighedStage };

/**
 * What each stage adds to the boat, the contingency spread over what is fitted after the mould.
 *
 * An item counts with the wiring when it is wired, else with the fit-out, what is rigged with the engine among it.
 *
 * @returns kg by stage: up to the engine they add up to the boat ready to launch, with the trailer to what stands on
 * the weighbridge; stages that add nothing are left out
 */
function stageMasses(
  { items, yard }: Build,
  { loadings }: MassResult,
): readonly (StageMass & { stage: WeighedStage })[] {
  const inBoat = items.filter(({ kind }) => kind !== 'outboard' && kind !== 'trailer');
  const contingency = sumMass(inBoat) * decimalToNumber(yard.massContingency);
  const later = sumMass(inBoat.filter(({ kind }) => kind !== 'shell'));
  // With nothing fitted to spread it over, the contingency is the fit-out's.
  const allowance = (stage: WeighedStage, fitted: number): number => {
    if (stage !== 'fit-out' && stage !== 'wiring') return 0;
    if (later > 0) return (contingency * fitted) / later;
    return stage === 'fit-out' ? contingency : 0;
  };
  return WEIGHED.flatMap((stage) => {
    const fitted = sumMass(items.filter((item) => weighedAfter(item) === stage));
    const withIt = stage === 'engine' ? massOf(loadings.ready, 'fuel', 'rigging') : 0;
    const mass = fitted + allowance(stage, fitted) + withIt;
    const spread = decimalToNumber(yard.workshop.weighSpread[stage]);
    return mass > 0 ? [{ stage, mass: kilograms(mass), spread }] : [];
  });
}

/** What the boat must weigh after each stage that adds to it. */
export function gateFigures(build: Build, mass: MassResult): readonly Gate[] {
  const stages = stageMasses(build, mass);
  return weighGates(stages, build.yard.workshop.scale).flatMap((gate, index) => {
    const stage = stages[index]?.stage;
    return stage ? [{ ...gate, stage }] : [];
  });
}

/** The gate of a stage with the mass that was weighed there last. */
export function weighedAt(
  { order }: Build,
  stage: WeighedStage,
): { readonly mass: Kilograms; readonly index: number } | undefined {
  const masses = order.record?.masses ?? [];
  const index = masses.findLastIndex((one) => one.stage === stage);
  const found = masses[index];
  return found && { mass: found.mass, index };
}

function weighedAfter({ kind, hours }: BuildItem): WeighedStage {
  if (kind === 'shell') return 'release';
  if (kind === 'outboard') return 'engine';
  if (kind === 'trailer') return 'trailer';
  const wired = hours.some(({ stage, hours: time }) => stage === 'wiring' && time.amount > 0n);
  return wired ? 'wiring' : 'fit-out';
}
