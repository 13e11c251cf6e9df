import type { Files } from './gate-tree.ts';

/** Each folder of src/ and the faces that its one file imports: the layers, as they should be. */
const IMPORTS: Readonly<Record<string, readonly string[]>> = {
  units: [],
  maths: [],
  findings: [],
  money: ['units'],
  schema: ['units', 'money', 'findings'],
  read: ['schema', 'findings'],
  resolve: ['schema', 'units'],
  derive: ['resolve', 'units'],
  price: ['money'],
  mass: ['units'],
  float: ['units', 'maths', 'findings'],
  performance: ['units'],
  limits: ['units'],
  electrics: ['units'],
  laminate: ['units'],
  tow: ['units'],
  figures: [
    'resolve',
    'derive',
    'price',
    'mass',
    'float',
    'performance',
    'limits',
    'electrics',
    'laminate',
    'tow',
  ],
  plan: ['figures'],
  verify: ['figures', 'float'],
  draw: ['figures'],
  documents: ['figures', 'plan'],
  site: ['documents', 'draw', 'read'],
  print: ['documents'],
  cli: ['site', 'print', 'verify'],
};

/** The name that a folder's one file exports. */
const nameOf = (folder: string): string => `${folder}Name`;

function sourceOf(folder: string, imports: readonly string[]): string {
  const lines = imports.map((other) => `import { ${nameOf(other)} } from '../${other}/index.ts';`);
  const parts = [`'${folder}'`, ...imports.map(nameOf)];
  const value = `export const ${nameOf(folder)}: string = [${parts.join(', ')}].join(' ');`;
  return [...lines, '', value, ''].join('\n');
}

/** A small src/ with every folder, in which each import is one that the rules allow. */
export function soundTree(): Files {
  const files: Record<string, string> = {};
  for (const [folder, imports] of Object.entries(IMPORTS)) {
    files[`src/${folder}/index.ts`] = `export { ${nameOf(folder)} } from './${folder}.ts';\n`;
    files[`src/${folder}/${folder}.ts`] = sourceOf(folder, imports);
  }
  files['src/read/files.ts'] = "export { readFileSync } from 'node:fs';\n";
  files['src/money/amount.ts'] = "export { add } from 'dinero.js';\n";
  files['src/resolve/located.ts'] =
    "import type { readName } from '../read/index.ts';\n\nexport type Located = typeof readName;\n";
  files['src/documents/view.ts'] =
    "import type { floatName } from '../float/index.ts';\n\nexport type View = typeof floatName;\n";
  return files;
}
