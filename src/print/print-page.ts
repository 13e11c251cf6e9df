import type { Browser, HTTPRequest } from 'puppeteer';

const PAGE_MS = 30_000;

/**
 * Prints a page to PDF: tagged, with bookmarks, at the size that its own style gives.
 *
 * Scripts are off and every request but data: is refused.
 *
 * @throws Error naming what the page tried to load: a document carries everything itself, so that is a mistake in it
 */
export async function printPage(browser: Browser, html: string): Promise<Uint8Array> {
  const page = await browser.newPage();
  try {
    page.setDefaultTimeout(PAGE_MS);
    await page.setJavaScriptEnabled(false);
    await page.setRequestInterception(true);
    const refused: string[] = [];
    page.on('request', (request) => void answer(request, refused));
    await page.setContent(html, { waitUntil: 'load', timeout: PAGE_MS });
    const pdf = await page.pdf({
      tagged: true,
      outline: true,
      preferCSSPageSize: true,
      printBackground: true,
      waitForFonts: true,
      timeout: PAGE_MS,
    });
    if (refused.length > 0) throw new Error(`the page tried to load ${refused.join(', ')}`);
    return pdf;
  } finally {
    await page.close().catch(() => undefined);
  }
}

async function answer(request: HTTPRequest, refused: string[]): Promise<void> {
  const url = request.url();
  if (url.startsWith('data:') || url === 'about:blank') return request.continue();
  refused.push(url.slice(0, 200));
  return request.abort('blockedbyclient');
}
