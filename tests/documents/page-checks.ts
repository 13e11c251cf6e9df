/** A page without its styles. */
export const withoutStyles = (html: string): string =>
  html.replaceAll(/<style>[^]*?<\/style>/g, '');

/** Levels of the headings of a page, in their order. */
export const headingLevels = (html: string): readonly number[] =>
  [...html.matchAll(/<h([1-6])/g)].map(([, level]) => Number(level));

/** For each table of a page, the different widths of its rows in columns: one when it is sound. */
export function tableWidths(html: string): readonly (readonly number[])[] {
  return [...html.matchAll(/<table[^]*?<\/table>/g)].map(([table]) => {
    const widths = [...table.matchAll(/<tr[^]*?<\/tr>/g)].map(([row]) =>
      [...row.matchAll(/<t[hd]([^>]*)>/g)]
        .map(([, attributes]) => Number(/colspan="(\d)"/.exec(attributes ?? '')?.[1] ?? 1))
        .reduce((all, one) => all + one, 0),
    );
    return [...new Set(widths)];
  });
}

/** Names that a page's `aria-labelledby` point at and no `id` has, and ids that stand twice. */
export function brokenIds(html: string): readonly string[] {
  const ids = [...html.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id ?? '');
  const named = [...html.matchAll(/aria-labelledby="([^"]+)"/g)].map(([, id]) => id ?? '');
  return [
    ...named.filter((id) => !ids.includes(id)),
    ...ids.filter((id, index) => ids.indexOf(id) !== index),
  ];
}
