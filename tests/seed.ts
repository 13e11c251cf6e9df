/**
 * Every property is tried on the same random cases each time, so that the same code gets the same
 * answer on every machine. `ORLOP_SEED=<whole number>` tries others; a failure names its seed.
 */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env['ORLOP_SEED'] ?? 20_261_125) });
