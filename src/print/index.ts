export { cacheFolder, carriedBrowser, type CarriedBrowser } from './carried-browser.ts';
export { type BrowserCandidate, browserCandidates } from './find-browser.ts';
export { type NoBrowser, type OpenBrowser, openBrowser } from './open-browser.ts';
export { printBytes, type PrintOptions, printPdfs, type PrintResult } from './print-pdfs.ts';
export type { Attachment, PdfFacts, PrintJob } from './types.ts';
