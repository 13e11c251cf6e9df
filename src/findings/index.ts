export { factsAbout, safetyFindings, seenBy, toldToCustomer } from './audience.ts';
export type { Audience, CodeFacts, Severity } from './code-facts.ts';
export { FINDING_CODES, type FindingCode } from './codes.ts';
export {
  type Finding,
  finding,
  type Acceptance,
  hasErrors,
  nearestName,
  type Place,
} from './finding.ts';
export { describePlace, positionAt, renderFinding } from './render.ts';
export {
  ACCEPTABLE,
  gateOf,
  openFindings,
  stoppingIssue,
  stopsFigures,
  withAcceptances,
} from './gate.ts';
