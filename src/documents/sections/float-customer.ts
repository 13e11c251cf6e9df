import { conditionOf, type CustomerFigures, placeWords } from '../../figures/index.ts';
import { type Formatter, formatterOf } from '../../units/index.ts';
import { ballastSentences } from './float-ballast-words.ts';
import { conditionSentence, sideSentence } from './float-words.ts';
import { figureOf } from './fact-words.ts';
import { waterSentence } from './words.ts';
import { found, type FoundFigure } from './method-notes.ts';

/** Draught, freeboard and how it sits, for the quote; nothing when it was not computed afloat. */
export function floatKeyFigures(
  figures: CustomerFigures,
  format: Formatter,
): readonly FoundFigure[] {
  const afloat = figures.float?.afloat;
  const state = afloat && conditionOf(afloat, 'fully loaded')?.state;
  const { draught, freeboard } = figures.facts.afloat;
  if (!afloat || !state || !draught || !freeboard) return [];
  const { lowest } = state.freeboards;
  return [
    figureOf(
      draught,
      format,
      'How deep the hull reaches into the water, without the outboard’s leg.',
    ),
    figureOf(
      freeboard,
      format,
      `Height above the water of the lowest place where water could come in: ${placeWords(lowest.name)}. ${waterSentence(figures.build, afloat)}`,
    ),
    found(
      'Trim, fully loaded',
      state.trims === 'level'
        ? 'level'
        : `${state.trim > 0 ? 'stern' : 'bow'} down ${format.angle(Math.abs(state.trim))}`,
      `At rest, everyone seated. ${sideSentence(afloat.crew.ordered, format)}`,
      'hydrostatics',
      'crew',
    ),
  ];
}

/** How it floats: the figures, and each condition in a sentence. */
interface OwnersFloat {
  readonly figures: readonly FoundFigure[];
  readonly lines: readonly string[];
}

/** What an owner is told of: as ordered, as used, and at the rating. */
const OWNERS: ReadonlySet<string> = new Set(['fully loaded', 'custom', 'rated', 'rated aft']);

/** How it floats, for its owner; nothing when it was not computed afloat. */
export function handoverFloat(figures: CustomerFigures): OwnersFloat | undefined {
  const afloat = figures.float?.afloat;
  const { build } = figures;
  const format = formatterOf(build.yard);
  const rows = floatKeyFigures(figures, format);
  if (!afloat || rows.length === 0) return undefined;
  return {
    figures: rows
      .slice(0, 2)
      .map((row) => (afloat.ballast ? { ...row, methods: [...row.methods, 'ballast'] } : row)),
    lines: [
      ...afloat.conditions
        .filter(({ name }) => OWNERS.has(name))
        .map((condition) => conditionSentence(condition, figures)),
      sideSentence(afloat.crew.rated, format),
      ...ballastSentences(figures, afloat),
    ],
  };
}
