import { type Finding, finding } from '../../findings/index.ts';
import { formatterOf } from '../../units/index.ts';
import type { DriveLoading } from './speed.ts';
import type { Figures } from '../types.ts';

/** The room computes these on the wetted beam, so that the answer stands. */
const ANSWERED = 'chines dry';

type Checked = Pick<Figures, 'build' | 'drive'>;

/** Speeds that are not reached, not trusted or not steady, and a bow motor that is too weak. */
export function checkDrive(figures: Checked): readonly Finding[] {
  const { drive } = figures;
  const loadings = drive.loadings.filter(({ applies }) => applies);
  return [
    ...loadings.flatMap((one) => [
      ...doesNotPlane(figures, one),
      ...mayPorpoise(figures, one),
      ...methodsDiffer(figures, one),
      ...outsideRange(figures, one),
    ]),
    ...bowMotorWeak(figures),
  ];
}

const model = ({ build }: Checked) => build.place(['outboard', 'model']);

function doesNotPlane(
  figures: Checked,
  { name, loading, speed, slow }: DriveLoading,
): readonly Finding[] {
  const { build } = figures;
  if (!build.outboard || name !== 'loaded' || !('notComputed' in speed)) return [];
  const format = formatterOf(build.yard);
  return [
    finding('DOES_NOT_PLANE', model(figures), {
      received: `${format.power(build.outboard.model.power)} at ${format.mass(loading.mass)}${'notComputed' in slow ? '' : `: about ${format.speed(slow.speed.likely)}`}`,
      expected: 'a planing speed',
    }),
  ];
}

function mayPorpoise(
  figures: Checked,
  { name, speed, porpoisingAbove }: DriveLoading,
): readonly Finding[] {
  if ('notComputed' in speed || typeof porpoisingAbove === 'object') return [];
  const { trim } = speed.state;
  if (trim <= porpoisingAbove) return [];
  const format = formatterOf(figures.build.yard);
  return [
    finding('MAY_PORPOISE', model(figures), {
      received: `${name}: runs at ${format.angle(trim)}`,
      expected: `at most ${format.angle(porpoisingAbove)}`,
    }),
  ];
}

function methodsDiffer(figures: Checked, { name, speed }: DriveLoading): readonly Finding[] {
  if ('notComputed' in speed || speed.agree) return [];
  const format = formatterOf(figures.build.yard);
  return [
    finding('SPEED_METHODS_DIFFER', model(figures), {
      received: `${name}: ${format.speed(speed.speed.likely)} by Savitsky’s method, ${format.speed(speed.crouch)} by Crouch’s formula`,
      expected: 'within a fifth of each other',
    }),
  ];
}

function outsideRange(figures: Checked, { name, speed }: DriveLoading): readonly Finding[] {
  if ('notComputed' in speed) return [];
  const outside = speed.state.outside.filter((words) => !words.startsWith(ANSWERED));
  if (outside.length === 0) return [];
  return [
    finding('OUTSIDE_METHOD_RANGE', model(figures), {
      received: `${name}: ${outside.join('; ')}`,
    }),
  ];
}

function bowMotorWeak({ build, drive }: Checked): readonly Finding[] {
  const motor = drive.bowMotor;
  if (!motor || 'notComputed' in motor.needed) return [];
  const { needed } = motor.needed;
  if (needed <= motor.thrust) return [];
  const format = formatterOf(build.yard);
  return [
    finding('BOW_MOTOR_WEAK', motor.place, {
      received: format.force(motor.thrust),
      expected: format.force(needed),
    }),
  ];
}
