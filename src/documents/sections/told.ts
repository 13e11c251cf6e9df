import type { CustomerAlternative, CustomerFinding } from '../../figures/index.ts';
import { type Acceptance, safetyFindings, toldToCustomer } from '../../findings/index.ts';
import { type Part, part, words } from '../blocks/block.ts';
import { capital, sentence } from './words.ts';

/** What a customer must know of a boat: every finding of safety and all that was accepted, one paragraph a kind. */
export function shouldKnow(findings: readonly CustomerFinding[]): readonly Part[] {
  const safety = new Set(safetyFindings(findings));
  const told = findings.filter((one) => safety.has(one) || one.accepted);
  const known = words('known', ...toldFindings(told));
  return part('should-know', 'What you should know', ...known, ...(known.length > 0 ? CHECK : []));
}

const CHECK = words(
  'small',
  'Estimated; verify by test and by weighing. Local rules and the plate on the boat come first.',
);

/** Findings in plain words, one paragraph a kind: what it means, then the figures of each; the gravest first. */
function toldFindings(findings: readonly CustomerFinding[]): readonly string[] {
  const paragraphs = new Map<string, Set<string>>();
  const gravestFirst = findings.toSorted((a, b) => gravity(b) - gravity(a));
  for (const one of gravestFirst) {
    const [means, figures] = toldToCustomer(one);
    if (means === undefined) continue;
    const opening = gravity(one) === 2 ? `Cannot be built like this. ${means}` : means;
    const told = paragraphs.get(opening) ?? new Set();
    if (figures !== undefined) told.add(sentence(capital(figures)));
    if (one.accepted) told.add(acceptedText(one.accepted));
    paragraphs.set(opening, told);
  }
  return [...paragraphs].map(([means, figures]) => [sentence(means), ...figures].join(' '));
}

const acceptedText = ({ by, date, reason }: Acceptance): string =>
  `Accepted by ${by} on ${date}: ${sentence(reason)}`;

/** What a customer is told of a change before they choose it; never nothing of one that cannot be built. */
export function changeCautions({
  canBeBuilt,
  findings,
}: Pick<CustomerAlternative, 'canBeBuilt' | 'findings'>): readonly string[] {
  const isSaid = canBeBuilt || findings.some(({ severity }) => severity === 'error');
  return [...(isSaid ? [] : ['Cannot be built like this. Ask us why.']), ...toldFindings(findings)];
}

const gravity = ({ severity }: CustomerFinding): number =>
  ['note', 'warning', 'error'].indexOf(severity);
