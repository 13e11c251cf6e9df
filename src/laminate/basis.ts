import type { Basis } from '../units/index.ts';

/** The words beside every figure of this room that could hurt someone when wrong. */
export const LAMINATE_BASIS = {
  layUp: {
    method: 'Thickness from {fibre} mass and {fibre} fraction by mass, ISO 12215-5:2008 Annex C.',
    validity: 'E-glass in polyester or vinylester without voids.',
    caution: 'Estimated to ISO 12215-5 Annex C; verify by weighing and by a burn-off test.',
  },
  strength: {
    method:
      'Classical beam and sandwich theory with the default properties of ISO 12215-5:2008 Annex C: default, not tested.',
    validity: 'Near quasi-isotropic glass, 20 % to 70 % {fibre} by mass, one core.',
    caution: 'Estimated to ISO 12215-5 defaults; verify by testing a panel of the shop’s own.',
  },
  screening: {
    method:
      'Bottom pressure of a planing boat against one clamped flat panel, after ISO 12215-5:2008, half of the ultimate strength used.',
    validity:
      'Monohull, waterline 2.5 m to 24 m, planing, up to 50 kn. Formulas not read again since.',
    caution:
      'A screening, estimated to ISO 12215-5:2008; verify by a designer’s full calculation and by test.',
  },
  infusion: {
    method: 'Darcy’s law in one dimension from each feed line.',
    validity: 'Feed lines opened together; permeability of the same stack.',
    caution: 'Estimated to Darcy’s law; verify by infusing a sample of the same stack.',
  },
  mixing: {
    method: 'Catalyst by mass within the maker’s range; gel time from the maker’s data.',
    validity: 'Within the temperatures of the maker’s data.',
    caution: 'Follow the maker’s data sheet; verify by a gel cup of the day’s batch.',
  },
} as const satisfies Readonly<Record<string, Basis>>;
