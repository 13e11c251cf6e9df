import type { Browser, HTTPRequest, Page } from 'puppeteer';

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
    refused.push(...(await foreignParts(page)));
    if (refused.length > 0) throw new Error(`the page tried to load ${refused.join(', ')}`);
    return await page.pdf({
      tagged: true,
      outline: true,
      preferCSSPageSize: true,
      printBackground: true,
      waitForFonts: true,
      timeout: PAGE_MS,
    });
  } finally {
    await page.close().catch(() => undefined);
  }
}

/**
 * Parts that are not in the page itself. The browser refuses a file without asking for it, so requests alone
 * would not tell; the expression runs beside the page, whose own scripts stay off.
 */
async function foreignParts(page: Page): Promise<readonly string[]> {
  const parts: unknown = await page.evaluate(`
    [...document.querySelectorAll('iframe, frame, object, embed, link[rel=stylesheet], img, script[src]')]
      .filter((part) => part.localName !== 'img' || !part.src.startsWith('data:') || part.naturalWidth === 0)
      .map((part) => part.localName + ' ' + (part.src || part.href || part.data || '').slice(0, 80))
  `);
  return Array.isArray(parts) ? parts.map(String) : [];
}

async function answer(request: HTTPRequest, refused: string[]): Promise<void> {
  const url = request.url();
  if (url.startsWith('data:') || url === 'about:blank') return request.continue();
  refused.push(url.slice(0, 200));
  return request.abort('blockedbyclient');
}
