import type { Figures } from '../../figures/index.ts';
import { type OrderState, waitsFor } from '../../plan/index.ts';
import { STAGES, type Yard } from '../../schema/index.ts';
import { formatDate } from '../../units/index.ts';
import { STAGE_NAMES } from '../sections/stage-names.ts';
import { timeliness } from '../yard/plan-page.ts';
import { captioned, heads, type Part, row, section, smallPrint } from '../blocks/block.ts';

/** When the plan builds this order, stage by stage; a stage without work has no line. */
export function planSection(
  { planned }: OrderState,
  { stageHours }: Pick<Figures, 'stageHours'>,
  yard: Yard,
): Part {
  if (!planned)
    return section(
      'plan',
      'Plan',
      'Not in the plan: only orders that are accepted and not handed over are.',
    );
  const { starts, ends, promised, stages } = planned;
  const worked = new Set(stageHours.map(({ stage }) => stage));
  const day = (date: typeof starts): string => formatDate(date, yard.locale);
  const late =
    promised === undefined ? '' : `, promised for ${day(promised)}: ${timeliness(planned, yard)}`;
  return section(
    'plan',
    'Plan',
    `From ${day(starts)} to ${day(ends)}${late}. Waiting for ${waitsFor(planned)}.`,
    captioned(
      'Stages still to be done',
      heads('text', 'Stage', 'From', 'To'),
      STAGES.filter((stage) => worked.has(stage)).flatMap((stage) => {
        const days = stages.get(stage);
        return days ? [row('plain', STAGE_NAMES[stage], day(days.starts), day(days.ends))] : [];
      }),
    ),
    ...smallPrint(['The plan of all orders, and how it is made: page Plan.']),
  );
}
