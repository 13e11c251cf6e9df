import type { EleventyConfig } from '@11ty/eleventy';
import nunjucks from 'nunjucks';
import { cssString, stylesheet } from './css.ts';

/**
 * Sets Eleventy up for our templates: strict Nunjucks, two filters, and no page but those it is given.
 *
 * The styles of one run are read once: a later run sees them as they are then.
 */
export function configureEleventy(config: EleventyConfig): void {
  const sheets = new Map<string, string>();
  config.setUseGitIgnore(false);
  config.setTemplateFormats('njk');
  config.setIncludesDirectory('.');
  // The files in templates/ are what pages are made with; none of them is a page by itself.
  config.ignores.add('**/*.njk');
  config.setNunjucksEnvironmentOptions({ throwOnUndefined: true });
  config.addNunjucksFilter('css', (name) => {
    const css = sheets.get(name) ?? stylesheet(name);
    sheets.set(name, css);
    return trusted(css);
  });
  config.addNunjucksFilter('cssString', (text) => trusted(cssString(text)));
}

function trusted(text: string): nunjucks.runtime.SafeString {
  return new nunjucks.runtime.SafeString(text);
}
