import { access } from 'node:fs/promises';
import { join } from 'node:path';
import { nearestName } from '../findings/index.ts';
import { readWorkspace } from '../read/index.ts';
import { ORDER_NUMBER } from '../schema/index.ts';
import { writeAtomically } from '../site/index.ts';
import type { CommandOptions } from './commands.ts';
import { EXIT } from './exit.ts';
import { orderTemplate } from './order-template.ts';
import { refuse } from './refuse.ts';
import { today } from './today.ts';

/** Begins an order file; never overwrites one. */
export async function newOrder({
  workspace,
  number,
  hull,
  customer,
}: CommandOptions<'new'>): Promise<number> {
  if (!ORDER_NUMBER.test(number))
    return refuse('new', `"${number}" is no order number: use letters, digits and hyphens`);
  const { catalogue } = readWorkspace(workspace);
  const hulls = [...(catalogue?.hulls.keys() ?? [])];
  if (hull === undefined) return refuse('new', `name a hull with --hull: ${hulls.join(', ')}`);
  const chosen = catalogue?.hulls.get(hull);
  if (!chosen) {
    const near = nearestName(hull, hulls);
    return refuse(
      'new',
      `there is no hull "${hull}": ${near === undefined ? hulls.join(', ') : `did you mean ${near}?`}`,
    );
  }
  const file = join(workspace, 'orders', `${number}.yaml`);
  if (await exists(file))
    return refuse('new', `orders/${number}.yaml is there already; it is left as it is`);
  await writeAtomically(
    file,
    orderTemplate({
      number,
      hull: chosen.value,
      today: today(),
      ...(customer !== undefined && { customer }),
    }),
  );
  process.stdout.write(
    `orders/${number}.yaml begun; open it in a text editor, then run: npm run orlop -- check --only ${number}\n`,
  );
  return EXIT.fine;
}

async function exists(file: string): Promise<boolean> {
  try {
    await access(file);
    return true;
  } catch {
    return false;
  }
}
