import type { CustomerFigures } from '../../figures/index.ts';
import { type Block, under, words } from '../blocks/block.ts';

/**
 * What can hurt the owner, in a few words. It reminds; local rules and the makers' manuals come before it.
 *
 * @source common practice, no source
 */
export function handoverCautions({ build, isWired }: CustomerFigures): readonly Block[] {
  const told = [
    AFLOAT,
    FUEL,
    isWired ? WIRING : undefined,
    build.trailer ? TOWING : undefined,
    RULES,
  ];
  return told.flatMap((one) =>
    one ? [under('caution', one.heading, ...words('list', ...one.lines))] : [],
  );
}

interface CautionGroup {
  readonly heading: string;
  readonly lines: readonly string[];
}

const AFLOAT: CautionGroup = {
  heading: 'Load and stability',
  lines: [
    'Never carry more people or load than the figures in this pack, and less in wind or waves. A boat within its load can still capsize.',
    'Keep weight low, spread and secured. People who stand, lean or move together to one side can roll the boat over.',
    'Water inside makes the boat heavy and unsteady: pump it out before you go on.',
    'Anything added later, high up or far aft, changes how the boat floats. Ask us first.',
    'Life jackets on. Whoever steers wears the engine’s cut-off cord. Stop the engine when somebody is in the water nearby.',
  ],
};

const FUEL: CautionGroup = {
  heading: 'Fuel and batteries',
  lines: [
    '{Petrol} {vapour} is heavier than air, gathers low in a boat and explodes. Engine off, no flame, nobody smoking while you fill; take portable tanks out of the boat to fill them.',
    'Smell {petrol}? Do not start the engine and touch no switch. Air the boat and find the leak.',
    'A battery on charge can give off gas that explodes. Charge with the charger meant for it, with air around it, and keep its terminals covered and strapped.',
    'Exhaust gas kills without a smell: never idle the engine under a closed canopy.',
  ],
};

const WIRING: CautionGroup = {
  heading: 'Wiring and fuses',
  lines: [
    'Turn the battery off before you open a panel and when you leave the boat.',
    'A fuse protects its wire. Replace it with one of the same rating, never a larger one. If it blows again, have the circuit looked at.',
    'Do not add equipment to a wire that was not made for it.',
  ],
};

const TOWING: CautionGroup = {
  heading: 'Towing',
  lines: [
    'Before every trip: coupling locked, chains on, lights and brakes working, {tyres} and wheel nuts checked, boat tied down at bow and stern, outboard on its support.',
    'What the vehicle may tow and the mass on its tow ball are limits of the vehicle: look them up and weigh. Whatever you carry in the boat is part of the load.',
    'Let hot wheel hubs cool before you reverse them into water. Chock the wheels before anyone goes behind or under the boat.',
  ],
};

const RULES: CautionGroup = {
  heading: 'Rules',
  lines: [
    'This list is a reminder, not a set of instructions. Local rules, the makers’ manuals and the plate on the boat come before it.',
    'Nothing in this pack is a claim that the boat complies with a rule or standard. Registration, {licence}, safety equipment and insurance are the owner’s to arrange.',
  ],
};
