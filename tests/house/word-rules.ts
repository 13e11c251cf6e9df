import ts from 'typescript';
import { EDITED_WORDS } from '../../src/words/index.ts';
import type { ProjectFile } from './project-files.ts';

/** Where texts are written that pages, drawings and figures.json print. */
const PRINTED =
  /^src\/(?:documents|draw|figures|findings|price|electrics|tow|limits|float|laminate|performance|plan|mass|schema|verify)\//;
const BARE = new RegExp(`(?<![\\w{-])(?:${EDITED_WORDS.join('|')})(?![\\w}-])`, 'i');

/** Words that another edition has otherwise and that no braces let it change: "draught" for "{draught}". */
export function bareWords({ path, text }: ProjectFile): readonly string[] {
  if (path.endsWith('.njk'))
    return text.split('\n').flatMap((line, index) => {
      // What the template itself says: no tag, no name of a class, no expression.
      const said = line.replaceAll(/\{\{[^]*?\}\}|\{%[^]*?%\}|<[^>]*>/g, ' ');
      return tell(path, index + 1, said);
    });
  if (!PRINTED.test(path)) return [];
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (isSaid(node)) {
      const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      found.push(...tell(path, line, node.text));
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** A sentence, or one word with a capital; names of fields and kinds have neither blank nor capital. */
const isSaid = (node: ts.Node): node is ts.LiteralLikeNode =>
  ts.isTemplateHead(node) ||
  ts.isTemplateMiddleOrTemplateTail(node) ||
  (ts.isStringLiteralLike(node) &&
    !ts.isImportDeclaration(node.parent) &&
    !ts.isExportDeclaration(node.parent) &&
    (node.text.includes(' ') || /^[A-Z]/.test(node.text)));

function tell(path: string, line: number, said: string): readonly string[] {
  const word = BARE.exec(said)?.[0];
  return word === undefined ? [] : [`${path}:${line} "${word}": write {${word}}`];
}
