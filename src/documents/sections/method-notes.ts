import { type MethodId, METHODS } from '../../figures/index.ts';
import { bareTable, type Block, column, part, type Part, row, words } from '../blocks/block.ts';
import { sentence } from './words.ts';

/** A figure as it is composed: what it is, in a few words what it depends on, and the methods it was found by. */
export interface FoundFigure {
  readonly label: string;
  readonly value: string;
  readonly detail: string;
  readonly methods: readonly MethodId[];
}

/** A figure with what it depends on, and its methods in the order of their weight. */
export const found = (
  label: string,
  value: string,
  detail: string,
  ...methods: readonly MethodId[]
): FoundFigure => ({ label, value, detail, methods });

/**
 * Marks from 1, in the order in which the figures first ask for a method.
 *
 * @param basis - how the shop rates the hull
 * @param beside - what a method has to say of this boat alone
 * @returns figures as a table with marks, and the part that the marks lead to
 */
export function methodNotes(
  figures: readonly FoundFigure[],
  basis: string,
  beside: Partial<Record<MethodId, string>>,
): {
  readonly marked: (figures: readonly FoundFigure[]) => readonly Block[];
  readonly methods: readonly Part[];
} {
  const ids = [...new Set(figures.flatMap(({ methods }) => methods))];
  return {
    marked: (rows) =>
      bareTable(
        FIGURE_COLUMNS,
        rows.map(({ label, value, detail, methods }) => {
          const marks = methods.map((id) => ids.indexOf(id) + 1).join(', ');
          return row('plain', { text: label, marks }, value, detail);
        }),
      ),
    methods: part(
      'how-found',
      'How the figures were found',
      ...words(
        'plain',
        `The small numbers beside the figures lead here. How the shop rates this hull: ${sentence(basis)} All figures are estimates until the boat is tested and weighed; they are not proof of compliance with any rule.`,
      ),
      ...words(
        'methods',
        ...ids.map((id) => ({ text: METHODS[id].title, under: methodText(id, beside[id]) })),
      ),
    ),
  };
}

const FIGURE_COLUMNS = [
  column('head', 'Figure'),
  column('value', 'Value'),
  column('note', 'What it depends on'),
];

/** Methods in small print: what each finds and how, from which source, where it holds, how to confirm it. */
export const methodLines = (...ids: readonly MethodId[]): readonly string[] =>
  ids.map((id) => `${METHODS[id].title}. ${methodText(id)}`);

function methodText(id: MethodId, beside?: string): string {
  const { how, source, validity, verify } = METHODS[id];
  const said = [
    how,
    beside ?? '',
    `Source: ${sentence(source)}`,
    validity === '' ? '' : `Holds for: ${sentence(validity)}`,
    verify,
  ];
  return said.filter((one) => one !== '').join(' ');
}
