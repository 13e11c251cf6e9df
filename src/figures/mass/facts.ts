import { type Fact, factsOf } from '../facts/fact.ts';
import type { Figures } from '../types.ts';

const mass = factsOf('mass');
const READY = mass('customer', 'mass', 'ready', 'Mass, ready to launch', 'masses');
const COMPLETED = mass('customer', 'mass', 'completed', 'Mass, completed', 'masses');
const BARE_HULL = mass('workshop', 'mass', 'bare-hull', 'Mass of the bare hull', 'masses');
const CONTINGENCY = mass('workshop', 'mass', 'contingency', 'Contingency', 'masses');
const ON_TRAILER = mass('customer', 'mass', 'on-trailer', 'Mass on the trailer', 'masses');
const READY_ON_TRAILER = mass(
  'customer',
  'mass',
  'ready-on-trailer',
  'Mass, ready to launch, on its trailer',
  'masses',
);
const LOAD = mass('customer', 'mass', 'load', 'Load as ordered', 'masses');
const GROUP = mass('workshop', 'mass', 'group.*', 'Mass of a group', 'masses');
const CENTRE = factsOf('centre')('workshop', 'length', '*', '{Centre} of mass', 'masses');
const tow = factsOf('tow');
const TOWED = tow('customer', 'mass', 'total', 'Mass to tow', 'masses');
const LEFT = tow('customer', 'mass', 'left', 'Left of the trailer’s rating', 'masses');
const HOURS = factsOf('hours')('workshop', 'exact hours', '*', 'Hours of a stage', 'hours');
const gate = factsOf('gate');
const EXPECTED = gate('workshop', 'mass', '*.expected', 'Target mass', 'gate');
const TOLERANCE = gate('workshop', 'mass', '*.tolerance', 'Band of the target mass', 'gate');

export interface MassFacts {
  readonly ready: Fact<'customer'>;
  readonly completed: Fact<'customer'>;
  readonly load: Fact<'customer'>;
  readonly onTrailer: Fact<'customer', number>;
  /** With its trailer; where it has one. */
  readonly towed?: Fact<'customer'>;
  readonly towedLeft?: Fact<'customer'>;
  /** Ready to launch, on its trailer, as on a weighbridge. */
  readonly readyOnTrailer?: Fact<'customer'>;
  readonly others: readonly Fact[];
}

/** Masses and centres of the boat, and what it weighs on its trailer. */
export function massFacts({
  mass: all,
  trailerLoad,
  build: { trailer },
}: Pick<Figures, 'mass' | 'trailerLoad' | 'build'>): MassFacts {
  const [completed, contingency] = [COMPLETED(all.completed.mass), CONTINGENCY(all.contingency)];
  const ready = READY(all.ready.mass, { from: [completed.key] });
  const onTrailer = ON_TRAILER(all.onTrailer, { from: [ready.key] });
  const centres = { 'bare-hull': all.bareHull, completed: all.completed, ready: all.ready };
  return {
    ready,
    completed,
    load: LOAD(all.load),
    onTrailer,
    ...(trailerLoad && {
      towed: TOWED(trailerLoad.total, { from: [onTrailer.key] }),
      towedLeft: LEFT(trailerLoad.left, { from: [onTrailer.key] }),
    }),
    ...(trailer && {
      readyOnTrailer: READY_ON_TRAILER(all.ready.mass + trailer.tare, { from: [ready.key] }),
    }),
    others: [
      contingency,
      BARE_HULL(all.bareHull.mass),
      ...Object.entries(centres).flatMap(([name, { centre }]) =>
        (['x', 'y', 'z'] as const).map((axis) => CENTRE(centre[axis], { of: `${name}.${axis}` })),
      ),
      ...all.groups.map(({ group: of, mass: own }) => GROUP(own, { of })),
    ],
  };
}

/** Hours and target masses by stage. */
export function stageFacts({
  stageHours,
  gates,
}: Pick<Figures, 'stageHours' | 'gates'>): readonly Fact<'workshop'>[] {
  return [
    ...stageHours.map(({ stage: of, hours }) => HOURS(hours, { of })),
    ...gates.flatMap(({ stage: of, expected, tolerance }) => [
      EXPECTED(expected, { of }),
      TOLERANCE(tolerance, { of }),
    ]),
  ];
}
