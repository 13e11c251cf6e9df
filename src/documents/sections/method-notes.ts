import { type MethodId, METHODS } from '../../figures/index.ts';
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

/** A figure as it is printed: its marks lead to the methods at the back. */
export interface KeyFigure extends Omit<FoundFigure, 'methods'> {
  readonly marks: string;
}

/** How figures were found: one paragraph a method, under its mark. */
export interface MethodNote {
  readonly mark: string;
  readonly title: string;
  readonly text: string;
}

/**
 * Marks from 1, in the order in which the figures first ask for a method.
 *
 * @param beside - what a method has to say of this boat alone
 */
export function methodNotes(
  figures: readonly FoundFigure[],
  beside: Partial<Record<MethodId, string>> = {},
): {
  readonly marked: (figures: readonly FoundFigure[]) => readonly KeyFigure[];
  readonly methods: readonly MethodNote[];
} {
  const ids = [...new Set(figures.flatMap(({ methods }) => methods))];
  return {
    marked: (rows) =>
      rows.map(({ label, value, detail, methods }) => ({
        label,
        value,
        detail,
        marks: methods.map((id) => ids.indexOf(id) + 1).join(', '),
      })),
    methods: ids.map((id, index) => ({
      mark: `${index + 1}`,
      title: METHODS[id].title,
      text: methodText(id, beside[id]),
    })),
  };
}

function methodText(id: MethodId, beside: string | undefined): string {
  const { how, source, validity, verify } = METHODS[id];
  const parts = [
    how,
    beside ?? '',
    `Source: ${sentence(source)}`,
    validity === '' ? '' : `Holds for: ${sentence(validity)}`,
    verify,
  ];
  return parts.filter((part) => part !== '').join(' ');
}
