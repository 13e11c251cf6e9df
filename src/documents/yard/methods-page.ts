import { type Method, METHODS_BY_SUBJECT, type MethodSubject } from '../../figures/index.ts';
import { pageHead } from '../sections/head.ts';
import type { Yard } from '../../schema/index.ts';
import { captioned, column, type Part, row, section, sentences } from '../blocks/block.ts';
import { TO } from './links.ts';
import { NOT_COMPUTED } from './not-computed.ts';
import type { YardPage } from '../blocks/page.ts';

const isSubject = (id: string): id is MethodSubject => Object.hasOwn(METHODS_BY_SUBJECT, id);

/** How every figure is found, by subject, and what is not computed. */
export function methodsView(yard: Yard): YardPage {
  const heading = TO.methods.text;
  const subjects = Object.keys(METHODS_BY_SUBJECT).filter(isSubject);
  return {
    document: pageHead(
      yard,
      heading,
      'Method, source and limits of every figure, and how to confirm it',
    ),
    heading,
    lead: 'By subject: first what to know and what is not computed, then how each figure is found.',
    links: [TO.orders, TO.checks],
    hasContents: true,
    parts: subjects.map(subjectSection),
  };
}

const COLUMNS: readonly (readonly [heading: string, part: keyof Method])[] = [
  ['Figure', 'title'],
  ['How', 'how'],
  ['Source', 'source'],
  ['Valid where', 'validity'],
  ['How to confirm', 'verify'],
];

function subjectSection(id: MethodSubject): Part {
  const { heading, limits } = NOT_COMPUTED[id];
  const methods: readonly Method[] = Object.values(METHODS_BY_SUBJECT[id]);
  const columns = COLUMNS.filter(([, part]) => methods.some((method) => method[part] !== ''));
  return section(
    id,
    heading,
    ...sentences(limits),
    captioned(
      `${heading}: methods`,
      columns.map(([text]) => column('text', text)),
      methods.map((method) => row('plain', ...columns.map(([, part]) => method[part]))),
    ),
  );
}
