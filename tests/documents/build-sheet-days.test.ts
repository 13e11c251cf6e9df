import { expect, it } from 'vitest';
import { buildSheetView } from '../../src/documents/build-sheet/build-sheet.ts';
import { type IsoDate, ONE } from '../../src/units/index.ts';
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
  const days = new Map(view.hours.map((row) => [row.stage, row.days]));
  expect(days.get('Wiring')).toBe('Mon 7 Dec to Wed 9 Dec');
  expect(days.get('Water trial')).toBe('Thu 10 Dec');
  expect(days.get('Handover')).toBe('');
  expect(view.stages.find(({ id }) => id === 'wiring')?.days).toBe('Mon 7 Dec to Wed 9 Dec');
  expect(view.daysNote).toContain('as planned on 25 November 2026');
});

it('a build sheet of an order that is not planned has no days and says nothing of a plan', () => {
  const view = buildSheetView(fittedFigures(), { fontCss: '' });
  expect(view.daysNote).toBe('');
  expect(view.hours.filter(({ days }) => days !== '')).toEqual([]);
});
