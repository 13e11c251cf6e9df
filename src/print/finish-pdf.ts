import { AFRelationship, PDFDocument } from '@cantoo/pdf-lib';
import type { Attachment, PdfFacts } from './types.ts';

/**
 * Gives a printed PDF its title, dates and attachments, keeping its tags, language and bookmarks.
 *
 * The browser numbers the structure elements by what else it has printed; they are renumbered from 1, so that
 * the same page gives the same file.
 *
 * @param date - of `facts`: both dates of the file
 */
export async function finishPdf(
  printed: Uint8Array,
  facts: PdfFacts,
  attachments: readonly Attachment[],
): Promise<Uint8Array> {
  const pdf = await PDFDocument.load(renumber(printed), { updateMetadata: false });
  pdf.setTitle(facts.title, { showInWindowTitleBar: true });
  pdf.setAuthor(facts.author);
  pdf.setSubject(facts.subject);
  pdf.setKeywords([...facts.keywords]);
  pdf.setCreator(facts.program);
  pdf.setProducer(facts.program);
  pdf.setCreationDate(facts.date);
  pdf.setModificationDate(facts.date);
  for (const { name, bytes, mime, description } of attachments) {
    await pdf.attach(bytes, name, {
      mimeType: mime,
      description,
      creationDate: facts.date,
      modificationDate: facts.date,
      afRelationship: AFRelationship.Data,
    });
  }
  return pdf.save({ useObjectStreams: false });
}

/** Structure ids are `node` and eight digits: they are replaced by ids of the same length, in order of appearance. */
function renumber(printed: Uint8Array): Uint8Array {
  const bytes = Buffer.from(printed);
  const text = bytes.toString('latin1');
  const given = new Map<string, string>();
  const renamed = text.replaceAll(/node\d{8}/g, (id) => {
    const known = given.get(id) ?? `node${String(given.size + 1).padStart(8, '0')}`;
    given.set(id, known);
    return known;
  });
  return Buffer.from(renamed, 'latin1');
}
