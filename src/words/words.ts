/**
 * Words that the English of a place spells or says otherwise: as our sentences have them, and in the United States.
 * Australia, New Zealand, the United Kingdom and everywhere else read the first.
 */
const AMERICAN: ReadonlyMap<string, string> = new Map([
  ['aluminium', 'aluminum'],
  ['centre', 'center'],
  ['centres', 'centers'],
  ['centreline', 'centerline'],
  ['colour', 'color'],
  ['colours', 'colors'],
  ['draught', 'draft'],
  ['fibre', 'fiber'],
  ['grey', 'gray'],
  ['kerb', 'curb'],
  ['labour', 'labor'],
  ['licence', 'license'],
  ['litre', 'liter'],
  ['litres', 'liters'],
  ['metre', 'meter'],
  ['metres', 'meters'],
  ['mould', 'mold'],
  ['moulded', 'molded'],
  ['moulding', 'molding'],
  ['mouldings', 'moldings'],
  ['moulds', 'molds'],
  ['petrol', 'gasoline'],
  ['tyre', 'tire'],
  ['tyres', 'tires'],
  ['vapour', 'vapor'],
]);

/** The words of which an edition has its own, for whoever looks for one that is written bare. */
export const EDITED_WORDS: readonly string[] = [...AMERICAN.keys()];

/** Where documents are written for, and what the shop itself calls the final price. */
export interface Edition {
  /** A BCP 47 tag. */
  readonly locale: string;
  /** Left out: what the place calls it. */
  readonly finalPrice?: string | undefined;
}

const DRIVE_AWAY: ReadonlySet<string> = new Set(['AU', 'NZ']);

/**
 * A text in the English of its place: `{draught}` becomes "draught" or "draft", `{Draught}` keeps its capital,
 * `{Final price}` is what the place or the shop calls it. In a drawing inside a page the braces are `%7B` and `%7D`.
 *
 * @returns the text, in which braces around anything else stand as they are
 */
export function inEdition(text: string, { locale, finalPrice }: Edition): string {
  const { language, region = '' } = new Intl.Locale(locale);
  const isAmerican = language === 'en' && region === 'US';
  const price = finalPrice ?? (DRIVE_AWAY.has(region) ? 'Drive-away price' : 'Total price');
  const wordOf = (name: string): string | undefined => {
    if (name === 'final price') return price;
    const american = AMERICAN.get(name);
    return american === undefined || isAmerican ? american : name;
  };
  return text.replaceAll(
    /(?:\{|%7B)([A-Za-z][a-z]*(?:(?: |%20)[a-z]+)?)(?:\}|%7D)/g,
    (whole: string, token: string) => {
      const word = wordOf(token.replace('%20', ' ').toLowerCase());
      if (word === undefined) return whole;
      const first = word.charAt(0);
      const isCapital = token.charAt(0) !== token.charAt(0).toLowerCase();
      const small = /^\p{Lu}{2}/u.test(word) ? first : first.toLowerCase();
      const told = `${isCapital ? first.toUpperCase() : small}${word.slice(1)}`;
      return whole.startsWith('%') ? encodeURIComponent(told) : told;
    },
  );
}

/** Plain data with every text in it in the English of its place. */
export function editedData(data: unknown, edition: Edition): unknown {
  const edited: unknown = JSON.parse(JSON.stringify(data), (_, value: unknown) =>
    typeof value === 'string' ? inEdition(value, edition) : value,
  );
  return edited;
}
