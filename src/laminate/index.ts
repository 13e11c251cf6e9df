export {
  type CutList,
  cutList,
  type CutRow,
  type Piece,
  type Roll,
  type Strip,
} from './cut-list.ts';
export {
  fillTime,
  type Flow,
  type InfusionInput,
  type InfusionPlan,
  type LeakDown,
  planInfusion,
  radialFillTime,
  reachIn,
} from './infusion.ts';
export {
  bagConsumables,
  type BagInput,
  coreSheets,
  type KitNeed,
  materialsOf,
  type OrderLine,
  type Supply,
  toOrder,
} from './kit.ts';
export {
  combinedFibreFraction,
  fibreByVolume,
  GLASS_DENSITY,
  layerThickness,
  RESIN_DENSITY,
  resinPerArea,
} from './layer.ts';
export {
  type CatalystRange,
  MIXING_CAUTIONS,
  type MixingInput,
  type MixingRow,
  mixingTable,
  type MixingTable,
} from './mixing.ts';
export { layUpOf, weighLaminate } from './panel.ts';
export { type PlateFactors, plateFactors } from './plate.ts';
export { glassProperties, type GlassProperties } from './properties.ts';
export {
  bottomPressure,
  type BottomPanel,
  type BottomPressure,
  type DesignCategory,
  type PlaningBoat,
  screenBottom,
  type Screening,
  type ScreeningRow,
} from './screening.ts';
export {
  type Ply,
  type Section,
  sectionOf,
  stiffnessOf,
  thinSkinStiffness,
  wrinklingStress,
} from './section.ts';
export { flatArea } from './flat.ts';
export { stripArea, transomArea } from './surface.ts';
export { atTemperature, type DataPoint } from './temperature.ts';
export type {
  CoreLayer,
  FabricLayer,
  GelcoatLayer,
  LaminateMass,
  Layer,
  LayUp,
  NotComputed,
  Panel,
  PanelMass,
  ReadyLayer,
} from './types.ts';
export {
  judgeWeighing,
  type StageMass,
  type WeighGate,
  weighGates,
  type Weighing,
} from './weigh-gate.ts';
