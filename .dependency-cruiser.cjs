// Arrows only point down (docs/architecture.md). A lib is entered through its index, or a named entry.
const lib = (name) => `^libs/${name}/`;
const only = (name, allowed) => ({
  name: `${name}-imports`,
  comment: `libs/${name} may import only: ${allowed.join(', ') || 'nothing'}`,
  severity: 'error',
  from: { path: lib(name), pathNot: '\\.spec\\.ts$' },
  to: { path: '^(libs|apps)/', pathNot: [name, ...allowed].map(lib) },
});

// Well-kept, small and pure packages, listed by name and place.
const purePackages = [
  ['network', 'geographiclib-geodesic|astronomy-engine'],
  ['routing/src/milp', 'highs|javascript-lp-solver'],
  ['contract', 'zod'],
  ['loading/src/code-square', 'qrcode-generator'],
];

const notOurs = ['npm', 'npm-dev', 'core', 'npm-no-pkg', 'unknown'];

module.exports = {
  forbidden: [
    only('units', []),
    only('network', ['units']),
    only('loading', ['units', 'network']),
    only('stock', ['units']),
    only('forecast', ['units']),
    only('routing', ['units']),
    only('planning', ['units', 'network', 'loading', 'stock', 'forecast', 'routing']),
    only('contract', ['units', 'network', 'loading', 'stock', 'forecast', 'routing', 'planning']),
    {
      name: 'contract-takes-types-only',
      severity: 'error',
      from: { path: lib('contract'), pathNot: '\\.spec\\.ts$' },
      to: {
        path: '^libs/(network|loading|stock|forecast|routing|planning)/',
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'libs-are-pure',
      comment:
        'no npm or Node module in a lib, but for the packages listed by name and the folders of threads',
      severity: 'error',
      from: {
        path: '^libs/',
        pathNot: [
          '\\.spec\\.ts$',
          '^libs/(routing|planning)/src/threads/',
          ...purePackages.map(([at]) => `^libs/${at}/`),
        ],
      },
      to: { dependencyTypes: notOurs, pathNot: '^libs/' },
    },
    ...purePackages.map(([at, names]) => ({
      name: `packages-of-${at.replace(/\W/g, '-')}`,
      severity: 'error',
      from: { path: `^libs/${at}/`, pathNot: '\\.spec\\.ts$' },
      to: { dependencyTypes: notOurs, pathNot: ['^libs/', `node_modules/(${names})/`] },
    })),
    {
      name: 'through-the-index',
      comment: "no import past a lib's src/index.ts or its named entries",
      severity: 'error',
      from: { path: '^(libs|apps|tests)/([^/]+)/' },
      to: {
        path: '^libs/[^/]+/(src|dist)/',
        pathNot: [
          '^libs/$2/',
          '^libs/[^/]+/(src|dist)/index\\.',
          '^libs/routing/(src|dist)/(milp|threads)/index\\.',
          '^libs/planning/(src|dist)/threads/index\\.',
          '^libs/contract/(src|dist)/answers/index\\.',
          '^libs/loading/(src|dist)/(code-square|examples)/index\\.',
        ],
      },
    },
    { name: 'libs-never-import-apps', severity: 'error', from: { path: '^libs/' }, to: { path: '^apps/' } },
    {
      name: 'a-feature-enters-another-by-its-service',
      comment: "a feature folder of the server imports another's services, modules and types, only",
      severity: 'error',
      from: {
        path: '^apps/server/src/([^/]+)/',
        pathNot: ['\\.spec\\.ts$', '^apps/server/src/database/', '/testing/'],
      },
      to: {
        path: '^apps/server/src/[^/]+/',
        pathNot: [
          '^apps/server/src/($1|database|embedded-postgres|http|queue)/',
          '\\.(service|module)\\.ts$',
          '^apps/server/src/people/(access|permission)\\.ts$',
          '^apps/server/src/plans/run-solve\\.ts$',
        ],
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'web-imports',
      comment:
        'the pages may import contract, units, loading, stock, network: never a solver, never the server',
      severity: 'error',
      from: { path: '^apps/web/' },
      to: {
        path: '^(libs|apps)/',
        pathNot: ['^apps/web/', ...['contract', 'units', 'loading', 'stock', 'network'].map(lib)],
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'a-page-never-imports-another',
      severity: 'error',
      from: { path: '^apps/web/src/pages/([^/]+)/' },
      to: { path: '^apps/web/src/pages/', pathNot: '^apps/web/src/pages/$1/' },
    },
    {
      name: 'parts-know-no-page',
      severity: 'error',
      from: { path: '^apps/web/src/(ui|api)/' },
      to: { path: '^apps/web/src/(pages|frame)/' },
    },
    {
      name: 'the-child-only-plans',
      comment: 'the child that solves imports the planner: no Nest, no database',
      severity: 'error',
      from: { path: '^apps/server/src/(solve\\.child|plans/solve-messages)\\.ts$' },
      to: {
        path: '.',
        pathNot: ['^libs/(planning|routing)/', '^apps/server/src/plans/solve-messages\\.ts$'],
      },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'no-orphans',
      severity: 'error',
      from: {
        orphan: true,
        pathNot: ['\\.spec\\.ts$', 'index\\.ts$', '\\.d\\.ts$', 'main\\.tsx?$', '/bin/', '^apps/web/[^/]+$'],
      },
      to: {},
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(libs|apps)/[^/]+/dist/|node_modules/.cache' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.base.json' },
    enhancedResolveOptions: {
      conditionNames: ['source', 'import', 'node', 'default', 'types'],
      exportsFields: ['exports'],
    },
  },
};
