import ts from 'typescript';
import { QUANTITIES, UNIT_KINDS } from '../../src/units/index.ts';
import type { ProjectFile } from './project-files.ts';

/** The longest a file of ours may be, in lines; tables of data apart. */
export const LONGEST_FILE = 300;
/** How many files of src/ and tests/ may lie side by side in one folder. */
export const MAX_FILES_SIDE_BY_SIDE = 30;
/** In how many files of src/ a `throw` may stand: our own bugs, and the shell. */
export const MAX_FILES_THAT_THROW = 8;

const IN_A_ROOM = /^src\/(price|mass|float|performance|limits|electrics|laminate|tow)\//;

type ExportedFunction = {
  readonly name: string;
  readonly line: number;
  readonly docs: readonly ts.JSDoc[];
};

const parse = ({ path, text }: ProjectFile): ts.SourceFile =>
  ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);

function isFunctionValue(value: ts.Expression | undefined): boolean {
  if (value === undefined) return false;
  if (ts.isParenthesizedExpression(value)) return isFunctionValue(value.expression);
  if (ts.isSatisfiesExpression(value) || ts.isAsExpression(value)) {
    return isFunctionValue(value.expression);
  }
  return ts.isArrowFunction(value) || ts.isFunctionExpression(value);
}

/** The names that `export { name }` lets out of a file. */
function namesExportedBelow(source: ts.SourceFile): ReadonlySet<string> {
  const names = source.statements.flatMap((statement) => {
    if (!ts.isExportDeclaration(statement) || statement.moduleSpecifier) return [];
    const clause = statement.exportClause;
    if (!clause || !ts.isNamedExports(clause)) return [];
    return clause.elements.map((element) => (element.propertyName ?? element.name).text);
  });
  return new Set(names);
}

function functionsOf(statement: ts.Statement): readonly (readonly [string, ts.Node])[] {
  if (ts.isFunctionDeclaration(statement)) return [[statement.name?.text ?? 'default', statement]];
  if (!ts.isVariableStatement(statement)) return [];
  return statement.declarationList.declarations
    .filter((declaration) => isFunctionValue(declaration.initializer))
    .map((declaration) => [declaration.name.getText(), declaration] as const);
}

/** Functions that other files can reach; the overloads of one function count once. */
export function exportedFunctions(file: ProjectFile): readonly ExportedFunction[] {
  const source = parse(file);
  const below = namesExportedBelow(source);
  const found = new Map<string, ExportedFunction>();
  for (const statement of source.statements) {
    const modifiers = ts.canHaveModifiers(statement) ? (ts.getModifiers(statement) ?? []) : [];
    const exported = modifiers.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    for (const [name, node] of functionsOf(statement)) {
      if (!exported && !below.has(name)) continue;
      const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      const docs = ts.getJSDocCommentsAndTags(node).filter(ts.isJSDoc);
      const earlier = found.get(name);
      found.set(name, {
        name,
        line: earlier?.line ?? line,
        docs: [...(earlier?.docs ?? []), ...docs],
      });
    }
  }
  return [...found.values()];
}

const wordsOf = (doc: ts.JSDoc): string =>
  doc
    .getText()
    .replaceAll(/[/*\s]+/g, ' ')
    .trim();

/** Exported functions that have no docstring, or one without words. */
export function withoutDocstring(file: ProjectFile): readonly string[] {
  return exportedFunctions(file)
    .filter(({ docs }) => docs.every((doc) => wordsOf(doc).length < 10))
    .map(({ name, line }) => `${file.path}:${line} ${name}: say what it returns, in which unit`);
}

/** Exported functions of a room whose docstring does not say where the method comes from. */
export function withoutSource(file: ProjectFile): readonly string[] {
  if (!IN_A_ROOM.test(file.path)) return [];
  const says = (tag: ts.JSDocTag): boolean =>
    tag.tagName.text === 'source' && (ts.getTextOfJSDocComment(tag.comment) ?? '').trim() !== '';
  return exportedFunctions(file)
    .filter(({ docs }) => !docs.some((doc) => doc.tags?.some(says)))
    .map(({ name, line }) => `${file.path}:${line} ${name}: add @source with standard and clause`);
}

/** Files that are too long to hold in the head; `*-table.ts` holds data and may be longer. */
export function tooLong({ path, text }: ProjectFile): readonly string[] {
  if (/-tables?\.ts$/.test(path)) return [];
  const count = text.replace(/\n$/, '').split('\n').length;
  return count > LONGEST_FILE ? [`${path}: ${count} lines; split it by notion`] : [];
}

/** Folders with more files side by side than can be looked over; golden values and fixtures are data. */
export function tooFull(files: readonly Pick<ProjectFile, 'path'>[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const { path } of files) {
    if (/(^|\/)(golden|fixtures)\//.test(path)) continue;
    const folder = path.slice(0, path.lastIndexOf('/'));
    counts.set(folder, (counts.get(folder) ?? 0) + 1);
  }
  return [...counts]
    .filter(([, count]) => count > MAX_FILES_SIDE_BY_SIDE)
    .map(([folder, count]) => `${folder}: ${count} files side by side; give a notion its folder`);
}

/** The lines on which a file throws. */
export function throwsIn(file: ProjectFile): readonly number[] {
  const source = parse(file);
  const lines: number[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isThrowStatement(node)) {
      lines.push(source.getLineAndCharacterOfPosition(node.getStart()).line + 1);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return lines;
}

/** Nothing while few files throw; all of them, with their lines, once they are too many. */
export function tooManyThrow(files: readonly ProjectFile[]): readonly string[] {
  const guilty = files
    .map((file) => ({ path: file.path, lines: throwsIn(file) }))
    .filter(({ lines }) => lines.length > 0)
    .map(({ path, lines }) => `${path}:${lines.join(',')}`);
  return guilty.length > MAX_FILES_THAT_THROW ? guilty : [];
}

/** Relative imports that do not name the file itself. */
export function importsWithoutExtension(file: ProjectFile): readonly string[] {
  const { importedFiles } = ts.preProcessFile(file.text, true, true);
  return importedFiles
    .map(({ fileName }) => fileName)
    .filter((name) => name.startsWith('.') && !/\.(ts|json)$/.test(name))
    .map((name) => `${file.path}: '${name}' must end with .ts`);
}

/** Comments that silence the linter without saying why. */
export function silencedWithoutReason({ path, text }: ProjectFile): readonly string[] {
  return text.split('\n').flatMap((line, index) => {
    const directive = /\b(?:oxlint|eslint)-disable.*/.exec(line)?.[0];
    if (directive === undefined || / -- \S/.test(directive)) return [];
    return [`${path}:${index + 1} add the reason after " -- "`];
  });
}

/** Every unit that a person may be shown, longest first. */
const UNITS: readonly string[] = [
  ...new Set([
    ...Object.values(UNIT_KINDS).flatMap((kind) => Object.keys(kind)),
    ...Object.values(QUANTITIES).flatMap(({ metric, us }) => [metric.unit, us.unit]),
  ]),
].toSorted((a, b) => b.length - a.length);
const UNIT = UNITS.map((unit) => unit.replaceAll(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`)).join(
  '|',
);
const AFTER_A_VALUE = new RegExp(`^[ \\u00A0]?(${UNIT})(?![\\p{L}\\d²³])`, 'u');
const AT_AN_END = new RegExp(`(?:^|, |\\bor )(${UNIT})$`, 'u');
/** Endings and words of English that look like a unit: "${count} in the boat", "${name}s". */
const ENGLISH = /^(?: in(?= (?:\p{L}|$))|[sdt](?!\p{L})| A )/u;
/** A drawing's path: `L${x} ${y}`, `l-1.5`. */
const PATH = /^[Ll](?=$|-\d)/;
/** What writes for the machine: a path's commands, and the size of a drawing's own sheet. */
const FOR_THE_MACHINE =
  /^src\/(?:units|verify|schema)\/|^src\/draw\/(?:svg|outboard)\.ts$|^src\/figures\/\w+\/(?:facts|to-data)\.ts$/;

/** A name of a property, or of a type: no text. */
const isName = ({ parent, text }: ts.StringLiteralLike): boolean =>
  text.length === 1 ||
  ts.isLiteralTypeNode(parent) ||
  ts.isElementAccessExpression(parent) ||
  (ts.isPropertyAssignment(parent) && parent.name.getText().includes(text));

/** Units that are set behind a value by hand; the formatter of src/units knows them, in both systems. */
export function unitsByHand(file: ProjectFile): readonly string[] {
  if (FOR_THE_MACHINE.test(file.path)) return [];
  const source = parse(file);
  const found: string[] = [];
  const tell = (node: ts.Node, text: string): void => {
    const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
    found.push(
      `${file.path}:${line} "${text.slice(0, 20)}": print the quantity with the formatter`,
    );
  };
  const isDrawn = file.path.startsWith('src/draw/');
  const isOther = (text: string): boolean => ENGLISH.test(text) || (isDrawn && PATH.test(text));
  const isHeading = /^src\/(?:documents|draw)\//.test(file.path);
  const visit = (node: ts.Node): void => {
    if (ts.isTemplateSpan(node)) {
      const { text } = node.literal;
      const isBound = node.expression.getText() === 'NO_BREAK';
      if (AFTER_A_VALUE.test(text) && (isBound || !isOther(text))) tell(node, text);
    }
    if (ts.isStringLiteralLike(node) && !ts.isImportDeclaration(node.parent)) {
      const added = ts.isBinaryExpression(node.parent);
      const sum = added && node.parent.operatorToken.kind === ts.SyntaxKind.PlusToken;
      if (sum && AFTER_A_VALUE.test(node.text)) tell(node, node.text);
      const isText = !added && !isName(node);
      if (isHeading && isText && AT_AN_END.test(node.text)) tell(node, node.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}
