import { type Metres, metres } from '../units/index.ts';
import { layerThickness } from './layer.ts';
import { glassProperties } from './properties.ts';
import type { CoreLayer, Layer, NotComputed } from './types.ts';

/** One ply of a strip of laminate, from the outside inwards. */
export interface Ply {
  readonly thickness: Metres;
  /** Pa */
  readonly modulus: number;
  /** Strength, Pa; undefined for a core, which is judged in shear. */
  readonly tension?: number;
  readonly compression?: number;
}

/** A strip of laminate 1 m wide. */
export interface Section {
  readonly thickness: Metres;
  /** Depth of the neutral axis below the outside. */
  readonly neutralAxis: Metres;
  /** Bending stiffness D, N.m (N.m2 per m of width). */
  readonly stiffness: number;
  /** Bending moment at which the first ply reaches its strength, the weaker way round, N.m per m. */
  readonly moment: number;
  /** Shear force that the core carries, N per m; undefined for a single skin or a core without data. */
  readonly shear?: number;
}

/**
 * Bending stiffness of unequal plies on one strip: D = sum E (t^3 / 12 + t (z - z0)^2), z0 at the weighted centre.
 *
 * @returns neutral axis, m from the outside, and D, N.m
 * @validity plane sections stay plane: no slip or shear in the core
 * @source classical beam theory of a composite section (transformed section)
 */
export function stiffnessOf(plies: readonly Ply[]): {
  readonly neutralAxis: Metres;
  readonly stiffness: number;
} {
  const placed = placePlies(plies);
  const area = placed.reduce((total, { ply }) => total + ply.modulus * ply.thickness, 0);
  const first = placed.reduce(
    (total, { ply, middle }) => total + ply.modulus * ply.thickness * middle,
    0,
  );
  const neutralAxis = area > 0 ? first / area : 0;
  const stiffness = placed.reduce(
    (total, { ply, middle }) =>
      total + ply.modulus * (ply.thickness ** 3 / 12 + ply.thickness * (middle - neutralAxis) ** 2),
    0,
  );
  return { neutralAxis: metres(neutralAxis), stiffness };
}

/**
 * Stiffness of two equal thin skins on a core, E tf (c + tf)^2 / 2: the textbook value that leaves out the skins' own
 * stiffness.
 *
 * @param modulus - E, Pa; @param skin - tf, m; @param core - c, m
 * @returns D, N.m
 * @source classical sandwich theory (Allen, Analysis and Design of Structural Sandwich Panels, 1969, ch. 2)
 */
export function thinSkinStiffness(modulus: number, skin: Metres, core: Metres): number {
  return (modulus * skin * (core + skin) ** 2) / 2;
}

/**
 * Stress at which a skin wrinkles on its core, 0.5 (Ef Ec Gc)^(1/3).
 *
 * @param skinModulus - Ef, Pa
 * @returns Pa
 * @source Hoff and Mautner, Journal of the Aeronautical Sciences 12 (1945): theory 0.91, for design 0.5
 */
export function wrinklingStress(
  skinModulus: number,
  core: NonNullable<CoreLayer['strength']>,
): number {
  return 0.5 * Math.cbrt(skinModulus * core.compressiveModulus * core.shearModulus);
}

/**
 * Stiffness and ultimate strength of a lay-up, from default properties of its glass.
 *
 * @returns a strip 1 m wide; `notComputed` when the lay-up has no glass or glass outside the defaults' validity
 * @validity one core at most; a core adds no bending stiffness of its own; compression limited by wrinkling when the
 * core's data are given
 * @source classical beam and sandwich theory; properties from ISO 12215-5:2008 Annex C (from memory). Estimated;
 * verify by testing a panel
 */
export function sectionOf(layers: readonly Layer[]): Section | NotComputed {
  const [core, second] = layers.filter((layer): layer is CoreLayer => layer.kind === 'core');
  if (second) return { notComputed: 'sandwich theory here knows one core' };
  const bought = layers.find(({ kind }) => kind === 'ready-made');
  if (bought) return { notComputed: `${bought.name} is bought laminated: ask its maker` };
  const plies: Ply[] = [];
  for (const layer of layers) {
    if (layer.kind === 'gelcoat' || layer.kind === 'ready-made') continue;
    if (layer.kind === 'core') {
      plies.push({ thickness: layer.thickness, modulus: 0 });
      continue;
    }
    const glass = glassProperties(layer.fibreFraction);
    if ('notComputed' in glass) return glass;
    const wrinkling = core?.strength
      ? wrinklingStress(glass.modulus, core.strength)
      : Number.POSITIVE_INFINITY;
    plies.push({
      thickness: layerThickness(layer.fibrePerArea, layer.fibreFraction),
      modulus: glass.modulus,
      tension: glass.tension,
      compression: Math.min(glass.compression, wrinkling),
    });
  }
  if (!plies.some(({ modulus }) => modulus > 0)) {
    return { notComputed: 'a lay-up without glass carries nothing' };
  }
  const { neutralAxis, stiffness } = stiffnessOf(plies);
  const thickness = metres(plies.reduce((total, ply) => total + ply.thickness, 0));
  const moment = Math.min(
    momentAtFirstFailure(plies, neutralAxis, stiffness, 1),
    momentAtFirstFailure(plies, neutralAxis, stiffness, -1),
  );
  const lever = core && (core.thickness + thickness) / 2;
  return {
    thickness,
    neutralAxis,
    stiffness,
    moment,
    ...(core?.strength && lever !== undefined && { shear: core.strength.shearStrength * lever }),
  };
}

/** Moment, N.m per m, at which the first fibre reaches its strength; sense 1 stretches the inside. */
function momentAtFirstFailure(
  plies: readonly Ply[],
  neutralAxis: Metres,
  stiffness: number,
  sense: 1 | -1,
): number {
  const limits = placePlies(plies).flatMap(({ ply, outer, inner }) =>
    [outer, inner].map((depth) => {
      const strain = (sense * (depth - neutralAxis)) / stiffness;
      const strength = strain > 0 ? ply.tension : ply.compression;
      return strength === undefined || strain === 0
        ? Number.POSITIVE_INFINITY
        : strength / (ply.modulus * Math.abs(strain));
    }),
  );
  return Math.min(...limits);
}

function placePlies(
  plies: readonly Ply[],
): readonly { ply: Ply; outer: number; middle: number; inner: number }[] {
  let outer = 0;
  return plies.map((ply) => {
    const from = outer;
    outer += ply.thickness;
    return { ply, outer: from, middle: from + ply.thickness / 2, inner: outer };
  });
}
