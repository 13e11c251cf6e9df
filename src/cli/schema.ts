import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { readWorkspace } from '../read/index.ts';
import { emitJsonSchemas } from '../schema/index.ts';
import { writeAtomically } from '../site/index.ts';
import type { CommandOptions } from './command-line.ts';
import { EXIT } from './exit.ts';

/** Writes the JSON Schemas that text editors complete and check by. */
export async function schema({ workspace }: CommandOptions): Promise<number> {
  const { catalogue } = readWorkspace(workspace);
  const folder = join(workspace, 'catalogue', 'schema');
  await mkdir(folder, { recursive: true });
  const files = emitJsonSchemas(catalogue);
  for (const [name, text] of files) await writeAtomically(join(folder, name), text);
  process.stdout.write(`${files.size} schemas written to catalogue/schema\n`);
  return EXIT.fine;
}
