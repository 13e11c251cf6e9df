import { readFileSync } from 'node:fs';
import { z } from 'zod';

const facts = z.object({ version: z.string() });

/** "Orlop 0.1.0": what made a document, by the project's own package.json. */
export function programName(): string {
  const file = new URL('../../package.json', import.meta.url);
  return `Orlop ${facts.parse(JSON.parse(readFileSync(file, 'utf8'))).version}`;
}
