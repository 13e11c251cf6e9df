export { orderChecks } from './order-cases.ts';
export { runChecks } from './run-checks.ts';
export type { Check, PublishedCase } from './types.ts';
