import type { Figures, LimitsFigures } from '../../figures/index.ts';
import { limitsTables } from './limits-tables.ts';
import { type Formatter, formatterOf, whyNot } from '../../units/index.ts';
import { type Part, section, sentences, smallPrint } from '../blocks/block.ts';
import { capital, sentence } from '../sections/words.ts';

type Rating = Exclude<LimitsFigures['ratings'], { readonly notComputed: string }>[number];

/** People, load and power by each of the yard's methods, the screening for categories, the outboard's fit. */
export function limitsSection(figures: Figures): Part {
  const { limits, build } = figures;
  const ratings = 'notComputed' in limits.ratings ? [] : limits.ratings;
  return section(
    'limits',
    'Limits',
    ...sentences([
      'Estimates beside the shop’s own ratings; none of them is a certificate.',
      ...('notComputed' in limits.ratings ? [`Ratings: ${whyNot(limits.ratings)}.`] : []),
      carriesWords(limits, formatterOf(build.yard)),
      ...limits.carries.standing.map((line) => `${line}.`),
      ...(build.yard.limits.categories.length > 0 ? [categoryWords(limits)] : []),
    ]),
    ...limitsTables(figures, formatterOf(build.yard)),
    ...smallPrint([
      ...ratings.map(ratingNote),
      'Design-category check: freeboard, heel and downflooding height only, estimated to ISO 12217-1:2015 from secondary sources, not checked against the standard. Verify by the tests of ISO 12217.',
    ]),
  );
}

/** How a method counts, what for, and who verifies it. */
function ratingNote({
  name,
  loadMeans,
  validity,
  symbols,
  besides,
  power,
  caution,
}: Rating): string {
  return [
    `${name}: load is ${loadMeans}. For ${validity}.`,
    ...(typeof power === 'object' ? [`Power ${whyNot(power)}.`] : []),
    `Symbols: ${symbols.map(([symbol, meaning]) => `${symbol}, ${meaning}`).join('; ')}.`,
    ...besides.map((one) => sentence(capital(one))),
    `${capital(caution)}.`,
  ].join(' ');
}

/** What documents say that the boat may carry. */
function carriesWords({ carries }: LimitsFigures, format: Formatter): string {
  const { people, load, power } = carries;
  return `This boat may carry ${format.number(people.people, 0)} people, ${people.words}; ${format.mass(load.mass)} of load, limited by ${load.by}; and an outboard of ${format.power(power.power)}, limited by ${power.by}.`;
}

/** What a screening comes to: never a category. */
function categoryWords({ categories }: LimitsFigures): string {
  const verify = 'verify by the tests of ISO 12217.';
  if ('notComputed' in categories) {
    return `Loaded as ordered, screened for neither category C nor D: ${categories.notComputed}; ${verify}`;
  }
  const passed = categories.find(({ passes }) => passes);
  return passed
    ? `Loaded as ordered, screened for category ${passed.category}: an estimate, not a category; ${verify}`
    : `Loaded as ordered, screened for neither category C nor D; ${verify}`;
}
