import { relative } from 'node:path';
import Eleventy, { type EleventyConfig } from '@11ty/eleventy';
import { configureEleventy } from './configure.ts';
import { escapeXml } from '../draw/index.ts';
import { inEdition } from '../words/index.ts';
import { templatesFromHere } from './folders.ts';
import type { Page, RenderedPage } from './pages.ts';

/** A build of a thousand pages takes seconds; Eleventy has been seen to wait for ever after an error. */
const LONGEST_WAIT = 120_000;

/**
 * Makes pages from their views, self-contained, and writes nothing.
 *
 * @returns one page for each that was asked for, in their order
 * @throws Error that names the page and its template when a template asks for what its view has not
 */
export async function renderPages(pages: readonly Page[]): Promise<readonly RenderedPage[]> {
  if (pages.length === 0) return [];
  const eleventy = new Eleventy(templatesFromHere(), '_site', {
    configPath: null,
    quietMode: true,
    loader: 'esm',
    config(config) {
      configureEleventy(config);
      for (const page of pages) addPage(config, page);
    },
  });
  eleventy.disableLogger();
  const rendered = await withinTime(eleventy.toJSON()).catch((error: unknown) => {
    throw pageError(error, pages);
  });
  // Eleventy's own url leaves index.html out; where the page's template stands does not.
  const byUrl = new Map(rendered.map(({ inputPath, content }) => [addressOf(inputPath), content]));
  return pages.map(({ url, view: { document } }) => {
    const html = byUrl.get(url);
    if (html === undefined) throw new Error(`Eleventy made no page ${url}`);
    const { lang: locale, finalPrice } = document;
    const escaped = finalPrice === undefined ? undefined : escapeXml(finalPrice);
    return { url, html: inEdition(html, { locale, finalPrice: escaped }) };
  });
}

/** Adds one page to a run of Eleventy. */
export function addPage(config: EleventyConfig, { url, template, view }: Page): void {
  config.addTemplate(`${url}.njk`, `{% extends "${template}.njk" %}`, {
    view,
    permalink: url,
    // An order's number is in the address: it is text, never a template.
    dynamicPermalink: false,
  });
}

/** The address that a page was added with, from the path of its template. */
function addressOf(inputPath: string): string {
  return relative(templatesFromHere(), inputPath)
    .replaceAll('\\', '/')
    .replace(/\.njk$/, '');
}

async function withinTime<T>(work: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const tooLong = new Promise<never>((_, reject) => {
    timer = setTimeout(
      () => reject(new Error(`Eleventy was not done after ${LONGEST_WAIT / 1000} seconds`)),
      LONGEST_WAIT,
    );
  });
  try {
    return await Promise.race([work, tooLong]);
  } finally {
    clearTimeout(timer);
  }
}

function pageError(error: unknown, pages: readonly Page[]): Error {
  const texts = chain(error).map(({ message }) => message);
  const page = pages.find(({ url }) => texts.some((text) => text.includes(`${url}.njk`)));
  const cause = texts.at(-1)?.replaceAll(/\s+/g, ' ') ?? String(error);
  const what = page ? `${page.url} with templates/${page.template}.njk` : 'the pages';
  return new Error(`Cannot make ${what}: ${cause}`, { cause: error });
}

/** An error and those that it was made from: Eleventy keeps the telling one innermost. */
function chain(error: unknown): readonly Error[] {
  if (!(error instanceof Error)) return [];
  const inner = 'originalError' in error ? error.originalError : error.cause;
  return [error, ...chain(inner)];
}
