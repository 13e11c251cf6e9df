/**
 * Rows as comma-separated values.
 *
 * @source RFC 4180, section 2: lines end in CRLF; a field with a comma, a quote or a line end stands in quotes, and a
 * quote in it is doubled
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(csvField).join(',')}\r\n`).join('');
}

const csvField = (text: string): string =>
  /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
