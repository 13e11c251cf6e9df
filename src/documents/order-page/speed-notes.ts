import type { Figures } from '../../figures/index.ts';
import { decimalToNumber, type Formatter } from '../../units/index.ts';

const BOW_MOTOR =
  'Bow motor: windage from the profile of the lines above the water, with a fifth more for outboard and canopy, and the people; gusts half as strong again; all from the same side (coefficients: common practice, no source). Estimated; verify by trial.';

/** Methods, sources, validity and cautions of speed, fuel, propeller and bow motor. */
export function speedNotes({ build, drive }: Figures, format: Formatter): readonly string[] {
  const { efficiency, water } = build.yard.drive;
  const share = (value: typeof efficiency.low): string => format.percent(decimalToNumber(value), 0);
  const { crouch } = build.hull.performance;
  const drags = drive.drags.map(({ name, area, coefficient }) => {
    const size = area < 0.1 ? format.smallArea(area) : format.area(area);
    return `${name} (${size}, coefficient ${format.number(coefficient, 2)})`;
  });
  const leg = build.hull.performance.outboardDrag
    ? ''
    : ' The drag of the outboard’s leg is within that share.';
  return [
    `Light: ready to launch with one person. Loaded: with everybody ordered for and their gear. ${water === 'sea' ? 'Sea' : 'Fresh'} water, calm, no wind, clean bottom.`,
    `Drag by Savitsky, Hydrodynamic Design of Planing Hulls, Marine Technology 1(1), 1964, and of ${drags.join(', ')}; ${share(efficiency.low)} to ${share(efficiency.high)} of the power moves the boat, ${share(efficiency.likely)} likely (common practice, no source).${leg} Verify by trial.`,
    'Range of the method: speed coefficient 0.60 to 13, trim 2° to 15°, at most 4 beams wetted. Below planing it is not computed. * and what the table names: outside of that, or on dry chines, where it is computed on the beam that is still wetted; a rough guess only. Hump: the greatest trim of any planing speed; a climb: the drag there is greater than at some higher speed.',
    `Crouch’s formula knows mass and power only; with ${format.number(drive.crouchConstant, 0)} (mph, hp, lb), the constant of a ${crouch}.`,
    'Porpoising by Celano’s regression, US Naval Academy, 1998 (from memory), with the outboard trimmed level; not computed outside its range, as for a lightly loaded hull. Verify by trial.',
    'Fuel from the engine’s consumption and its shape at part load (common practice, no source); cruise is the speed that the order names, or seven tenths of full speed. Verify by trial.',
    ...(drive.bowMotor ? [BOW_MOTOR] : []),
  ];
}
