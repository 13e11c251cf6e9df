import { expect, it } from 'vitest';
import { buildSheetView } from '../../src/documents/build-sheet/build-sheet.ts';
import { type IsoDate, ONE } from '../../src/units/index.ts';
import { cellsOf, rowsOf, tablesOf, wordsOf } from './letters.ts';
import { fittedFigures } from './fitted-build.ts';

const day = (text: string): IsoDate => text as IsoDate;

it('a build sheet has the days that the plan gives each stage, and says of which day the plan is', () => {
  const stages = new Map([
    ['wiring', { starts: day('2026-12-07'), ends: day('2026-12-09') }],
    ['water-trial', { starts: day('2026-12-10'), ends: day('2026-12-10') }],
  ]);
  const figures = fittedFigures({
    items: { 'House battery': { hours: [{ stage: 'wiring', hours: ONE }] } },
  });
  const planned = { asOf: day('2026-11-25'), stages };
  const view = buildSheetView(figures, { fontCss: '', planned });
  const days = new Map(
    rowsOf(view, 'hours')
      .map(cellsOf)
      .map(([, stage, , on]) => [stage, on]),
  );
  expect(days.get('Wiring')).toBe('Mon 7 Dec to Wed 9 Dec');
  expect(days.get('Water trial')).toBe('Thu 10 Dec');
  expect(days.get('Handover')).toBe('');
  const wiring = view.parts.find(({ id }) => id === 'stage-wiring');
  expect(wiring?.beside).toContain('Mon 7 Dec to Wed 9 Dec');
  expect(wordsOf(view, 'hours')[0]).toContain('as planned on 25 November 2026');
});

it('a build sheet of an order that is not planned has no days and says nothing of a plan', () => {
  const view = buildSheetView(fittedFigures(), { fontCss: '' });
  const [table] = tablesOf(view, 'hours');
  expect(table?.columns.map(({ text }) => text)).not.toContain('Days');
  expect(wordsOf(view, 'hours').join()).not.toContain('plan');
});
