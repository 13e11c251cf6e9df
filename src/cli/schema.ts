import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { readWorkspace } from '../read/index.ts';
import { emitJsonSchemas } from '../schema/index.ts';
import { writeAtomically } from '../site/index.ts';
import type { CommandOptions } from './commands.ts';
import { EXIT } from './exit.ts';

/** Writes the JSON Schemas that text editors complete and check by. */
export async function schema({ workspace, out }: CommandOptions<'schema'>): Promise<number> {
  const { catalogue } = readWorkspace(workspace);
  await mkdir(out, { recursive: true });
  const files = emitJsonSchemas(catalogue);
  for (const [name, text] of files) await writeAtomically(join(out, name), text);
  process.stdout.write(`${files.size} schemas written to ${out}\n`);
  return EXIT.fine;
}
