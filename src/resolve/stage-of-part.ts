import { type Stage, STAGES } from '../schema/index.ts';
import type { BuildItem, BuildPart } from './build.ts';

/**
 * Where a material is used when that is not the first stage of its item: the shell's list spans all of moulding,
 * and whoever sprays gelcoat wants the gelcoat there.
 *
 * @source common practice, no source
 */
const USED_IN: Readonly<Record<string, readonly Stage[]>> = {
  gelcoat: ['gelcoat'],
  fabric: ['laminate', 'infusion'],
  core: ['laminate', 'infusion'],
  resin: ['infusion', 'laminate'],
  fitting: ['fit-out'],
  hardware: ['fit-out'],
  plumbing: ['fit-out'],
  sheet: ['fit-out'],
  timber: ['fit-out'],
  paint: ['fit-out'],
  covering: ['fit-out'],
  upholstery: ['fit-out'],
  cable: ['wiring'],
  electrical: ['wiring'],
  electronics: ['wiring'],
  battery: ['wiring'],
};

/** Stage of an item that nobody gave hours to. */
const WITHOUT_HOURS: Readonly<Record<BuildItem['kind'], Stage>> = {
  shell: 'laminate',
  structure: 'fit-out',
  option: 'fit-out',
  extra: 'fit-out',
  outboard: 'engine',
  trailer: 'trailer',
};

/** The stages in which an item is worked on, first to last: never none. */
export function stagesOf({ hours, kind }: BuildItem): readonly Stage[] {
  const worked = STAGES.filter((stage) =>
    hours.some((one) => one.stage === stage && one.hours.amount > 0n),
  );
  return worked.length > 0 ? worked : [WITHOUT_HOURS[kind]];
}

/**
 * The stage that a part of an item is fetched for: the one that the catalogue names, else by the kind of part, else the
 * first of its item.
 */
export function stageOfPart(item: BuildItem, { materialClass, stage }: BuildPart): Stage {
  const worked = stagesOf(item);
  if (stage && worked.includes(stage)) return stage;
  const used = USED_IN[materialClass]?.find((one) => worked.includes(one));
  return used ?? worked[0] ?? WITHOUT_HOURS[item.kind];
}
