import { z } from 'zod';
import { decimalToNumber } from '../units/index.ts';
import { fieldFacts } from './field-facts.ts';
import { count, date, decimal } from './fields.ts';

const ALL_WEEK = [1, 2, 3, 4, 5, 6, 7] as const;
const HOURS_IN_A_DAY = 24;

const weekday = z
  .union([z.number(), z.string()])
  .transform(Number)
  .refine((day) => ALL_WEEK.some((one) => one === day), '1 Monday to 7 Sunday')
  .meta({ description: '1 Monday to 7 Sunday.' })
  .register(fieldFacts, { kind: 'whole number', range: 'at least 1 and at most 7' });

const hours = z
  .strictObject({
    workdays: z
      .array(weekday)
      .min(1)
      .default([1, 2, 3, 4, 5])
      .meta({ description: 'Days of the week on which the shop works: 1 Monday to 7 Sunday.' }),
    startsAt: decimal('Hour of the day at which work starts, such as 7.5.', {
      min: 0,
      max: 23,
    }).prefault('7'),
    perDay: decimal('Hours of work in a day.', { min: 1, max: 24 }).prefault('8'),
    holidays: z
      .array(date('A day on which nobody works.'))
      .default([])
      .meta({ description: 'Days on which nobody works, beside those of the week.' }),
  })
  .refine(
    ({ startsAt, perDay }) => decimalToNumber(startsAt) + decimalToNumber(perDay) <= HOURS_IN_A_DAY,
    'a day of work that ends before midnight',
  )
  .prefault({})
  .meta({ description: 'When the shop works; the plan counts by it.' });

/** What the yard file says for the plan. */
export const yardPlan = {
  hours,
  daysInHand: count('Calendar days added to a planned finish before it is promised.', {
    min: 0,
    max: 365,
  }).prefault(5),
  planTries: count('Schedules that the plan tries beyond the first, to find a better one.', {
    min: 0,
    max: 5000,
  }).prefault(200),
};

/** What a stage of the yard file says for the plan, beside its trade. */
export const stagePlan = {
  people: count('How many of its trade work on it at once.', { min: 1, max: 50 }).prefault(1),
  oneSitting: z
    .boolean()
    .default(false)
    .meta({ description: 'true: once begun it must be over the same day.' }),
};
