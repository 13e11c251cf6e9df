import { currencyCode, isMoney, moneyToText } from '../../money/index.ts';
import { decimalToShortText, isQuantity, QUANTITIES } from '../../units/index.ts';
import { type As, type Fact, type FactKey, isNotComputed } from './fact.ts';
import { METHODS } from './methods.ts';
import { type Edition, inEdition } from '../../words/index.ts';

/** One fact as data for a spreadsheet or a script. */
export interface FigureDatum {
  readonly label: string;
  readonly value: string | number;
  readonly unit: string;
  readonly low?: number;
  readonly high?: number;
  readonly method: string;
  readonly source: string;
}

/** The stable dotted name of a fact. */
export const nameOf = ({ subject, name, of = '' }: FactKey): string =>
  `${subject}.${name.replace('*', () => of)}`;

/** Facts by their stable dotted names, in the order given: the one place where a fact becomes a text and a number. */
export function toData(
  facts: readonly Fact[],
  edition: Edition,
): Readonly<Record<string, FigureDatum>> {
  return Object.fromEntries(facts.map((fact) => [nameOf(fact.key), datumOf(fact, edition)]));
}

function datumOf(fact: Fact, edition: Edition): FigureDatum {
  const edited = (text: string): string => inEdition(text, edition);
  const { label, low, high, source } = fact;
  const { how, source: known, verify } = METHODS[fact.method];
  return {
    label: edited(label),
    value: valueText(fact, edited),
    unit: unitOf(fact),
    ...(low !== undefined && { low: rounded(fact, low) }),
    ...(high !== undefined && { high: rounded(fact, high) }),
    method: edited(verify === '' ? how : `${how} ${verify}`),
    source: edited(source ?? known),
  };
}

function valueText(fact: Fact, edited: (text: string) => string): string | number {
  const { says } = fact;
  if (typeof says === 'string') return says;
  if (typeof says === 'number') return rounded(fact, says);
  if (isMoney(says)) return moneyToText(says);
  return isNotComputed(says)
    ? edited(`not computed: ${says.notComputed}`)
    : decimalToShortText(says);
}

/** Units of what is no quantity, an amount or money. */
const OTHER_UNITS: ReadonlyMap<As, string> = new Map([
  ['exact hours', 'h'],
  ['exact share', '1'],
]);

function unitOf({ as, says, unit }: Fact): string {
  if (isMoney(says)) return currencyCode(says);
  if (isQuantity(as)) return QUANTITIES[as].data.unit;
  return unit ?? OTHER_UNITS.get(as) ?? as;
}

/** In the unit and to the decimals of its quantity; amounts to four. */
function rounded({ as }: Fact, value: number): number {
  if (!isQuantity(as)) return Number(value.toFixed(4)) + 0;
  const { factor, decimals } = QUANTITIES[as].data;
  return Number((value / factor).toFixed(decimals)) + 0;
}
