import { afterAll, beforeAll } from 'vitest';
import { openBrowser, type OpenBrowser } from '../../src/print/index.ts';

/** One browser for all the tests of a file: started before the first, closed after the last. */
export function sharedBrowser(): { readonly get: () => OpenBrowser } {
  let opened: OpenBrowser | undefined;
  beforeAll(async () => {
    const tried = await openBrowser();
    if (!tried.browser) throw new Error(tried.reason);
    opened = tried;
  }, 60_000);
  afterAll(async () => {
    await opened?.browser.close();
  });
  return {
    get: () => {
      if (!opened) throw new Error('the browser is not open yet');
      return opened;
    },
  };
}
