import type { Place } from '../findings/index.ts';
import type { Charge, Outboard, Trailer } from './engine-trailer-charge.ts';
import type { Hull } from './hull.ts';
import type { Material, StockFile } from './materials.ts';
import type { Option } from './option.ts';
import type { Order } from './order.ts';
import type { Part } from './part.ts';
import type { Yard } from './yard.ts';

/** A typed value that still knows where it was written. */
export interface Sourced<T> {
  readonly value: T;
  /** The file, relative to the workspace, with forward slashes. */
  readonly file: string;
  /** Where a part of the value stands; the nearest block that is written when the part is not. */
  place(path?: readonly (string | number)[]): Place;
}

export interface GroupedOption extends Sourced<Option> {
  readonly group: string;
  readonly groupOrder: number;
}

export interface ListedPart extends Sourced<Part> {
  readonly supplier: string;
}

/** Everything the shop can sell, by id or code. */
export interface Catalogue {
  readonly yard: Sourced<Yard>;
  readonly hulls: ReadonlyMap<string, Sourced<Hull>>;
  readonly options: ReadonlyMap<string, GroupedOption>;
  readonly outboards: ReadonlyMap<string, Sourced<Outboard>>;
  readonly trailers: ReadonlyMap<string, Sourced<Trailer>>;
  /** Facts of materials by part code. */
  readonly materials: ReadonlyMap<string, Sourced<Material>>;
  /** What the shop holds; undefined when it keeps no file of it. */
  readonly stock?: Sourced<StockFile>;
  readonly charges: ReadonlyMap<string, Sourced<Charge>>;
  /** The newest row of each. */
  readonly parts: ReadonlyMap<string, ListedPart>;
  /** Every row of each, by the day it holds from, the earliest first. */
  readonly partRows: ReadonlyMap<string, readonly ListedPart[]>;
}

export type SourcedOrder = Sourced<Order>;
