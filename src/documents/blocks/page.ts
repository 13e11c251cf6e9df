import type { PageHead } from '../sections/head.ts';
import type { Link, Part } from './block.ts';

/** A page of the yard, for a screen. */
export interface YardPage {
  readonly document: PageHead;
  readonly heading: string;
  readonly lead: string;
  readonly links: readonly Link[];
  /** True: its parts are listed at its head. */
  readonly hasContents: boolean;
  readonly parts: readonly Part[];
}
