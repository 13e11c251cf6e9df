// Starts the carried browser from the cache folder named on the command line and says which version came up.
import { openBrowser } from '../../src/print/index.ts';

const opened = await openBrowser([{ kind: 'carried' }], process.argv[2]);
if (!opened.browser) throw new Error(opened.reason);
process.stdout.write(`started ${Number.parseInt(opened.version, 10)}\n`);
await opened.browser.close();
