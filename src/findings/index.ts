export { FINDING_CODES, type FindingCode, type Severity } from './codes.ts';
export { type Finding, finding, hasErrors, nearestName, type Place } from './finding.ts';
export { describePlace, positionAt, renderFinding } from './render.ts';
