export type { Severity } from './code-facts.ts';
export { FINDING_CODES, type FindingCode } from './codes.ts';
export { type Finding, finding, hasErrors, nearestName, type Place } from './finding.ts';
export { describePlace, positionAt, renderFinding } from './render.ts';
