import type { Figures } from '../../figures/index.ts';
import { formatterOf, NO_BREAK, UNIT_KINDS } from '../../units/index.ts';
import type { BuildSheetView } from './types.ts';
import { brakeWords } from '../sections/brake-words.ts';
import { bandText } from '../sections/words.ts';

type Facts = BuildSheetView['facts'];

/** What the fitter sets by, and what the trial is held against; nothing that is not computed. */
export function performanceFacts(figures: Figures): Facts {
  return [
    ...transomFact(figures),
    ...propellerFact(figures),
    ...trialFact(figures),
    ...bowFact(figures),
    ...plateFact(figures),
    ...trailerFacts(figures),
  ];
}

function transomFact({ build, limits }: Figures): Facts {
  if (!limits.engine || !build.outboard) return [];
  const format = formatterOf(build.yard);
  const { ratings, dimensions } = build.hull;
  const faults = limits.engine.fit.faults.map((fault) => `; ${fault}`).join('');
  return [
    {
      label: 'On the transom',
      value: `${format.mass(build.outboard.mass)} of ${format.mass(ratings.engineMass)} by the shop’s rating; ${build.outboard.shaft} shaft on ${format.dimension(dimensions.transomHeight)}${faults}`,
    },
  ];
}

function propellerFact({ build, drive }: Figures): Facts {
  const { propeller } = drive;
  if (!propeller || 'notComputed' in propeller || !build.outboard) return [];
  const format = formatterOf(build.yard);
  const [least, most] = build.outboard.model.fullThrottle.map((turns) => format.number(turns, 0));
  return [
    {
      label: 'Propeller',
      value: `pitch about ${format.pitch(propeller.middle)}, for ${least} to ${most}${NO_BREAK}rpm at full throttle, loaded; estimated, trial to confirm`,
    },
  ];
}

/** The speeds that the trial is to confirm. */
function trialFact({ build, drive }: Figures): Facts {
  const format = formatterOf(build.yard);
  const speeds = drive.loadings.flatMap(({ name, loading, speed }) =>
    'notComputed' in speed || name.endsWith('ballast')
      ? []
      : [`${bandText(speed.speed, format)} with ${loading.people} aboard`],
  );
  if (speeds.length === 0) return [];
  return [
    {
      label: 'Speed on trial',
      value: `${[...new Set(speeds)].join(', ')}; estimated to Savitsky 1964, trial to confirm`,
    },
  ];
}

function bowFact({ build, drive }: Figures): Facts {
  const { bowMotor } = drive;
  if (!bowMotor || 'notComputed' in bowMotor.needed || 'notComputed' in bowMotor.time) return [];
  const format = formatterOf(build.yard);
  return [
    {
      label: 'Bow motor',
      value: `holds ${format.roundSpeed(build.yard.drive.holding.wind)} of wind for about ${format.hours(bowMotor.time.hours * UNIT_KINDS.duration.h)}; estimated, trial to confirm`,
    },
  ];
}

function plateFact({ build }: Figures): Facts {
  const format = formatterOf(build.yard);
  const { ratings } = build.hull;
  return [
    {
      label: 'Capacity plate',
      value: `${ratings.people} people, ${format.mass(ratings.load)}, ${format.power(ratings.power)}: the shop’s ratings, estimated; the builder confirms and signs`,
    },
  ];
}

function trailerFacts({ build, tow }: Figures): Facts {
  const { trailer } = tow;
  if (!trailer) return [];
  const format = formatterOf(build.yard);
  const { winchPost, ball, length } = trailer;
  const isLoaded = !('notComputed' in winchPost) && !('notComputed' in ball);
  return [
    ...(isLoaded
      ? [
          {
            label: 'Winch post',
            value: `${format.length(winchPost.at)} aft of the ball: ${format.mass(ball.onBall)} on it, estimated; weigh the coupling`,
          },
        ]
      : []),
    {
      label: 'On the road',
      value: `${brakeWords(trailer)}${typeof length === 'number' ? ` ${format.length(length)} from ball to end.` : ''} Estimated; confirm with the authority.`,
    },
  ];
}
