import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { vi } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { HULL, ORDER, workspaceOf } from '../read/samples.ts';

/** A quoted order of the sample hull, as the shop writes it. */
export const quoted = (number: string, cost = '300.00'): string =>
  `${ORDER.replace('T-1', number)
    .replace('status: enquiry', 'status: quoted')
    .replace('enquiry: 2026-03-14', 'enquiry: 2026-03-14\n  quoted: 2026-03-20')}extras:
  - { name: Ladder, class: fit-out, cost: ${cost}, mass: 4 kg, at: { x: 1 m, z: 0.5 m } }
`;

export const accepted = (text: string, revision = 1): string =>
  `${text
    .replace('status: quoted', 'status: accepted')
    .replace(
      'quoted: 2026-03-20',
      'quoted: 2026-03-20\n  accepted: 2026-03-25\n  promised: 2026-06-30',
    )}acceptance: { revision: ${revision}, by: Ada }
`;

/** A folder that a test works in, and what it reads and writes there. */
export class Shop {
  readonly folder: string;
  /** What the last command printed. */
  said = '';

  constructor(folder: string) {
    this.folder = folder;
  }

  /** Runs a command on a day of the machine's clock, as the program does. */
  async on(day: string, ...words: readonly string[]): Promise<number> {
    this.said = '';
    const spies = [process.stdout, process.stderr].map((stream) =>
      vi.spyOn(stream, 'write').mockImplementation((text) => {
        this.said += String(text);
        return true;
      }),
    );
    vi.useFakeTimers({ now: new Date(`${day}T09:00:00Z`), toFake: ['Date'] });
    vi.stubEnv('ORLOP_TODAY', undefined);
    try {
      return await main([...words, '--workspace', this.folder]);
    } finally {
      vi.useRealTimers();
      vi.unstubAllEnvs();
      for (const spy of spies) spy.mockRestore();
    }
  }

  at(file: string): string {
    return path.join(this.folder, file);
  }
  issued(name: string): string {
    return this.at(`orders/issued/${name}`);
  }
  read(file: string): string {
    return readFileSync(this.at(file), 'utf8');
  }
  bytes(file: string): Buffer {
    return readFileSync(this.at(file));
  }
  has(file: string): boolean {
    return existsSync(this.at(file));
  }
  write(file: string, text: string | Uint8Array): void {
    writeFileSync(this.at(file), text);
  }
  change(file: string, from: string, to: string): void {
    const text = this.read(file);
    if (!text.includes(from)) throw new Error(`${file} has no "${from}"`);
    this.write(file, text.replace(from, to));
  }

  /** The codes of all that is found. */
  async codes(day: string): Promise<readonly string[]> {
    await this.on(day, 'check', '--json');
    const found: unknown = JSON.parse(this.said);
    return Array.isArray(found) ? found.map(({ code }: { code: string }) => code) : [];
  }

  copy(): Shop {
    const folder = mkdtempSync(path.join(tmpdir(), 'orlop-shop-'));
    cpSync(this.folder, folder, { recursive: true });
    return new Shop(folder);
  }
  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

/** A shop with these orders, and a hull for each that asks for one of its own. */
export function shopOf(orders: Readonly<Record<string, string>>, hulls: readonly string[] = []) {
  const files = Object.entries(orders).map(([name, text]) => [`orders/${name}.yaml`, text]);
  const more = hulls.map((id) => [
    `catalogue/hulls/${id}.yaml`,
    HULL.replace('id: tern-400', `id: ${id}`).replace('name: Tern 400', `name: ${id}`),
  ]);
  return new Shop(
    workspaceOf({
      'orders/t-1.yaml': orders['t-1'] ?? quoted('T-1'),
      ...Object.fromEntries([...files, ...more]),
    }),
  );
}

/**
 * A shop that has sent T-1 twice and T-3 once, of which T-3 was accepted; T-2 is an enquiry, T-4 quoted and never sent.
 * The ledger has T-1 r1, T-3 r1, T-1 r2, in this order.
 */
export async function sendingShop(): Promise<Shop> {
  const shop = shopOf({
    't-1': quoted('T-1'),
    't-2': ORDER.replace('T-1', 'T-2').replace(
      'enquiry: 2026-03-14',
      'enquiry: 2026-03-14\n  promised: 2026-09-01',
    ),
    't-3': quoted('T-3', '310.00'),
    't-4': quoted('T-4', '290.00'),
  });
  const sent = async (day: string, number: string): Promise<void> => {
    if ((await shop.on(day, 'issue', number)) !== 0) throw new Error(shop.said);
  };
  await sent('2026-03-21', 'T-1');
  await sent('2026-03-21', 'T-3');
  shop.write('orders/t-1.yaml', quoted('T-1', '320.00'));
  await sent('2026-03-22', 'T-1');
  shop.write('orders/t-3.yaml', accepted(quoted('T-3', '310.00')));
  if ((await shop.on('2026-03-26', 'build', '--no-pdf')) !== 0) throw new Error(shop.said);
  return shop;
}
