import { afterEach, beforeEach, expect, it } from 'vitest';
import { type PreviewServer, startPreviewServer } from '../../src/cli/preview-server.ts';

const PAGE = '<html><body><h1>One</h1></body></html>';
let server: PreviewServer;

beforeEach(async () => {
  server = await startPreviewServer(
    new Map([
      ['yard/index.html', PAGE],
      ['yard/A-1/figures.json', '{"a":1}'],
      ['yard/purchases.csv', 'code\r\n</body>\r\n'],
    ]),
    0,
  );
});
afterEach(() => server.close());

it('listens to this machine only', () => {
  expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
});

it('serves the pages, the index first, with the reload added', async () => {
  const response = await fetch(server.address);
  expect(response.headers.get('content-type')).toContain('text/html');
  expect(await response.text()).toContain('<h1>One</h1><script>');
});

it('serves figures as they are', async () => {
  const response = await fetch(`${server.address}/yard/A-1/figures.json`);
  expect(response.headers.get('content-type')).toContain('application/json');
  expect(await response.text()).toBe('{"a":1}');
});

it('serves tables as they are', async () => {
  const response = await fetch(`${server.address}/yard/purchases.csv`);
  expect(response.headers.get('content-type')).toContain('text/csv');
  expect(await response.text()).toBe('code\r\n</body>\r\n');
});

it('says how PDFs are made, and what is not there', async () => {
  const pdf = await fetch(`${server.address}/customer/A-1/quote.pdf`);
  expect([pdf.status, await pdf.text()]).toEqual([404, 'PDFs are made by: npm run build']);
  expect((await fetch(`${server.address}/../secret`)).status).toBe(404);
});

it('tells open pages that there are new ones', async () => {
  const changes = await fetch(`${server.address}/changes`);
  const reader = changes.body?.getReader();
  const text = async () => new TextDecoder().decode((await reader?.read())?.value);
  expect(await text()).toBe(': open\n\n');
  server.show(new Map([['yard/index.html', PAGE.replace('One', 'Two')]]));
  expect(await text()).toBe('data: changed\n\n');
  expect(await (await fetch(server.address)).text()).toContain('<h1>Two</h1>');
  await reader?.cancel();
});
