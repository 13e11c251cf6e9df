import { derive } from '../derive/index.ts';
import { type Finding, finding, withAcceptances } from '../findings/index.ts';
import { weighBoat } from '../mass/index.ts';
import { priceOrder, sensitivity } from '../price/index.ts';
import type { Build } from '../resolve/index.ts';
import { STAGES } from '../schema/index.ts';
import { trailerLoad } from '../tow/index.ts';
import { multiplyDecimals, ONE, sumDecimals } from '../units/index.ts';
import { boatKit } from './laminate/boat-kit.ts';
import { checkFigures } from './check-figures.ts';
import { driveFigures } from './performance/speed.ts';
import { electricsFigures } from './electrics/electrics.ts';
import { floatFigures } from './float/float.ts';
import { gateFigures } from './mass/gates.ts';
import { massInput, withBallast } from './mass/input.ts';
import { laminateFigures } from './laminate/shell.ts';
import { limitsFigures } from './limits/limits.ts';
import { mixingOf } from './laminate/mixing.ts';
import { partLayUps } from './laminate/parts.ts';
import { learningOf, priceInput, termsOf, whatIfOf } from './price/input.ts';
import { towFigures } from './tow/tow.ts';
import { knownTo } from './spread.ts';
import type { Figures } from './types.ts';

/**
 * Calls the rooms in order, each on its own narrow input, and hands the results on.
 *
 * @param resolved - a resolved order without errors
 * @param findings - what resolving it found, to stand with what the figures find
 */
export function computeFigures(resolved: Build, findings: readonly Finding[]): Figures {
  const build = derive(resolved);
  const priced = priceInput(build);
  const price = priceOrder(priced);
  const weighed = massInput(build);
  const float = floatFigures(build, weighBoat(weighed));
  const mass = weighBoat(withBallast(weighed, float));
  const load =
    build.trailer &&
    trailerLoad({
      boat: mass.loadings['stowed for the road'].mass,
      tare: build.trailer.tare,
      rating: build.trailer.rating,
    });
  const electrics = electricsFigures(build);
  const laminate = laminateFigures(build);
  const parts = partLayUps(build);
  const shell = 'notComputed' in laminate ? [] : [laminate];
  const figures = {
    build,
    price,
    sensitivity: sensitivity(priced, price, whatIfOf(build)),
    mass,
    ...(load && { trailerLoad: load }),
    float,
    drive: driveFigures(build, mass, float, electrics),
    limits: limitsFigures(build, mass, float),
    tow: towFigures(build, mass),
    laminate,
    partLayUps: parts,
    boatKit: boatKit(
      build,
      [...shell, ...parts].map(({ kit }) => kit.lines),
    ),
    mixing: shell.length + parts.length > 0 ? mixingOf(build) : [],
    electrics,
    gates: gateFigures(build, mass),
    stageHours: hoursByStage(build),
  };
  const all = { ...figures, known: knownTo(figures) };
  const found = [...findings, ...checkFigures(all)];
  const told = [...withAcceptances(found, build.order.accepted), ...goneSince(build, found)];
  return { ...all, findings: told };
}

/** What the order accepts and nothing finds any more. */
const goneSince = (build: Build, found: readonly Finding[]): readonly Finding[] =>
  build.order.accepted.flatMap((one, index) =>
    found.some(({ code }) => code === one.finding)
      ? []
      : [
          finding('ACCEPTED_NOT_FOUND', build.place(['accepted', index]), {
            received: `${one.finding}: ${one.found}`,
          }),
        ],
  );

/** Hours to plan with: the catalogue's, times what the first boats of a hull take longer. */
function hoursByStage(build: Build): Figures['stageHours'] {
  const work = build.items.flatMap((item) => item.hours);
  const learning = learningOf(build.yard, termsOf(build.order));
  return STAGES.map((stage) => ({
    stage,
    hours: multiplyDecimals(
      sumDecimals(work.filter((one) => one.stage === stage).map((one) => one.hours)),
      learning[stage] ?? ONE,
    ),
  })).filter(({ hours }) => hours.amount > 0n);
}
