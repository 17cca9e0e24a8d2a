// Data runs one way through the rooms of src/, and an import may only follow it to the left: `npm run imports`.
'use strict';

const rooms = [
  ...['quantity', 'plan', 'vehicle', 'steel', 'heat', 'joint', 'measure'],
  ...['facts', 'packs', 'judge', 'report', 'marking', 'recheck', 'draft', 'cli'],
];

/** One rule a room: it imports from no room that stands to its right. */
const leftOnly = rooms.slice(0, -1).map((room, index) => ({
  name: `${room}-imports-to-its-left`,
  comment: `src/${room} knows nothing of what comes after it.`,
  severity: 'error',
  from: { path: `^src/${room}/` },
  to: { path: `^src/(?:${rooms.slice(index + 1).join('|')})/` },
}));

/** A package or a part of Node that only the given files may import. */
function onlyIn(name, packages, files, comment) {
  return {
    name,
    comment,
    severity: 'error',
    from: { path: '^src/', pathNot: files },
    to: { path: packages },
  };
}

module.exports = {
  forbidden: [
    ...leftOnly,
    {
      name: 'trade-rooms-know-no-plan',
      comment: 'Units, vehicle, steel, heat, joints and measuring can be used without any plan file.',
      severity: 'error',
      from: { path: '^src/(?:quantity|vehicle|steel|heat|joint|measure)/' },
      to: { path: '^src/plan/' },
    },
    {
      name: 'generated-imports-types',
      comment: 'Generated code is data; only the compiled validators call something, the formats.',
      severity: 'error',
      from: { path: '^src/generated/' },
      to: {
        path: '^src/(?!generated/)',
        pathNot: '^src/plan/formats\\.ts$',
        dependencyTypesNot: ['type-only'],
      },
    },
    onlyIn(
      'yaml-behind-the-reader',
      'node_modules/yaml/',
      '^src/plan/(?:read-yaml|yaml-fault|locate-nodes)\\.ts$',
      'The YAML package is one that can be exchanged: all else sees located nodes.',
    ),
    onlyIn(
      'commander-in-cli',
      'node_modules/commander/',
      '^src/cli/',
      'Commands and options are the command line.',
    ),
    onlyIn(
      'matrices-in-measure',
      'node_modules/ml-matrix/',
      '^src/measure/',
      'Matrices are a means of the fit; all else sees places and motions.',
    ),
    onlyIn(
      'globs-in-cli',
      'node_modules/tinyglobby/',
      '^src/cli/',
      'Which files are meant is for the command line to say.',
    ),
    onlyIn(
      'colour-in-report',
      'node_modules/chalk/',
      '^src/report/',
      'Colour is part of one form of report.',
    ),
    onlyIn(
      'no-schema-compiler-at-run-time',
      'node_modules/ajv/',
      '^$',
      'Schemas are compiled ahead, by .build/validators.ts.',
    ),
    onlyIn(
      'files-read-in-few-places',
      '^(?:node:)?fs(?:/promises)?$',
      '^src/(?:cli/|plan/read-file\\.ts$|packs/sources/|generated/built-in-packs\\.ts$)',
      'All else works on what it is given.',
    ),
    onlyIn(
      'surroundings-in-cli',
      '^(?:node:)?(?:os|child_process|worker_threads|net|http|https|dns|process|perf_hooks)$',
      '^src/cli/',
      'No result depends on the machine, its clock or its network.',
    ),
    {
      name: 'no-cycles',
      comment: 'Two files that need each other are one unit, or a third is missing.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-orphans',
      comment: 'A file that nothing reaches from the command line is either forgotten or finished with.',
      severity: 'error',
      from: { path: '^src/cli/main\\.ts$' },
      // The second bundle begins there.
      to: { path: '^src/', pathNot: ['\\.d\\.ts$', '^src/cli/(?:check|steel)-main\\.ts$'], reachable: false },
    },
    {
      name: 'imports-resolve',
      comment: 'A path that leads nowhere is seen by no other rule.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    // Types count: a type from the right ties a room as well as a value does.
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.js', '.d.ts'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'node'],
    },
  },
};
