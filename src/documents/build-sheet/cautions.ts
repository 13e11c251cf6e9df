import type { Stage } from '../../schema/index.ts';

const SHEET = 'Follow local rules and the maker’s data sheet; they come before this list.';

const PEROXIDE =
  'Peroxide catalyst burns eyes and skin: goggles and gloves on. In an eye: rinse with water at once, go on rinsing, send for medical help.';
const NEVER_TOGETHER =
  'Never let catalyst and accelerator meet undiluted: together they can explode. Stir one fully into the resin before the other comes near.';
const STYRENE =
  'Styrene {vapour}: extraction on, {vapour} mask on, no flame and no spark in the shop.';

const HEAT =
  'A full pot heats by itself and can burn: mix small, spread it soon. A hot pot goes outside, on bare ground.';

/**
 * What can hurt someone in a stage, in a few words. It reminds; it does not teach.
 *
 * @source common practice, no source
 */
export const STAGE_CAUTIONS: Readonly<Partial<Record<Stage, readonly string[]>>> = {
  gelcoat: [PEROXIDE, NEVER_TOGETHER, STYRENE, HEAT, SHEET],
  laminate: [PEROXIDE, NEVER_TOGETHER, STYRENE, HEAT, SHEET],
  infusion: [
    PEROXIDE,
    NEVER_TOGETHER,
    STYRENE,
    'Watch supply buckets and catch pot: resin left deep heats by itself and can burn. Have an empty place outside for them.',
    SHEET,
  ],
  cure: [
    'Curing resin goes on heating and giving off {vapour}: extraction on, nothing laid over it, someone looks in.',
    'Rags, offcuts and pots with live resin: spread out or under water, outside, until cold.',
    STYRENE,
    SHEET,
  ],
  wiring: [
    'Battery off before a wire is touched, and last to be connected.',
    'A fuse protects its wire: never fit a larger one than the wire allows.',
    'Batteries on charge give off gas that explodes: air in, sparks out.',
    SHEET,
  ],
  engine: [
    'Lift with gear rated for the mass; nobody under it, no hand between bracket and transom.',
    'Battery off while working. Propeller off before the engine is run ashore, water on.',
    '{Petrol} {vapour} lies low and lights easily: air in, sparks out.',
    SHEET,
  ],
  trailer: [
    'Chock the wheels before anyone goes under or behind; never rely on the winch alone to hold the boat.',
    'Stand clear of the strap when winching.',
    'Coupling, chains, lights and brakes are checked before the boat leaves the yard.',
    SHEET,
  ],
  'water-trial': [
    'Life jacket on everybody, cut-off cord on whoever steers.',
    'Someone ashore knows where you are and when to expect you.',
    'No more people and load than the shop rates the boat for; build up speed in steps. Water inside: stop and come back.',
    SHEET,
  ],
};
