import { register } from 'tsx/esm/api';

// Node 20 does not read TypeScript; from here on it does.
register();

/** Eleventy's own command sees the same templates, filters and strictness as `npm run build`. */
export default async function configure(config) {
  const { configureEleventy } = await import('./src/site/index.ts');
  configureEleventy(config);
}

export const config = { dir: { input: 'templates', output: '_site' } };
