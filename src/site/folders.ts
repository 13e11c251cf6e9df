import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's own templates, wherever a command is started and whatever workspace it reads. */
export const TEMPLATES = fileURLToPath(new URL('../../templates/', import.meta.url));

/** The templates as Eleventy wants them named: it loses its way with an absolute path. */
export function templatesFromHere(): string {
  return relative('.', TEMPLATES) || '.';
}
