import type { Figures } from '../../figures/index.ts';
import { decimalToNumber, type Formatter } from '../../units/index.ts';
import { methodLines } from '../sections/method-notes.ts';

/** What speed, fuel, propeller and bow motor were computed with in this order, and by which methods. */
export function speedNotes({ build, drive }: Figures, format: Formatter): readonly string[] {
  const { efficiency, water } = build.yard.drive;
  const share = (value: typeof efficiency.low): string => format.percent(decimalToNumber(value), 0);
  const { crouch, outboardDrag } = build.hull.performance;
  const drags = drive.drags.map(({ name, area, coefficient }) => {
    const size = area < 0.1 ? format.smallArea(area) : format.area(area);
    return `${name} (${size}, coefficient ${format.number(coefficient, 2)})`;
  });
  const leg = outboardDrag ? '' : ' The drag of the outboard’s leg is within that share.';
  return [
    `Light: ready to launch with one person. Loaded: with everybody ordered for and their gear. ${water === 'sea' ? 'Sea' : 'Fresh'} water.`,
    ...methodLines('planing'),
    `Beside the hull, the drag of ${drags.join(', ')}; ${share(efficiency.low)} to ${share(efficiency.high)} of the power moves the boat, ${share(efficiency.likely)} likely (common practice, no source).${leg}`,
    '* and what the table names: outside the method’s range, or on dry chines, where it is computed on the beam that is still wetted; a rough guess only. Hump: the greatest trim of any planing speed; a climb: the drag there is greater than at some higher speed.',
    ...methodLines('crouch'),
    `Crouch’s constant: ${format.number(drive.crouchConstant, 0)} (mph, hp, lb), of a ${crouch}.`,
    ...methodLines(
      'porpoising',
      'fuel',
      'propeller',
      ...(drive.bowMotor ? (['holding'] as const) : []),
    ),
    'Cruise is the speed that the order names, or seven tenths of full speed.',
  ];
}
