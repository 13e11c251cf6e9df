import {
  type Fact,
  type Figures,
  isNotComputed,
  performanceFacts,
  type PerformanceFacts,
  towFacts,
} from '../../figures/index.ts';
import { formatterOf, metres, NO_BREAK } from '../../units/index.ts';
import type { Field } from '../blocks/block.ts';
import { brakeWords } from '../sections/brake-words.ts';
import { sayFact } from '../sections/fact-words.ts';

type Facts = readonly Field[];

/** What the fitter sets by, and what the trial is held against; nothing that is not computed. */
export function fitterFacts(figures: Figures): Facts {
  const running = performanceFacts(figures);
  return [
    ...transomFact(figures),
    ...propellerFact(figures, running),
    ...trialFact(figures, running),
    ...bowFact(figures, running),
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

function propellerFact({ build }: Figures, { pitch }: PerformanceFacts): Facts {
  if (!pitch || typeof pitch.says !== 'number' || !build.outboard) return [];
  const format = formatterOf(build.yard);
  const [least, most] = build.outboard.model.fullThrottle.map((turns) => format.number(turns, 0));
  return [
    {
      label: 'Propeller',
      value: `pitch about ${format.pitch(metres(pitch.says))}, for ${least} to ${most}${NO_BREAK}rpm at full throttle, loaded; estimated, trial to confirm`,
    },
  ];
}

/** The speeds that the trial is to confirm. */
function trialFact({ build, drive }: Figures, { loadings }: PerformanceFacts): Facts {
  const format = formatterOf(build.yard);
  const speeds = drive.loadings.flatMap(({ name, loading }) => {
    const { speed: planing, slow } = loadings[name] ?? {};
    const speed = slow && !isNotComputed(slow.says) ? slow : planing;
    return !speed || isNotComputed(speed.says) || name.endsWith('ballast')
      ? []
      : [`${sayFact(speed, format)} with ${loading.people} aboard`];
  });
  if (speeds.length === 0) return [];
  return [
    {
      label: 'Speed on trial',
      value: `${[...new Set(speeds)].join(', ')}; estimated, trial to confirm`,
    },
  ];
}

function bowFact({ build }: Figures, { holding }: PerformanceFacts): Facts {
  if (!holding || isNotComputed(holding.thrust.says) || isNotComputed(holding.hours.says))
    return [];
  const format = formatterOf(build.yard);
  return [
    {
      label: 'Bow motor',
      value: `holds ${format.roundSpeed(build.yard.drive.holding.wind)} of wind for about ${sayFact(holding.hours, format)}; estimated, trial to confirm`,
    },
  ];
}

function plateFact({ build, limits: { carries } }: Figures): Facts {
  const format = formatterOf(build.yard);
  const { people, load, power } = carries;
  return [
    {
      label: 'Capacity plate',
      value: `${people.people} people, ${format.mass(load.mass)}, ${format.power(power.power)}: the least of all limits, estimated; the builder confirms and signs`,
    },
  ];
}

function trailerFacts(figures: Figures): Facts {
  const { trailer } = figures.tow;
  const {
    onBall,
    length,
    others: { post },
  } = towFacts(figures);
  if (!trailer || !onBall || !post || !length) return [];
  const say = (fact: Fact): string => sayFact(fact, formatterOf(figures.build.yard));
  const isLoaded = !isNotComputed(onBall.says) && !isNotComputed(post.says);
  return [
    ...(isLoaded
      ? [
          {
            label: 'Winch post',
            value: `${say(post)} aft of the ball: ${say(onBall)} on it, estimated; weigh the coupling`,
          },
        ]
      : []),
    {
      label: 'On the road',
      value: `${brakeWords(trailer)}${isNotComputed(length.says) ? '' : ` ${say(length)} from ball to end.`} Estimated; confirm with the authority.`,
    },
  ];
}
