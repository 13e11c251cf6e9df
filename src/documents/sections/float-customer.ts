import { conditionOf, type CustomerFigures } from '../../figures/index.ts';
import { type Formatter, formatterOf } from '../../units/index.ts';
import { BALLAST_METHOD, ballastSentences } from './float-ballast-words.ts';
import { conditionSentence, FLOAT_METHOD, offsetSentence, placeWords } from './float-words.ts';
import type { HandoverView } from '../handover/types.ts';
import type { KeyFigure } from '../quote/types.ts';

const FROM_LINES =
  'estimated by hydrostatics (the drawn hull sinks until it carries the counted masses), in still water';

/** Draught, freeboard and how she sits, for the quote; nothing when she was not computed afloat. */
export function floatKeyFigures(figures: CustomerFigures, format: Formatter): readonly KeyFigure[] {
  const afloat = figures.float?.afloat;
  const state = afloat && conditionOf(afloat, 'fully loaded')?.state;
  if (!afloat || !state) return [];
  const { lowest } = state.freeboards;
  return [
    {
      label: 'Draught, fully loaded',
      value: format.dimension(afloat.deepest ?? state.draughtAft),
      method: `The hull at its deepest, without the outboard’s leg; ${FROM_LINES}; verify by draught marks.`,
    },
    {
      label: 'Freeboard, fully loaded',
      value: format.dimension(lowest.freeboard),
      method: `At the lowest place where water could come in, ${placeWords(lowest.name)}; estimated in the same way; verify by measuring afloat.`,
    },
    {
      label: 'How she floats',
      value: state.trims === 'level' ? 'level' : `${format.degrees(state.trim)} ${state.trims}`,
      method: `At rest, fully loaded, everyone seated${state.trims === 'level' ? '' : '; the end named lies lower'}. ${offsetSentence(figures, afloat)}`,
    },
  ];
}

/** How she floats, for her owner; nothing when she was not computed afloat. */
export function handoverFloat(figures: CustomerFigures): HandoverView['floats'] {
  const afloat = figures.float?.afloat;
  const { build } = figures;
  const format = formatterOf(build.yard);
  const rows = floatKeyFigures(figures, format);
  if (!afloat || rows.length === 0) return undefined;
  const aft = conditionOf(afloat, 'people aft');
  return {
    figures: rows.slice(0, 2),
    lines: [
      ...afloat.conditions
        .filter(({ name }) => name === 'fully loaded' || name === 'custom')
        .map((condition) => conditionSentence(condition, figures)),
      ...(aft ? [conditionSentence(aft, figures)] : []),
      offsetSentence(figures, afloat),
      ...ballastSentences(figures, afloat),
    ],
    method: [
      FLOAT_METHOD,
      ...(afloat.ballast ? [BALLAST_METHOD] : []),
      'Waves, wind and movement take freeboard away: leave more than these figures need.',
    ].join(' '),
  };
}
