// Seals a quote in a process of its own, and kills it with SIGKILL at a step of the way: `tsx seal-and-die.ts FOLDER STEP`.
// A step is a call that touches the disk: before it, in the middle of what it writes, or after it. Prints the number of
// steps when it comes through.
import { readFileSync, writeFileSync } from 'node:fs';
import promises from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';
import path from 'node:path';

const [folder = '', last = ''] = process.argv.slice(2);
const wanted = Number(last);
let step = 0;

function reached(): void {
  step += 1;
  if (step === wanted) process.kill(process.pid, 'SIGKILL');
}

const own = { ...promises };
/** Eight parts of what is written, a step after each. */
Object.assign(promises, {
  async writeFile(file: string, content: string | Uint8Array, options?: object) {
    const bytes = Buffer.from(content);
    for (let part = 0; part <= 8; part += 1) {
      writeFileSync(file, bytes.subarray(0, Math.floor((bytes.length * part) / 8)));
      reached();
    }
    await own.writeFile(file, content, options);
    reached();
  },
});
type Call = (...words: unknown[]) => Promise<unknown>;
const calls: Readonly<Record<string, unknown>> = own;
for (const name of ['mkdir', 'rename', 'rm', 'readdir']) {
  const call = calls[name] as Call;
  const counted: Call = async (...words) => {
    reached();
    const answer = await call(...words);
    reached();
    return answer;
  };
  Object.assign(promises, { [name]: counted });
}
syncBuiltinESMExports();

const { seal } = await import('../../src/cli/seal.ts');
const { headOf, readLedger } = await import('../../src/read/index.ts');
const source = path.join(folder, 'to-seal');
const read = (name: string): Buffer => readFileSync(path.join(source, name));
const ledger = path.join(folder, 'orders/issued/ledger.jsonl');
const { line } = JSON.parse(read('line.json').toString('utf8'));
const files = { json: read('json'), html: read('html'), pdf: read('pdf') };
process.stdout.write('ready\n');
const done = await seal(
  folder,
  [{ line, files }],
  headOf(readLedger(readFileSync(ledger, 'utf8'))),
);
process.stdout.write(`${JSON.stringify({ done, step })}\n`);
