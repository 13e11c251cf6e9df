import type { Place } from '../findings/index.ts';
import type { Currency, Money } from '../money/index.ts';
import type {
  Hull,
  Material,
  Option,
  Order,
  Outboard,
  PartLaminate,
  Shaft,
  Stage,
  Trailer,
  WaterUse,
  Yard,
} from '../schema/index.ts';
import type { FloatFacts } from './float-facts.ts';
import type { Amperes, CubicMetres, Decimal, IsoDate, Kilograms, Point3 } from '../units/index.ts';

export interface BuildPart {
  readonly code: string;
  readonly supplier: string;
  readonly description: string;
  readonly materialClass: string;
  readonly unit: string;
  /** Of one of that unit; absent from what was kept before it was. */
  readonly unitMass?: Kilograms;
  /** Used in the boat, without wastage. */
  readonly quantity: Decimal;
  /** Of one unit, in the currency of the price list. */
  readonly unitCost: Money;
  readonly priceDate: IsoDate;
  /** Units in what the supplier sells at a time. */
  readonly pack?: Decimal;
  readonly buy?: 'whole' | 'share';
  /** The stage that it is fetched for, when the catalogue says so. */
  readonly stage?: Stage;
}

export interface BuildHours {
  readonly stage: Stage;
  readonly hours: Decimal;
}

/** What the wiring needs to know of an item. */
export type ElectricFacts = Pick<Option, 'circuit' | 'battery' | 'charger' | 'pump' | 'panel'>;

export type ItemKind = 'shell' | 'structure' | 'option' | 'extra' | 'outboard' | 'trailer';

/** The lay-up of an item, and what is in the item's mass beside it. */
export interface ItemLayUp {
  readonly laminate: PartLaminate;
  readonly rest: Kilograms;
}

/** One thing in the boat. Every figure and every document is made from the list of these. */
export interface BuildItem {
  /** Unique within the Build. */
  readonly key: string;
  readonly kind: ItemKind;
  readonly group: string;
  readonly name: string;
  readonly description?: string;
  /** Why it costs the customer nothing. */
  readonly free?: string;
  /** For the workshop only. */
  readonly notes: readonly string[];
  readonly marginClass: string;
  readonly quantity: number;
  readonly parts: readonly BuildPart[];
  readonly hours: readonly BuildHours[];
  /** Bought or charged without being a listed part: a one-off item's cost, the wear of the moulds. */
  readonly otherCost?: Money;
  /** Of all that are ordered. */
  readonly mass: Kilograms;
  /** False when it is the sum of its parts. */
  readonly massGiven: boolean;
  readonly at: Point3;
  /** Of an outboard: what is listed beside it, midway between it and who steers. */
  readonly rigging?: { readonly mass: Kilograms; readonly at: Point3 };
  /** False when nobody gave a position and the middle of the boat stands in for it. */
  readonly placed: boolean;
  readonly current: Amperes;
  readonly electrics?: ElectricFacts;
  /** Of all that are ordered, before tax. */
  readonly fixedPrice?: Money;
  readonly serial: boolean;
  /** What an option has to do with helm, bow motor and drag. */
  readonly performance?: Pick<Option, 'helm' | 'bowMotor' | 'holdingBattery' | 'appendage'>;
  /** How it is laid up, of what the shop laminates itself; the shell's stands with the hull. */
  readonly layUp?: ItemLayUp;
  /** What it does to how it floats, beside its mass. */
  readonly float?: FloatFacts;
  readonly place: Place;
}

export interface BuildCharge {
  readonly id: string;
  readonly name: string;
  readonly amount: Money;
  /** True when the shop's tax is added to it. */
  readonly taxed: boolean;
}

/** The rate of another currency that an order is priced with. */
export interface Exchange {
  readonly currency: string;
  /** Units of the yard's currency for one of the other. */
  readonly rate: Decimal;
  readonly date: IsoDate;
  readonly buffer: Decimal;
}

/** A package that an order has, with the items that are in it. */
export type BuildPackage = {
  readonly id: string;
  readonly name: string;
  readonly keys: readonly string[];
} & ({ readonly price: Decimal } | { readonly share: Decimal });

export type BuildTrailer = Trailer & { readonly tare: Kilograms };

/** The resolved order: the one list that everything is computed from. */
export interface Build {
  /** People and water are filled in, where the order does not say: all that the hull is rated for; as hull or yard says. */
  readonly order: Order & { readonly boat: { readonly people: number; readonly water: WaterUse } };
  readonly yard: Yard;
  readonly currency: Currency;
  readonly hull: Hull;
  readonly outboard?: { readonly model: Outboard; readonly shaft: Shaft; readonly mass: Kilograms };
  /** Its tare is filled in, where the catalogue does not say: that of its parts. */
  readonly trailer?: BuildTrailer;
  /** Outboards of the catalogue, to hold this one against. */
  readonly outboards: readonly Outboard[];
  readonly items: readonly BuildItem[];
  /** Where the fuel is, boat axes, in the tanks that are ordered, else where the hull file says; and what they hold. */
  readonly tank: {
    readonly at: Point3;
    readonly builtIn: CubicMetres;
    /** Comes with the outboard. */
    readonly portable: CubicMetres;
  };
  /** Facts of materials by part code. */
  readonly materials: ReadonlyMap<string, Material>;
  /** What the shelf holds, by part code; undefined when nobody counts it. */
  readonly stock?: { readonly counted: IsoDate; readonly held: ReadonlyMap<string, Decimal> };
  readonly charges: readonly BuildCharge[];
  readonly packages: readonly BuildPackage[];
  /** The day whose prices and rates it has. */
  readonly pricedOn: IsoDate;
  /** By ISO 4217 code. */
  readonly exchange: Readonly<Record<string, Exchange>>;
  /** Where a part of the order stands in its file. */
  place(path?: readonly (string | number)[]): Place;
}
