import { readFile } from 'node:fs/promises';
import {
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  type PDFObject,
  PDFRef,
  PDFString,
} from '@cantoo/pdf-lib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface StructureElement {
  readonly role: string;
  readonly alt?: string;
  readonly scope?: string;
}

export interface FontFacts {
  /** Without the subset's prefix. */
  readonly name: string;
  readonly subtype: string;
  readonly embedded: boolean;
}

export interface PdfContents {
  /** Text of each page. */
  readonly pages: readonly string[];
  readonly text: string;
  readonly title: string;
  readonly author: string;
  readonly lang: string;
  readonly marked: boolean;
  readonly outline: readonly string[];
  /** In reading order. */
  readonly structure: readonly StructureElement[];
  readonly fonts: readonly FontFacts[];
  readonly attachments: ReadonlyMap<string, Uint8Array>;
}

/** Reads a PDF back: text, outline and attachments with pdf.js, structure and fonts from the objects themselves. */
export async function readPdf(file: string): Promise<PdfContents> {
  const bytes = await readFile(file);
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, useSystemFonts: false });
  const pdf = await task.promise;
  const pages: string[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const { items } = await (await pdf.getPage(number)).getTextContent();
    pages.push(
      items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join(''),
    );
  }
  const { info } = await pdf.getMetadata();
  const facts = new Map(Object.entries(info));
  const outline = ((await pdf.getOutline()) ?? []).map(({ title }) => title);
  const attached: Record<string, { content: Uint8Array }> = (await pdf.getAttachments()) ?? {};
  const mark = await pdf.getMarkInfo();
  await task.destroy();
  return {
    pages,
    text: pages.join('\n'),
    title: String(facts.get('Title') ?? ''),
    author: String(facts.get('Author') ?? ''),
    lang: String(facts.get('Language') ?? ''),
    marked: mark?.['Marked'] === true,
    outline,
    attachments: new Map(Object.entries(attached).map(([name, { content }]) => [name, content])),
    ...(await readObjects(bytes)),
  };
}

/** What a tagged document that people can use has, as sentences about what this one lacks; empty when it lacks nothing. */
export function lacksOf(pdf: PdfContents, families: readonly string[]): readonly string[] {
  const levels = pdf.structure.flatMap(({ role }) =>
    /^H[1-6]$/.test(role) ? [Number(role.slice(1))] : [],
  );
  const skipped = levels.some((level, index) => level > (levels[index - 1] ?? 0) + 1);
  const strange = pdf.fonts.filter(
    ({ name }) => !families.some((family) => name.startsWith(family)),
  );
  const rules: readonly (readonly [boolean, string])[] = [
    [pdf.marked, 'is not marked as tagged'],
    [pdf.lang !== '', 'has no language'],
    [pdf.title !== '', 'has no title'],
    [pdf.outline.length > 0, 'has no bookmarks'],
    [levels.filter((level) => level === 1).length === 1, 'has not exactly one heading of level 1'],
    [!skipped, 'skips a level of heading'],
    [
      pdf.structure.every(({ role, alt }) => role !== 'Figure' || Boolean(alt)),
      'has a figure without alternate text',
    ],
    [
      pdf.structure.every(({ role, scope }) => role !== 'TH' || Boolean(scope)),
      'has a table head without scope',
    ],
    [pdf.fonts.every(({ embedded }) => embedded), 'has a font that is not embedded'],
    [
      pdf.fonts.every(({ subtype }) => subtype !== 'Type3'),
      'has a font drawn as pictures (Type 3)',
    ],
    [
      strange.length === 0,
      `has fonts of other families: ${strange.map(({ name }) => name).join(', ')}`,
    ],
  ];
  return rules.filter(([holds]) => !holds).map(([, lack]) => lack);
}

async function readObjects(bytes: Uint8Array): Promise<Pick<PdfContents, 'structure' | 'fonts'>> {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
  const look = (object: PDFObject | undefined): PDFObject | undefined =>
    object instanceof PDFRef ? pdf.context.lookup(object) : object;
  const name = (dict: PDFDict, key: string): string => {
    const value = look(dict.get(PDFName.of(key)));
    return value instanceof PDFName ? value.decodeText() : '';
  };
  const structure: StructureElement[] = [];
  const walk = (object: PDFObject | undefined): void => {
    const found = look(object);
    if (found instanceof PDFArray) for (const child of found.asArray()) walk(child);
    if (!(found instanceof PDFDict)) return;
    const role = name(found, 'S');
    if (role !== '') {
      const alt = look(found.get(PDFName.of('Alt')));
      const scope = scopeOf(found, look);
      structure.push({
        role,
        ...((alt instanceof PDFString || alt instanceof PDFHexString) && { alt: alt.decodeText() }),
        ...(scope !== undefined && { scope }),
      });
    }
    walk(found.get(PDFName.of('K')));
  };
  walk(pdf.catalog.get(PDFName.of('StructTreeRoot')));
  const fonts = pdf.context.enumerateIndirectObjects().flatMap(([, object]) => {
    if (!(object instanceof PDFDict) || name(object, 'Type') !== 'Font') return [];
    const subtype = name(object, 'Subtype');
    if (subtype === 'Type0') return [];
    const descriptor = look(object.get(PDFName.of('FontDescriptor')));
    const files = ['FontFile', 'FontFile2', 'FontFile3'];
    const embedded =
      descriptor instanceof PDFDict && files.some((key) => descriptor.has(PDFName.of(key)));
    return [{ name: name(object, 'BaseFont').replace(/^[A-Z]{6}\+/, ''), subtype, embedded }];
  });
  return { structure, fonts };
}

function scopeOf(
  element: PDFDict,
  look: (object: PDFObject | undefined) => PDFObject | undefined,
): string | undefined {
  const attributes = look(element.get(PDFName.of('A')));
  const list = attributes instanceof PDFArray ? attributes.asArray().map(look) : [attributes];
  for (const one of list) {
    const scope = one instanceof PDFDict ? look(one.get(PDFName.of('Scope'))) : undefined;
    if (scope instanceof PDFName) return scope.decodeText();
  }
  return undefined;
}
