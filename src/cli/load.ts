import { figureOrders, type FiguredOrder } from '../figures/index.ts';
import type { Finding } from '../findings/index.ts';
import { readWorkspace } from '../read/index.ts';
import { checkCatalogue } from '../resolve/index.ts';
import type { Catalogue } from '../schema/index.ts';

export interface LoadedWorkspace {
  readonly catalogue?: Catalogue;
  readonly orders: readonly FiguredOrder[];
  /** Findings of files and of the catalogue; those of an order stand with the order. */
  readonly findings: readonly Finding[];
  readonly brokenOrders: readonly { readonly file: string; readonly number?: string }[];
  readonly sources: ReadonlyMap<string, string>;
}

/** Reads a workspace and computes every order that can be. */
export function loadWorkspace(folder: string): LoadedWorkspace {
  const { catalogue, orders, findings, sources, brokenIds, brokenOrders } = readWorkspace(folder);
  if (!catalogue) return { orders: [], findings, brokenOrders, sources };
  return {
    catalogue,
    orders: figureOrders(orders, catalogue, brokenIds),
    findings: [...findings, ...checkCatalogue(catalogue, brokenIds)],
    brokenOrders,
    sources,
  };
}

/** Every finding of a workspace, or those of one order and of the catalogue. */
export function allFindings(
  { orders, findings }: LoadedWorkspace,
  only?: string,
): readonly Finding[] {
  const wanted = orders.filter(({ order }) => only === undefined || order.value.number === only);
  return [...findings, ...wanted.flatMap((order) => order.findings)];
}

/** True when an order of that number was read, broken or sound. */
export function knowsOrder({ orders, brokenOrders }: LoadedWorkspace, number: string): boolean {
  return (
    orders.some(({ order }) => order.value.number === number) ||
    brokenOrders.some((one) => one.number === number)
  );
}
