export { configureEleventy } from './configure.ts';
export { drawingFontCss } from './fonts.ts';
export type { Page, RenderedPage, TemplateName } from './pages.ts';
export { addPage, renderPages } from './render-pages.ts';
export { writeAtomically } from './write-atomically.ts';
