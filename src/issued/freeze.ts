import type { Figures } from '../figures/index.ts';
import type { IsoDate } from '../units/index.ts';
import { type Data, fromData, isRecord, toData } from './data.ts';
import type { InputFile, IssuedQuote } from './types.ts';

/** Names the shape of the content; a later shape has another number and is read beside this one. */
const FORMAT = 'orlop issued quote 1';

interface Freezing {
  readonly figures: Figures;
  readonly revision: number;
  readonly issuedOn: IsoDate;
  readonly inputs: readonly InputFile[];
  readonly view: unknown;
}

/** The content of an issued quote's file: all that was computed and all that was said, as plain data. */
export function freezeQuote({ figures, revision, issuedOn, inputs, view }: Freezing): Data {
  const { findings: _, ...computed } = figures;
  return {
    format: FORMAT,
    number: figures.build.order.number,
    revision,
    issuedOn,
    inputs: inputs.map(({ file, sha256 }) => ({ file, sha256 })),
    figures: toData(computed),
    view: toData(view),
  };
}

/**
 * Reads the content of an issued quote's file.
 *
 * @param content - already held against its own digest: it is what `freezeQuote` gave
 * @returns undefined when it is of another format
 */
export function openIssued(content: unknown): IssuedQuote | undefined {
  if (!isRecord(content) || content['format'] !== FORMAT) return undefined;
  const issued = fromData(content);
  if (!isIssued(issued)) return undefined;
  const { build } = issued.figures;
  const file = build.items[0]?.place.file ?? '';
  return {
    ...issued,
    figures: { ...issued.figures, build: { ...build, place: () => ({ file }) } },
  };
}

/** The digest vouches for the content, so what has the parts of an issued quote is one. */
function isIssued(value: unknown): value is IssuedQuote {
  if (!isRecord(value) || !isRecord(value['figures'])) return false;
  const { build, price } = value['figures'];
  return isRecord(build) && isRecord(price) && Array.isArray(build['items']);
}
