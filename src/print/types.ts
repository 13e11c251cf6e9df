export interface Attachment {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Media type, such as application/json. */
  readonly mime: string;
  readonly description: string;
}

/** What a PDF says of itself. */
export interface PdfFacts {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  readonly keywords: readonly string[];
  /** What made it, with its version. */
  readonly program: string;
  /** Both dates of the file: given, so that the same document is the same file. */
  readonly date: Date;
}

export interface PrintJob {
  /** A whole page with everything in it: styles, fonts and pictures as data: URIs. */
  readonly html: string;
  /** Absolute. */
  readonly file: string;
  readonly facts: PdfFacts;
  /** Part of the cache that it is kept in, so that what customers get lies apart from the rest. */
  readonly shelf: string;
  readonly attachments?: readonly Attachment[];
}
