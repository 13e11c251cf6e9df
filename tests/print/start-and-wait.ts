// Starts a browser, tells its process, and waits to be killed.
import { openBrowser } from '../../src/print/index.ts';

const opened = await openBrowser();
if (!opened.browser) throw new Error(opened.reason);
await opened.browser.newPage();
process.stdout.write(`${opened.browser.process()?.pid}\n`);
setInterval(() => undefined, 1000);
