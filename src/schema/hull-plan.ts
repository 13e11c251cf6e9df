import { count, id } from './fields.ts';

/** What a hull file says for the plan. */
export const hullPlan = {
  mouldOf: id(
    'The hull in whose mould this one is made; left out: its own. One boat at a time is in a mould.',
    'hulls',
  ).optional(),
  cureHours: count('Hours of the clock in the mould from the end of infusion to release.', {
    min: 0,
    max: 2000,
  }).prefault(48),
};
