#!/usr/bin/env node
// The sources are TypeScript and run as they are: tsx is registered first, then the program is imported.
import { register } from 'tsx/esm/api';

register();
// Whoever reads only the first lines of what is printed closes the pipe: that is no fault.
process.stdout.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});
const { main } = await import('./main.ts');
process.exitCode = await main(process.argv.slice(2));
