import type { Equilibrium, FloatRemedy } from '../../float/index.ts';
import {
  type Formatter,
  kilograms,
  type NotComputed,
  UNIT_KINDS,
  whyNot,
} from '../../units/index.ts';

const PLAIN_PLACES: ReadonlyMap<string, string> = new Map([
  ['sheer', 'the top edge of the side'],
  ['transom corner', 'the corner of the stern'],
]);

/** Where water could come in first, for whoever does not build boats. */
export const placeWords = (name: string): string => PLAIN_PLACES.get(name) ?? `the ${name}`;

/** How it comes to rest, in a few words: "takes in water at the engine well". */
export function outcomeText(equilibrium: Equilibrium): string {
  switch (equilibrium.outcome) {
    case 'floats':
      return 'floats';
    case 'swamps': {
      const { opening } = equilibrium;
      return opening ? `takes in water at ${placeWords(opening.name)}` : 'is too heavy to float';
    }
    case 'goes down':
      return `goes down by the ${equilibrium.by}`;
    case 'capsizes':
      return `turns over to ${equilibrium.to}`;
    case 'not computed':
      return whyNot(equilibrium);
  }
}

/** Why a figure of a boat that must float for it is not computed; what no search found is said to be that. */
export function whyLost(equilibrium: Equilibrium, when = ''): NotComputed {
  if (equilibrium.outcome === 'not computed') return equilibrium;
  return { notComputed: `${when}the boat ${outcomeText(equilibrium)}` };
}

/** A moment, kg.m, as the weight that has it when moved by one metre, or by a foot where a shop counts in feet. */
export function movedFar(moment: number, format: Formatter) {
  const [arm, far] = format.system === 'us' ? [UNIT_KINDS.length.ft, '1 ft'] : [1, '1 m'];
  return { mass: format.mass(kilograms(moment / arm)), far };
}

/** What would just let it float, as one reads it beside "Fix:"; undefined where nothing simple does. */
export function remedyText(remedy: FloatRemedy | undefined, format: Formatter): string | undefined {
  if (!remedy) return undefined;
  if (remedy.what === 'take out') return `Take out at least ${format.mass(remedy.mass)}`;
  const { way, moment } = remedy;
  const { mass: moved, far } = movedFar(moment, format);
  const what = way === 'lower' ? 'Bring weight lower' : `Move weight ${way}`;
  return `${what}: at least ${moved} by ${far}, or as much weight times distance`;
}
