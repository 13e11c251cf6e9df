import { type CodeFacts, FINDING_CODES } from '../../findings/index.ts';
import type { Yard } from '../../schema/index.ts';
import { byTier, type Check } from '../../verify/index.ts';
import { captioned, column, heads, row, type Row, section } from '../blocks/block.ts';
import type { YardPage } from '../blocks/page.ts';
import { TO } from './links.ts';
import { pageHead } from '../sections/head.ts';
import { capital } from '../sections/words.ts';

/** Why to trust a figure: every check against the published world, and every finding that a check can raise. */
export function checksView(checks: readonly Check[], yard: Yard): YardPage {
  const areas = [...new Set(checks.map(({ area }) => area))];
  const passed = checks.filter(({ pass }) => pass).length;
  const tiers = byTier(checks).map(([tier, count]) => `${count} ${tier}`);
  const heading = TO.checks.text;
  return {
    document: pageHead(yard, heading, 'What the computations were held against'),
    heading,
    lead: `${passed} of ${checks.length} checks pass. Each row holds a computation of this program against a value from elsewhere: ${tiers.join(', ')}. First hand is a value that its source prints and that was read there; derived is a published rule or a closed form, worked apart from the program.`,
    links: [TO.orders, TO.methods, TO.fields],
    hasContents: true,
    parts: [
      ...areas.map((area, index) => {
        const rows = checks.filter((check) => check.area === area).map(checkRow);
        const heard = capital(area);
        return section(`area-${index + 1}`, heard, captioned(heard, COLUMNS, rows));
      }),
      section('codes', CODES, captioned(CODES, CODE_COLUMNS, codeRows())),
    ],
  };
}

const COLUMNS = [
  ...heads('text', 'Case', 'Source', 'How known'),
  ...heads('num', 'Wanted', 'Ours'),
  column('text', 'Unit'),
  ...heads('num', 'Error', 'Tolerance'),
  column('text', 'Result'),
];

function checkRow({
  name,
  source,
  tier,
  published,
  ours,
  unit,
  error,
  tolerance,
  pass,
}: Check): Row {
  return row(
    pass ? 'plain' : 'flag',
    name,
    source,
    tier,
    plain(published),
    plain(ours),
    unit,
    error === 0 ? '0' : error.toExponential(1),
    tolerance === 0 ? 'exact' : tolerance.toExponential(1),
    pass ? 'pass' : 'fails',
  );
}

/** Up to ten significant digits, without an exponent where that can be read. */
function plain(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(10))) : 'not computed';
}

const CODES = 'What the checks can find';
const CODE_COLUMNS = heads(
  'text',
  'Code',
  'Severity',
  'Who sees it',
  'Safety',
  'What it means',
  'How to fix it',
);

const codeRows = (): readonly Row[] =>
  Object.entries<CodeFacts>(FINDING_CODES).map(
    ([code, { severity, audience, safety, means, remedy }]) =>
      row('plain', code, severity, audience, safety === true ? 'safety' : '', means, remedy),
  );
