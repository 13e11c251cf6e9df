import { readdirSync, readFileSync } from 'node:fs';
import { readYaml } from '../../src/read/index.ts';
import { type Hull, hullSchema } from '../../src/schema/index.ts';

const FOLDER = 'catalogue/hulls';

/** The hulls of the demonstration, without the rest of the workspace. */
export function catalogueHulls(): readonly Hull[] {
  return readdirSync(FOLDER).map((file) =>
    hullSchema.parse(readYaml(readFileSync(`${FOLDER}/${file}`, 'utf8'), file).value),
  );
}
