import { type Finding, finding, type Place } from '../findings/index.ts';
import type { Catalogue, Order, SourcedOrder, Yard } from '../schema/index.ts';
import type { BuildPackage } from './build.ts';
import { unknownId } from './check-compatibility.ts';
import { optionKey } from './float-facts.ts';

type Offer = Yard['packages'][number];

/** A package of the yard that an order names. */
export interface NamedPackage {
  readonly offer: Offer;
  readonly place: Place;
}

interface LookedUpPackages {
  readonly packages: readonly NamedPackage[];
  /** Options of the packages that the order does not list itself. */
  readonly brought: readonly {
    readonly ordered: Order['options'][number];
    readonly place: Place;
  }[];
  readonly findings: readonly Finding[];
}

/** The packages that an order names, the options that they bring, and what is wrong with them. */
export function lookUpPackages(order: SourcedOrder, { yard }: Catalogue): LookedUpPackages {
  const offers = new Map(yard.value.packages.map((offer) => [offer.id, offer] as const));
  const findings: Finding[] = [];
  const packages = order.value.packages.flatMap((id, index) => {
    const place = order.place(['packages', index]);
    const offer = offers.get(id);
    if (!offer) findings.push(unknownId('package', id, offers.keys(), place));
    return offer ? [{ offer, place }] : [];
  });
  const listed = new Set(order.value.options.map(({ option }) => option));
  const brought = packages.flatMap(({ offer, place }) =>
    offer.options
      .filter((option) => !listed.has(option))
      .map((option) => ({ ordered: { option, quantity: 1 }, place })),
  );
  findings.push(...inTwoPackages(packages), ...notOne(packages, order));
  return { packages, brought: unique(brought), findings };
}

/** The packages of a Build: the keys of the items that each is made of. */
export const buildPackages = (packages: readonly NamedPackage[]): readonly BuildPackage[] =>
  packages.map(({ offer: { id, name, options, ...terms } }) => ({
    id,
    name,
    keys: options.map(optionKey),
    ...('price' in terms ? { price: terms.price } : { share: terms.share }),
  }));

function inTwoPackages(packages: readonly NamedPackage[]): readonly Finding[] {
  const first = new Map<string, Offer>();
  return packages.flatMap(({ offer, place }) =>
    offer.options.flatMap((option) => {
      const other = first.get(option);
      first.set(option, other ?? offer);
      if (!other) return [];
      const received = `${option}, in ${other.name} and in ${offer.name}`;
      return [
        finding('ORDERED_TWICE', place, { received, remedy: 'Take one of the packages out' }),
      ];
    }),
  );
}

/** A package has one of each option; the price of another count is not known. */
const notOne = (packages: readonly NamedPackage[], order: SourcedOrder): readonly Finding[] =>
  packages.flatMap(({ offer }) =>
    order.value.options.flatMap(({ option, quantity }, index) =>
      quantity === 1 || !offer.options.includes(option)
        ? []
        : [
            finding('QUANTITY_OUT_OF_RANGE', order.place(['options', index]), {
              received: `${quantity} of ${option}`,
              expected: `1, as in ${offer.name}`,
              remedy: `Order 1, or take ${offer.id} out of the packages`,
            }),
          ],
    ),
  );

const unique = (brought: LookedUpPackages['brought']): LookedUpPackages['brought'] =>
  brought.filter(
    ({ ordered }, index) =>
      brought.findIndex((one) => one.ordered.option === ordered.option) === index,
  );
