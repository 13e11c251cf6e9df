import type { Figures } from '../figures/index.ts';
import { createFormatter, UNIT_KINDS } from '../units/index.ts';
import type { BuildSheetView } from './build-sheet-types.ts';
import { NO_BREAK } from './words.ts';

/** What the fitter sets by: the propeller's pitch, and where the winch post goes; nothing that is not computed. */
export function performanceFacts({ build, drive, tow }: Figures): BuildSheetView['facts'] {
  const format = createFormatter(build.yard.locale, build.yard.units);
  const { propeller } = drive;
  const { trailer } = tow;
  const inches = (pitch: number): string => format.number(pitch / UNIT_KINDS.length.in, 0);
  return [
    ...(propeller && !('notComputed' in propeller)
      ? [
          {
            label: 'Propeller',
            value: `pitch about ${inches(propeller.middle)}${NO_BREAK}in; estimated, trial to confirm`,
          },
        ]
      : []),
    ...(trailer && !('notComputed' in trailer.ball) && !('notComputed' in trailer.winchPost)
      ? [
          {
            label: 'Winch post',
            value: `${format.length(trailer.winchPost.at)} aft of the ball: ${format.mass(trailer.ball.onBall)} on it, estimated; weigh the coupling`,
          },
        ]
      : []),
  ];
}
