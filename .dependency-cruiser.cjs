// @ts-check
// The layers of src/, from the ground up. Each rule says why it exists and how to fix a break;
// tests/house/layers-gate.test.ts plants a break of every rule and sees the rule catch it.

const GROUND = 'words|units|maths|money|findings';
const ROOMS = 'price|mass|float|performance|limits|electrics|laminate|tow';
const SHELL = 'site|print|cli';
const EVERY_FOLDER = `${GROUND}|schema|read|resolve|derive|${ROOMS}|figures|verify|issued|plan|draw|documents|${SHELL}`;

/** An import that leaves nothing behind when the types are erased. */
const TYPES_ONLY = 'type-only';
const DOWN = 'Move the shared part to a lower level, or pass its value as an argument.';

/**
 * `folders` may import, besides themselves, the faces of `allowed` and nothing else of ours.
 * The folder is the first capture group, so that `$1` is the importing folder itself.
 *
 * @param {string} name
 * @param {string} folders
 * @param {string} allowed
 * @param {string} comment
 * @returns {import('dependency-cruiser').IForbiddenRuleType}
 */
const looksDown = (name, folders, allowed, comment) => ({
  name,
  severity: 'error',
  comment,
  from: { path: `^src/(${folders})/` },
  to: {
    path: '^src/',
    pathNot: allowed === '' ? ['^src/$1/'] : ['^src/$1/', `^src/(${allowed})/`],
  },
});

const BELOW_RESOLVE = `${GROUND}|schema|read`;
const BELOW_FIGURES = `${BELOW_RESOLVE}|resolve|derive|${ROOMS}`;
const BELOW_PLAN = `${BELOW_FIGURES}|figures`;
const BELOW_DRAW = `${BELOW_PLAN}|issued|plan|verify`;
const BELOW_DOCUMENTS = `${BELOW_DRAW}|draw`;
const BELOW_SHELL = `${BELOW_DOCUMENTS}|documents`;

/** @type {import('dependency-cruiser').IForbiddenRuleType[]} */
const levels = [
  looksDown(
    'ground-stands-alone',
    'units|maths|findings|words',
    '',
    'Everything stands on units/, maths/, findings/ and words/, so they stand on nothing of ours. Move what they need into them, or the need out of them.',
  ),
  looksDown(
    'money-imports-units-only',
    'money',
    'units',
    'Money may name a quantity and nothing else of ours. Pass the value in, or move the rule that needs more to price/.',
  ),
  looksDown(
    'schema-looks-down',
    'schema',
    GROUND,
    `A schema is built on quantities, money and findings, and is read by everybody above. ${DOWN}`,
  ),
  looksDown(
    'read-looks-down',
    'read',
    `${GROUND}|schema`,
    `The reader turns files into typed values and knows nothing of what is done with them. ${DOWN}`,
  ),
  looksDown(
    'resolve-looks-down',
    'resolve',
    BELOW_RESOLVE,
    `One order meets the catalogue before anything is computed. ${DOWN}`,
  ),
  looksDown(
    'derive-looks-down',
    'derive',
    `${GROUND}|schema|resolve`,
    `What follows from what was typed stands on the Build alone, before any room is called. ${DOWN}`,
  ),
  looksDown(
    'rooms-import-ground-only',
    ROOMS,
    GROUND,
    'A room is numbers in, numbers out, and never looks into another room. Take the number as an argument; src/figures hands the result of one room to the next.',
  ),
  looksDown(
    'figures-look-down',
    'figures',
    BELOW_FIGURES,
    `Figures call the rooms in order and know nothing of who prints them. ${DOWN}`,
  ),
  looksDown(
    'issued-looks-down',
    'issued',
    BELOW_PLAN,
    `What was sent is figures kept as they were, and what they would be today. ${DOWN}`,
  ),
  {
    name: 'sent-quotes-stand-alone',
    severity: 'error',
    comment:
      'What was sent is read by a form of its own, so that no rename inside can break it. Turn values into that form, and out of it, in src/issued beside it.',
    from: { path: '^src/issued/form/' },
    to: { path: '^src/', pathNot: ['^src/issued/form/', `^src/(${GROUND})/`] },
  },
  looksDown(
    'plan-looks-down',
    'plan',
    `${BELOW_PLAN}|issued`,
    `The plan across orders stands on the figures, and on what was issued, so that anything above may ask it. ${DOWN}`,
  ),
  looksDown(
    'verify-looks-down',
    'verify',
    `${BELOW_PLAN}|issued|plan`,
    `The checks against the published world hold computations, the plan's among them, and no documents. ${DOWN}`,
  ),
  looksDown(
    'draw-looks-down',
    'draw',
    BELOW_DRAW,
    `A drawing is numbers turned into lines, whichever document it lands in. ${DOWN}`,
  ),
  looksDown(
    'documents-look-down',
    'documents',
    BELOW_DOCUMENTS,
    `A document says what one reader sees, its drawings among it, and knows nothing of pages or browsers. ${DOWN}`,
  ),
  looksDown(
    'site-and-print-stand-apart',
    'site|print',
    BELOW_SHELL,
    'Pages can be made without a browser, and a browser can print any page: site/ and print/ do not import each other, nor cli/. Let the command in src/cli call both.',
  ),
];

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    {
      name: 'no-circular',
      severity: 'error',
      comment:
        'Files that import each other cannot be read, tested or moved alone. Move what both need into a third file.',
      from: {},
      to: { circular: true },
    },
    {
      name: 'one-face',
      severity: 'error',
      comment:
        'Each folder shows one face, its index.ts, so that its inside can change. Import the face; if the name is missing there, add it to the exports.',
      from: { path: '^src/([^/]+)/' },
      to: { path: '^src/[^/]+/.+', pathNot: ['^src/$1/', '^src/[^/]+/index[.]ts$'] },
    },
    {
      name: 'every-folder-has-a-level',
      severity: 'error',
      comment:
        'A folder outside the list of levels would escape every rule here. Give it a level in .dependency-cruiser.cjs, or move its files to a folder that has one.',
      from: { path: '^src/', pathNot: [`^src/(${EVERY_FOLDER})/`] },
      to: {},
    },
    ...levels,
    {
      name: 'only-figures-calls-rooms',
      severity: 'error',
      comment:
        'The rooms are called in one place, so that the same numbers stand in every document (verify/ calls them to hold them against published values). Read the result from the figures; a type alone may be imported with `import type`.',
      from: { path: '^src/', pathNot: [`^src/(${ROOMS}|figures|verify)/`] },
      to: { path: `^src/(${ROOMS})/`, dependencyTypesNot: [TYPES_ONLY] },
    },
    {
      name: 'rooms-are-pure',
      severity: 'error',
      comment:
        'A room gives the same numbers on every machine, so it imports nothing of Node. Take the value as an argument.',
      from: { path: `^src/(${ROOMS})/` },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'only-reader-and-shell-touch-the-machine',
      severity: 'error',
      comment:
        'Files, environment and clock are met at the two ends only: read/ at the way in, site/, print/ and cli/ at the way out. Pass the value in from there.',
      from: { path: '^src/', pathNot: [`^src/(${ROOMS}|read|${SHELL})/`] },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'pure-folders-never-run-the-reader',
      severity: 'error',
      comment:
        'To import the reader is to import the file system. Use its types with `import type` and take its values as arguments.',
      from: { path: '^src/(resolve|figures|issued|plan|draw|documents)/' },
      to: { path: '^src/read/', dependencyTypesNot: [TYPES_ONLY] },
    },
    {
      name: 'only-money-knows-dinero',
      severity: 'error',
      comment:
        'Money is rounded and shared out at named places, all of them in money/. Use its face; if an operation is missing, add it there with its rounding.',
      from: { path: '^src/', pathNot: ['^src/money/'] },
      to: { path: 'node_modules/dinero[.]js/' },
    },
    {
      name: 'no-development-packages',
      severity: 'error',
      comment:
        'A development package is absent where only Orlop is installed. Move the package to `dependencies`, or the code to tests/.',
      from: { path: '^src/' },
      to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: [TYPES_ONLY] },
    },
    {
      name: 'no-unresolvable',
      severity: 'error',
      comment:
        'An import that leads nowhere hides from every other rule. Mend the path (with its .ts), or name the package in package.json.',
      from: { path: '^src/' },
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(_site|[.]cache)/' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
      mainFields: ['module', 'main', 'types'],
    },
  },
};
