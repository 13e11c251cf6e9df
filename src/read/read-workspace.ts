import { type Finding, finding } from '../findings/index.ts';
import { isFolder, type Reading } from './folder.ts';
import { readCatalogue, type ReadCatalogue } from './read-catalogue.ts';
import { empty, type IssuedFiles, readIssued } from './read-issued.ts';
import { type OrderFilter, readOrders, type ReadOrders } from './read-orders.ts';

export interface Workspace extends ReadCatalogue, ReadOrders {
  readonly issued: IssuedFiles;
  readonly findings: readonly Finding[];
  /** The text of every file that was read, by its name; for showing a line with its finding. */
  readonly sources: ReadonlyMap<string, string>;
}

interface ReadOptions {
  /** Left out: all. The catalogue is read whole either way. */
  readonly orders?: OrderFilter;
}

/**
 * Reads a folder with `catalogue/` and `orders/`.
 *
 * @returns all that is sound, and a finding for all that is not: it never throws for what a person wrote. File
 * names are relative to the workspace, with forward slashes; files, entries and findings come in the same order
 * on every machine.
 */
export function readWorkspace(workspace: string, options: ReadOptions = {}): Workspace {
  const reading: Reading = { workspace, sources: new Map(), findings: [] };
  const { findings, sources } = reading;
  if (!isFolder(workspace)) {
    const place = { file: workspace };
    findings.push(finding('FILE_MISSING', place, { received: 'no such folder' }));
    return {
      catalogue: undefined,
      brokenIds: new Set(),
      orders: [],
      brokenOrders: [],
      issued: empty(),
      findings,
      sources,
    };
  }
  const catalogue = readCatalogue(reading);
  const orders = readOrders(reading, options.orders ?? (() => true));
  const issued = readIssued(reading);
  return { ...catalogue, ...orders, issued, findings, sources };
}
