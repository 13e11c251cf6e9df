import type { Finding } from '../findings/index.ts';
import { weighBoat } from '../mass/index.ts';
import { priceOrder } from '../price/index.ts';
import type { Build } from '../resolve/index.ts';
import { STAGES } from '../schema/index.ts';
import { trailerLoad } from '../tow/index.ts';
import { addDecimals, ZERO } from '../units/index.ts';
import { checkFigures } from './check-figures.ts';
import { fuelOf, massInput, priceInput } from './inputs.ts';
import type { Figures } from './types.ts';

/**
 * Calls the rooms in order, each on its own narrow input, and hands the results on.
 *
 * @param build - a resolved order without errors
 * @param findings - what resolving it found, to stand with what the figures find
 */
export function computeFigures(build: Build, findings: readonly Finding[]): Figures {
  const price = priceBuild(build);
  const mass = weighBoat(massInput(build, fuelOf(build)));
  const load =
    build.trailer &&
    trailerLoad({ boat: mass.towedBoat, tare: build.trailer.tare, rating: build.trailer.rating });
  const figures = {
    build,
    price,
    mass,
    ...(load && { trailerLoad: load }),
    stageHours: hoursByStage(build),
  };
  return { ...figures, findings: [...findings, ...checkFigures(figures)] };
}

/** The price of a Build alone: for holding a Build of another day against today's. */
export function priceBuild(build: Build): Figures['price'] {
  return priceOrder(priceInput(build));
}

function hoursByStage({ items }: Build): Figures['stageHours'] {
  const work = items.flatMap((item) => item.hours);
  return STAGES.map((stage) => ({
    stage,
    hours: work
      .filter((one) => one.stage === stage)
      .reduce((total, one) => addDecimals(total, one.hours), ZERO),
  })).filter(({ hours }) => hours.amount > 0n);
}
