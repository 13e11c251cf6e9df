export { type ArrangementInput, drawArrangement, drawProfile } from './arrangement.ts';
export { type BodyPlanInput, drawBodyPlan } from './body-plan.ts';
export { type CapacityPlateInput, drawCapacityPlate, type PlateFact } from './capacity-plate.ts';
export type { CrossWater } from './cross-waters.ts';
export { drawMassBars, type MassBar, type MassBarsInput } from './mass-bars.ts';
export { drawOnTrailer, type OnTrailerInput } from './on-trailer.ts';
export { drawPlacing, type PlacingInput } from './placing.ts';
export { drawPlacingSide } from './placing-side.ts';
export {
  drawPowerCurve,
  type PowerCurveInput,
  type PowerLine,
  type SpeedAndPower,
} from './power-curve.ts';
export { drawRighting, type RightingInput, type RightingMark } from './righting.ts';
export {
  drawPlanChart,
  type PlanBar,
  type PlanChartInput,
  type PlanGroup,
  type PlanLane,
} from './plan-chart.ts';
export { escapeXml, toDataUri } from './svg.ts';
export { type DrawnWater, drawWaterlines, type WaterlinesInput } from './waterlines.ts';
export type { Drawing, DrawnItem, HullShape, OutboardShape, Place, Station } from './types.ts';
export { drawOneLine, type OneLineInput, type OneLineRow } from './one-line.ts';
export {
  drawPanelStrip,
  PANEL_LABEL,
  type PanelLabel,
  type PanelStripInput,
} from './panel-strip.ts';
