import { readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { decodePDFRawStream, PDFDocument, PDFName, PDFRawStream } from '@cantoo/pdf-lib';
import { afterAll, describe, expect, it } from 'vitest';
import { readPdf } from '../print/read-pdf.ts';
import { quoted, Shop } from '../issued/shop.ts';
import { HULL, PARTS, workspaceOf, YARD } from '../read/samples.ts';
import { builtOnce, filesUnder } from './built.ts';

/** What a customer must never see, each planted where the shop would write it; numbers too long to be a coordinate by chance. */
const PLANTED = {
  rate: '861.37',
  overhead: '843.19',
  margin: '27.839153',
  floor: '13.713591',
  wastage: '17.935173',
  partCost: '8967.39',
  moulds: '9417.53',
  hours: '23.573913',
  extraCost: '8973.91',
  orderNote: 'planted order note',
  itemNote: 'planted item note',
  extraNote: 'planted extra note',
  leftOutReason: 'planted reason',
  freeReason: 'planted gift',
  allowReason: 'planted leave',
  supplier: 'planted-supplier',
  partCode: 'PLANTED-77',
} as const;

function quotedOrder(): string {
  return `${quoted('T-1').replace('  - seat\n', `  - { option: seat, note: ${PLANTED.itemNote} }\n`)}  - { name: Rack, class: fit-out, cost: ${PLANTED.extraCost}, note: ${PLANTED.extraNote} }
  - { name: Peg, class: fit-out, free: ${PLANTED.freeReason} }
allow: [{ finding: PART_PRICE_JUMP, by: The owner, reason: ${PLANTED.allowReason} }]
leaveOutCharges: [{ charge: boat-registration, reason: ${PLANTED.leftOutReason} }]
note: ${PLANTED.orderNote}
`;
}

const folder = workspaceOf({
  'catalogue/yard.yaml': YARD.replace('laminate: 50', `laminate: ${PLANTED.rate}`)
    .replace('overhead: 38', `overhead: ${PLANTED.overhead}`)
    .replace('hull: 28%', `hull: ${PLANTED.margin}%`)
    .replace('marginFloor: 20%', `marginFloor: ${PLANTED.floor}%`)
    .replace('fabric: 10%', `fabric: ${PLANTED.wastage}%`)
    .replace('acme-parts:', `${PLANTED.supplier}:`),
  'catalogue/hulls/tern-400.yaml': HULL.replace('moulds: 400', `moulds: ${PLANTED.moulds}`)
    .replace('part: AC-1', `part: ${PLANTED.partCode}`)
    .replace('hours: 20', `hours: ${PLANTED.hours}`),
  'catalogue/parts/acme-parts.csv': undefined,
  [`catalogue/parts/${PLANTED.supplier}.csv`]: PARTS.replace('6.80', PLANTED.partCost).replace(
    'AC-1',
    PLANTED.partCode,
  ),
  'orders/t-1.yaml': quotedOrder(),
});
/** A quote that was sent and accepted, of a boat that is ready and was varied: everything that a customer gets. */
const site = builtOnce(async () => {
  const shop = new Shop(folder);
  if ((await shop.on('2026-03-21', 'issue', 'T-1')) !== 0) throw new Error(shop.said);
  shop.write(
    'orders/t-1.yaml',
    `${quotedOrder()
      .replace('status: quoted', 'status: ready')
      .replace(
        'quoted: 2026-03-20',
        'quoted: 2026-03-20\n  accepted: 2026-03-25\n  promised: 2026-06-30\n  started: 2026-04-01\n  ready: 2026-06-20',
      )}acceptance: { revision: 1, by: Ada }
variations:
  - { name: No peg, asked: 2026-04-01, agreed: { date: 2026-04-02, by: Ada, price: -12.00 }, remove: [rod-holder] }
record:
  masses: [{ stage: release, mass: 80 kg, date: 2026-05-01, by: A fitter }]
  trials: [{ date: 2026-06-10, conditions: Calm, people: 2, speed: 5 kn, rpm: 0, by: A fitter }]
`,
  );
  return folder;
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Everything that can be read out of a file: its bytes, and for a PDF its text, facts and every stream. */
async function readable(file: string): Promise<string> {
  const bytes = readFileSync(file);
  const raw = bytes.toString('latin1');
  if (!file.endsWith('.pdf')) return raw;
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
  const streams = pdf.context
    .enumerateIndirectObjects()
    .flatMap(([, object]) => (object instanceof PDFRawStream ? [object] : []))
    .map((stream) => {
      const filtered = String(stream.dict.get(PDFName.of('Filter')) ?? '');
      return /DCT|JPX/.test(filtered)
        ? ''
        : Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1');
    });
  const { text, title, author, outline } = await readPdf(file);
  return [raw, ...streams, text, title, author, ...outline].join('\n');
}

describe('what the shop alone may know', () => {
  it('is on no page, in no PDF and in no file name of the customers’ half', async () => {
    const { out, code } = site.get();
    expect(code).toBe(0);
    const customer = path.join(out, 'customer');
    const files = filesUnder(customer);
    expect(files).toHaveLength(6);
    for (const name of files) {
      const text = `${name}\n${await readable(path.join(customer, name))}`;
      const found = Object.entries(PLANTED).filter(([, secret]) => text.includes(secret));
      expect(found, name).toEqual([]);
    }
  });

  it('could be found there: the yard’s half has it, and the look into a PDF sees its text', async () => {
    const { out } = site.get();
    const sheet = await readable(path.join(out, 'yard/T-1/build-sheet-T-1.pdf'));
    expect(sheet).toContain(PLANTED.itemNote);
    expect(sheet).toContain(PLANTED.partCode);
    const quote = await readable(path.join(out, 'customer/T-1/quote-T-1-r1.pdf'));
    expect(quote).toContain('A Field Station');
  });
});
