import { electricsFacts } from '../electrics/facts.ts';
import { floatFacts } from '../float/facts.ts';
import { laminateFacts } from '../laminate/facts.ts';
import { limitsFacts } from '../limits/facts.ts';
import { massFacts, stageFacts } from '../mass/facts.ts';
import { engineFacts, performanceFacts } from '../performance/facts.ts';
import { priceFacts } from '../price/facts.ts';
import { knownFacts } from '../spread.ts';
import { towFacts } from '../tow/facts.ts';
import type { Figures } from '../types.ts';
import type { Fact } from './fact.ts';
import { type FigureDatum, toData } from './to-data.ts';

/** Every fact of an order. */
export function allFacts(figures: Figures): readonly Fact[] {
  return [
    priceFacts(figures),
    massFacts(figures),
    performanceFacts(figures),
    engineFacts(figures),
    limitsFacts(figures),
    towFacts(figures),
    stageFacts(figures),
    laminateFacts(figures),
    electricsFacts(figures),
    floatFacts(figures),
    knownFacts(figures),
  ].flatMap(leavesOf);
}

/** The same for `figures.json`. */
export const figuresData = (figures: Figures): Readonly<Record<string, FigureDatum>> =>
  toData(allFacts(figures), figures.build.yard);

/** The facts in lists and objects of facts, to any depth. */
function leavesOf(tree: unknown): readonly Fact[] {
  if (typeof tree !== 'object' || tree === null) return [];
  return isFact(tree) ? [tree] : Object.values<unknown>({ ...tree }).flatMap(leavesOf);
}

const isFact = (tree: object): tree is Fact => 'key' in tree && 'says' in tree;
