import type { Yard } from '../../schema/index.ts';
import { present } from './words.ts';

/** The shop as at the head of a letter. */
export interface ShopHead {
  readonly name: string;
  /** Empty when the shop has none. */
  readonly strapline: string;
  readonly address: readonly string[];
  /** Telephone, electronic mail, registration: those that there are. */
  readonly reach: readonly string[];
}

/** The shop's head for a letter to a customer. */
export function shopHead({ shop }: Pick<Yard, 'shop'>): ShopHead {
  const { name, strapline = '', address, phone, email, registration } = shop;
  return { name, strapline, address, reach: present([phone, email, registration]) };
}
