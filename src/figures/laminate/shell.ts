import {
  type LaminateMass,
  type NotComputed,
  type Panel,
  screenBottom,
  type Screening,
  type Section,
  sectionOf,
  weighLaminate,
} from '../../laminate/index.ts';
import type { Build } from '../../resolve/index.ts';
import type { Hull } from '../../schema/index.ts';
import { dataMissing, kilograms, type Kilograms, KNOT, metres } from '../../units/index.ts';
import { type InfusionFigures, infusionOf } from './infusion.ts';
import { type KitFigures, kitFigures } from './kit.ts';
import { breadthAt, type LaidItem, panelsOf, type ResolvedPanel, shellWetting } from './input.ts';

type Laminate = NonNullable<Hull['laminate']>;

/** What is computed of the lay-up of a hull. */
export interface LaminateFigures {
  readonly panels: readonly ResolvedPanel[];
  readonly mass: LaminateMass;
  /** Strength and stiffness of each panel's lay-up, by the panel's name. */
  readonly sections: ReadonlyMap<string, Section | NotComputed>;
  /** The bottom panel against bottom pressure; undefined when the hull names none. */
  readonly screening?: Screening | NotComputed;
  readonly kit: KitFigures;
  readonly infusion?: InfusionFigures;
}

/** The lay-up of the order's hull, or why nothing of it is computed. */
export function laminateFigures(build: Build): LaminateFigures | NotComputed {
  const { laminate } = build.hull;
  if (!laminate) return dataMissing(`the file of the ${build.hull.name} has no lay-up`, 'laminate');
  const panels = panelsOf(build, laminate);
  const shell: LaidItem = {
    ...shellWetting(laminate),
    item: build.items.find(({ kind }) => kind === 'shell'),
    panels,
    pieces: laminate.pieces,
    overlap: laminate.overlap,
  };
  const infusion = laminate.infusion && infusionOf(build, laminate, panels);
  const screening = screeningOf(build, laminate, panels);
  const plan = infusion && 'feedLines' in infusion.plan ? infusion.plan : { feedLines: 1, lost: 0 };
  return {
    panels,
    mass: weighLaminate(panels),
    sections: new Map(panels.map(({ name, layers }) => [name, sectionOf(layers)])),
    ...(screening && { screening }),
    kit: kitFigures(build, laminate, shell, {
      feedLines: laminate.infusion?.feedLines ?? plan.feedLines,
      lost: plan.lost,
    }),
    ...(infusion && { infusion }),
  };
}

function screeningOf(
  { hull }: Build,
  { bottom, panels: written }: Laminate,
  panels: readonly Panel[],
): Screening | NotComputed | undefined {
  if (!bottom) return undefined;
  const panel = panels.find(({ name }) => name === bottom.panel);
  const strip = written.find(({ name }) => name === bottom.panel)?.strip;
  if (!panel || !strip) return { notComputed: 'the bottom panel must be a strip of the lines' };
  const section = sectionOf(panel.layers);
  if ('notComputed' in section) return section;
  return screenBottom(
    {
      waterline: bottom.waterline,
      chineBeam: metres(breadthAt(hull, strip[1])),
      loadedMass: mostMass(hull),
      speedKnots: bottom.speed / KNOT,
      deadrise: hull.dimensions.deadrise,
      category: bottom.category,
    },
    bottom,
    section,
    panel.layers.some(({ kind }) => kind === 'core'),
  );
}

/** The boat as heavy as its ratings allow: shell, structure, rated load and heaviest engine. */
const mostMass = ({ shell, structure, ratings }: Hull): Kilograms =>
  kilograms(shell.mass + structure.mass + ratings.load + ratings.engineMass);
