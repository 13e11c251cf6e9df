export { orderChecks } from './order-cases.ts';
export { byTier, runChecks } from './run-checks.ts';
export type { Check, PublishedCase } from './types.ts';
