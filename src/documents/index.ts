export type { DocumentHead, PageHead } from './head.ts';
