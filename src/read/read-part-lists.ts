import path from 'node:path';
import { type Finding, finding, nearestName } from '../findings/index.ts';
import type { Catalogue, ListedPart, Yard } from '../schema/index.ts';
import { CSV_FILE, filesIn, readSource, type Reading } from './folder.ts';
import { readParts } from './read-parts.ts';
import { rowsByCode } from './rows-by-code.ts';
import { clip, listed } from './words.ts';

/**
 * Reads every price list of a workspace.
 *
 * @param yard - to check suppliers and currency against; left out when it could not be read
 * @returns the parts by code: the newest row of each, and all of them
 */
export function readPartLists(
  reading: Reading,
  broken: Set<string>,
  yard: Yard | undefined,
): Pick<Catalogue, 'parts' | 'partRows'> {
  const parts: ListedPart[] = [];
  for (const file of filesIn(reading, 'catalogue/parts', CSV_FILE)) {
    const supplier = path.posix.basename(file).replace(CSV_FILE, '');
    if (yard) reading.findings.push(...supplierFindings(file, supplier, yard));
    const text = readSource(reading, file);
    if (text === undefined) continue;
    const list = readParts(text, file, supplier);
    reading.findings.push(...list.findings);
    for (const code of list.broken) broken.add(code);
    parts.push(...list.parts);
  }
  const foreign = yard ? parts.filter((part) => !hasRate(part, yard)) : [];
  for (const { value } of foreign) broken.add(value.code);
  if (yard) reading.findings.push(...foreign.map((part) => currencyFinding(part, yard)));
  const priced = parts.filter((part) => !foreign.includes(part));
  const { findings, ...rows } = rowsByCode(priced, reading.sources);
  reading.findings.push(...findings);
  return rows;
}

function supplierFindings(file: string, supplier: string, yard: Yard): readonly Finding[] {
  const known = Object.keys(yard.suppliers);
  if (known.includes(supplier)) return [];
  const nearest = nearestName(supplier, known);
  const details = {
    received: `a price list of "${clip(supplier)}"`,
    expected:
      known.length === 0
        ? 'a supplier of the yard file, which names none'
        : `a supplier named in the yard file: ${listed(known)}`,
    remedy:
      nearest === undefined
        ? `Add the supplier to suppliers: in the yard file, as ${clip(supplier)}: { name: …, leadDays: … }, or rename the list`
        : `Did you mean "${nearest}"? Rename the list, or add the supplier to the yard file`,
  };
  return [finding('UNKNOWN_ID', { file }, details)];
}

/** True when a part is priced in the yard's currency or in one that the yard has a rate of. */
const hasRate = ({ value }: ListedPart, { currency, exchange }: Yard): boolean =>
  value.currency === currency || exchange.some((one) => one.currency === value.currency);

/** A price in a currency without a rate would be added up as if it were the yard's. */
const currencyFinding = (part: ListedPart, { currency }: Yard): Finding =>
  finding('WRONG_VALUE', part.place(['currency']), {
    received: `"${clip(part.value.currency)}"`,
    expected: `${currency}, the currency of the yard, or one that the yard has a rate of`,
    remedy:
      'Write the price in the currency of the yard, or add a rate to exchange: in the yard file',
  });
