#!/usr/bin/env node
// The sources are TypeScript and run as they are: tsx is registered first, then the program is imported.
import { register } from 'tsx/esm/api';

register();
const { main } = await import('./main.ts');
process.exitCode = await main(process.argv.slice(2));
