import { z } from 'zod';
import { percent } from './fields.ts';

/** How a laminate is wetted. */
export const PROCESSES = ['hand', 'infusion'] as const;
export type LayUpProcess = (typeof PROCESSES)[number];

/** How the fibre of a fabric lies. */
export const ARCHITECTURES = ['mat', 'woven', 'multiaxial'] as const;
export type Architecture = (typeof ARCHITECTURES)[number];

const share = (what: string, usual: string) =>
  percent(`{Fibre} by mass of ${what}.`, { min: 0.1, max: 0.8 }).prefault(usual);

const byArchitecture = (usual: Readonly<Record<Architecture, string>>, description: string) =>
  z
    .strictObject({
      mat: share('chopped strand mat', usual.mat),
      woven: share('woven roving', usual.woven),
      multiaxial: share('stitched fabric', usual.multiaxial),
    })
    .prefault({})
    .meta({ description });

/**
 * Fibre by mass by process and fabric. Left out: what these processes usually reach, after the table of ISO 12215-5:2008
 * Annex C for open moulds and vacuum (from memory), infused multiaxial as shops report it (common practice, no source).
 */
export const fibreByProcess = z
  .strictObject({
    hand: byArchitecture(
      { mat: '30%', woven: '48%', multiaxial: '50%' },
      'Laid up and rolled by hand.',
    ),
    infusion: byArchitecture(
      { mat: '40%', woven: '58%', multiaxial: '62%' },
      'Infused under vacuum.',
    ),
  })
  .prefault({})
  .meta({
    description:
      '{Fibre} by mass by process and fabric, as this shop reaches it; a material may say otherwise. Left out: usual values after ISO 12215-5, from memory.',
  });
