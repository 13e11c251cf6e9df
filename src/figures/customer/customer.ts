import { type Finding, hasErrors, seenBy } from '../../findings/index.ts';
import type { DerivedBuild } from '../../derive/index.ts';
import type { FiguredAlternative } from '../figure-alternatives.ts';
import type { FiguredVariation } from '../figure-variations.ts';
import { toldFacts } from '../told-facts.ts';
import type { Figures } from '../types.ts';
import {
  BANK,
  CIRCUIT,
  DIFFERENCES,
  HULL,
  ITEM,
  LIMITS,
  LINE,
  LOADING,
  MASS,
  ORDER,
  OUTBOARD,
  PAYMENT,
  PRICE,
  RECORD,
  SAID,
  TOWED,
  TRAILER,
  VARIATION,
  YARD,
} from './fields.ts';
import type {
  CustomerAlternative,
  CustomerBuild,
  CustomerElectrics,
  CustomerFigures,
  CustomerFinding,
  CustomerPrice,
  CustomerVariation,
} from './types.ts';

/** The figures of an order without everything that is the shop's own: dropped, not only hidden. */
export function customerFigures(figures: Figures): CustomerFigures {
  const { build, mass, trailerLoad, float, drive, limits, electrics, findings } = figures;
  return {
    audience: 'customer',
    build: buildOf(build),
    facts: toldFacts(figures),
    price: priceOf(figures),
    mass: only(mass, MASS),
    ...(trailerLoad && { trailerLoad }),
    float,
    drive: {
      water: drive.water,
      fuel: drive.fuel,
      loadings: drive.loadings.map((one) => only(one, LOADING)),
    },
    limits: only(limits, LIMITS),
    tow: towOf(figures),
    electrics: 'notComputed' in electrics ? electrics : electricsOf(electrics),
    isWired: isWired(build),
    findings: findingsOf(findings),
  };
}

/** An alternative as the customer may see it. */
export function customerAlternative(one: FiguredAlternative): CustomerAlternative {
  return { audience: 'customer', name: one.name, ...changeOf(one) };
}

/** A variation as the customer may see it. */
export function customerVariation(one: FiguredVariation): CustomerVariation {
  return {
    audience: 'customer',
    ...only(one, ['number', 'added', 'removed']),
    variation: only(one.variation, VARIATION),
    ...changeOf(one),
  };
}

function changeOf({ differences, findings }: FiguredAlternative | FiguredVariation) {
  return {
    canBeBuilt: !hasErrors(findings),
    ...(differences && { differences: only(differences, DIFFERENCES) }),
    findings: findingsOf(findings),
  };
}

const findingsOf = (findings: readonly Finding[]): readonly CustomerFinding[] =>
  findings.filter((one) => seenBy(one, 'customer')).map((one) => only(one, SAID));

function buildOf({
  order,
  yard,
  currency,
  hull,
  outboard,
  trailer,
  items,
  packages,
}: DerivedBuild): CustomerBuild {
  const { discount, condition, record } = order;
  return {
    order: {
      ...only(order, ORDER),
      ...(discount && { discount: only(discount, ['reason']) }),
      ...(condition && { condition: only(condition, ['name']) }),
      ...(record && { record: only(record, RECORD) }),
    },
    yard: only(yard, YARD),
    currency,
    hull: only(hull, HULL),
    ...(outboard && {
      outboard: { ...only(outboard, ['shaft', 'mass']), model: only(outboard.model, OUTBOARD) },
    }),
    ...(trailer && { trailer: only(trailer, TRAILER) }),
    items: items.map((item) => only(item, ITEM)),
    packages: packages.map((one) => only(one, ['name', 'keys'])),
  };
}

function priceOf({ build, price }: Figures): CustomerPrice {
  const free = new Set(build.items.flatMap((item) => (item.free === undefined ? [] : [item.key])));
  return {
    ...only(price, PRICE),
    lines: price.lines.map((line) => ({ ...only(line, LINE), isFree: free.has(line.key) })),
    payments: price.payments.map((one) => only(one, PAYMENT)),
  };
}

function towOf({ tow: { roof, trailer } }: Figures): CustomerFigures['tow'] {
  return {
    ...(roof && { roof }),
    ...(trailer && {
      trailer: { ...only(trailer, TOWED), trailer: only(trailer.trailer, TRAILER) },
    }),
  };
}

function electricsOf({
  volts,
  budget,
  charging,
  circuits,
  bank,
  seriesBanks,
}: Exclude<Figures['electrics'], { readonly notComputed: string }>): CustomerElectrics {
  const shown = (one: typeof bank) => ('notComputed' in one ? one : only(one, BANK));
  return {
    volts,
    budget,
    charging,
    circuits: circuits.map((one) => ({
      volts: one.volts,
      row: { circuit: only(one.row.circuit, CIRCUIT) },
    })),
    bank: shown(bank),
    seriesBanks: seriesBanks.map((one) => ({ volts: one.volts, bank: shown(one.bank) })),
  };
}

/** True of a boat that something electric is in, its outboard's starter too. */
const isWired = ({ items, outboard }: DerivedBuild): boolean =>
  outboard?.model.starting === 'electric' ||
  items.some(({ current, electrics, hours }) => {
    const has =
      electrics !== undefined && Object.values(electrics).some((one) => one !== undefined);
    return current > 0 || has || hours.some(({ stage }) => stage === 'wiring');
  });

/** The fields that are named, of those that there are, and no other. */
function only<Whole extends object, Name extends keyof Whole>(
  whole: Whole,
  names: readonly Name[],
): Pick<Whole, Name>;
function only(whole: object, names: readonly PropertyKey[]): object {
  const wanted = new Set<PropertyKey>(names);
  return Object.fromEntries(Object.entries(whole).filter(([name]) => wanted.has(name)));
}
