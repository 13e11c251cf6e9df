import { type Finding, finding, type Place } from '../findings/index.ts';
import type {
  Catalogue,
  GroupedOption,
  Hull,
  Order,
  Outboard,
  Sourced,
  SourcedOrder,
  Trailer,
} from '../schema/index.ts';
import { unknownId } from './check-compatibility.ts';
import { lookUpPackages, type NamedPackage } from './packages.ts';

/** The entries that an order names and that the catalogue has, each at the place where the order names it. */
export interface Entries {
  readonly options: readonly {
    readonly entry: GroupedOption;
    readonly ordered: Order['options'][number];
    readonly place: Place;
  }[];
  readonly outboard: Sourced<Outboard> | undefined;
  readonly trailer: Sourced<Trailer> | undefined;
  readonly packages: readonly NamedPackage[];
}

interface LookedUp {
  readonly hull: Sourced<Hull> | undefined;
  readonly entries: Entries;
  readonly findings: readonly Finding[];
}

/**
 * Looks every name of an order up in the catalogue; a name that is not there is a finding.
 *
 * @param broken - ids of entries that could not be read
 */
export function lookUpEntries(
  order: SourcedOrder,
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
): LookedUp {
  const { value } = order;
  const findings: Finding[] = [];
  const lookUp = <T>(
    kind: string,
    id: string | undefined,
    known: ReadonlyMap<string, T>,
    place: Place,
  ) => {
    if (id === undefined) return undefined;
    const entry = known.get(id);
    if (entry === undefined) findings.push(notFound(kind, id, known, place, broken));
    return entry;
  };
  const hull = lookUp('hull', value.hull, catalogue.hulls, order.place(['hull']));
  const named = lookUpPackages(order, catalogue);
  findings.push(...named.findings);
  const written = value.options.map((ordered, index) => ({
    ordered,
    place: order.place(['options', index]),
  }));
  const options = [...written, ...named.brought].flatMap(({ ordered, place }) => {
    const entry = lookUp('option', ordered.option, catalogue.options, place);
    return entry ? [{ entry, ordered, place }] : [];
  });
  const model = order.place(['outboard', 'model']);
  const outboard = lookUp('outboard', value.outboard?.model, catalogue.outboards, model);
  const trailer = lookUp('trailer', value.trailer, catalogue.trailers, order.place(['trailer']));
  return { hull, entries: { options, outboard, trailer, packages: named.packages }, findings };
}

function notFound(
  kind: string,
  id: string,
  known: ReadonlyMap<string, unknown>,
  place: Place,
  broken: ReadonlySet<string>,
): Finding {
  if (!broken.has(id)) return unknownId(kind, id, known.keys(), place);
  const received = `the ${kind} "${id}", which has mistakes of its own`;
  return finding('UNKNOWN_ID', place, { received, remedy: `Fix ${id} in the catalogue first` });
}
