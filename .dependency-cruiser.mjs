import { builtinModules } from 'node:module';

const belowDaybook = ['reference', 'packages/units', 'packages/words', 'packages/science'];
const belowTheThree = [...belowDaybook, 'packages/daybook'];
const belowApps = [...belowTheThree, 'packages/advisor', 'packages/sync', 'packages/store', 'packages/demo'];

/**
 * Which parts each part may import beside itself, from the bottom up; everything else is refused.
 * @type {Readonly<Record<string, readonly string[]>>}
 */
const below = {
  reference: [],
  'packages/units': ['reference'],
  'packages/words': ['reference', 'packages/units'],
  'packages/science': ['reference', 'packages/units', 'packages/words'],
  'packages/daybook': belowDaybook,
  'packages/advisor': belowTheThree,
  'packages/sync': belowTheThree,
  'packages/store': belowTheThree,
  'packages/demo': belowTheThree,
  'apps/web': belowApps,
  'apps/server': belowApps,
  'apps/cli': belowApps,
};

const testHelpers = '/testing/';
const tests = ['\\.test\\.tsx?$', testHelpers];
/** The parts without clock, randomness, input or output of their own. */
const core = '^packages/(units|words|science|daybook|advisor|sync|demo)/';

/** @type {import('dependency-cruiser').IForbiddenRuleType[]} */
const layers = Object.entries(below).map(([part, parts]) => ({
  name: `what-${part.split('/').at(-1)}-imports`,
  comment: `${part} may import ${parts.length === 0 ? 'no other part' : `only ${parts.join(', ')}`}; a test may import any testing helper too.`,
  severity: 'error',
  from: { path: `^${part}/` },
  to: { path: '^(reference|packages|apps)/', pathNot: [testHelpers, ...[part, ...parts].map((name) => `^${name}/`)] },
}));

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [
    ...layers,
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'only-tests-import-tests',
      severity: 'error',
      from: { pathNot: tests },
      to: { path: tests },
    },
    {
      name: 'core-imports-no-node-module',
      comment: 'The core runs in a browser as well; what it needs from outside is handed to it.',
      severity: 'error',
      from: { path: core, pathNot: tests },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'browser-reaches-no-node-module',
      comment: 'What the browser loads, near or far, must do without Node and without libsql.',
      severity: 'error',
      from: { path: ['^apps/web/src/', '^packages/store/src/indexeddb'], pathNot: tests },
      to: { path: ['^node:', `^(${builtinModules.join('|')})$`, 'node_modules/libsql/'], reachable: true },
    },
    {
      name: 'every-import-is-found',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^virtual:' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '/dist/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['types', 'import', 'node', 'default'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'],
    },
  },
};
