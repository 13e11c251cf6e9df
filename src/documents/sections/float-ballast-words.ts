import type { Afloat, CustomerFigures } from '../../figures/index.ts';
import { formatterOf, kilograms, metres } from '../../units/index.ts';
import { list, waterName } from './words.ts';

/** What the ballast tank does, whichever way it goes; nothing when it has none. */
export function ballastSentences(
  { build }: Pick<CustomerFigures, 'build'>,
  afloat: Afloat,
): readonly string[] {
  const { ballast } = afloat;
  const effect = ballast?.effect;
  if (!ballast || !effect) return [];
  const format = formatterOf(build.yard);
  const { dry, flooded, water, capacity } = effect;
  const { seconds } = format;
  const lines = [
    `The ballast tank holds ${format.volume(capacity)}; at rest ${format.mass(water?.mass ?? kilograms(0))} of ${waterName(afloat)} stands in it.`,
  ];
  const [freeboard, height] = [
    [dry.lowestFreeboard, flooded.lowestFreeboard],
    [dry.metacentricHeight, flooded.metacentricHeight],
  ];
  const told: string[] = [];
  if (freeboard?.[0] !== undefined && freeboard[1] !== undefined) {
    const lost = metres(freeboard[0] - freeboard[1]);
    told.push(
      `the least freeboard ${lost > 0 ? 'falls' : 'rises'} by ${format.dimension(metres(Math.abs(lost)))}`,
    );
  }
  if (height?.[0] !== undefined && height[1] !== undefined) {
    told.push(
      `GM (stiffness against leaning) goes from ${format.dimension(metres(height[0]))} to ${format.dimension(metres(height[1]))}`,
    );
  }
  if (told.length > 0) lines.push(`With it open to the sea ${list(told)}.`);
  return [...lines, ...flowSentence(ballast, seconds)];
}

function flowSentence(
  { drains, fills }: NonNullable<Afloat['ballast']>,
  seconds: (value: number) => string,
): readonly string[] {
  const fill = fills?.outcome === 'flows' ? `It fills in ${seconds(fills.time)} and` : 'It';
  if (!drains) return [];
  return drains.outcome === 'flows'
    ? [`${fill} drains in ${seconds(drains.time)} under way.`]
    : [`${fill} does not drain under way: ${drains.why}.`];
}
