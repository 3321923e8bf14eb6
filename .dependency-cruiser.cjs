/** Who may import whom. Change this table only together with docs/map.md. */
const mayImport = {
  core: [],
  content: ['core'],
  demo: ['core', 'content'],
  documents: ['core', 'content'],
  actions: ['core', 'content', 'documents'],
  storage: ['core', 'actions'],
  server: ['core', 'content', 'demo', 'documents', 'actions', 'storage'],
  cli: ['core', 'content', 'demo', 'documents', 'actions', 'storage', 'server'],
  web: ['core', 'content', 'documents'], // and the *types* of actions
}
const notTests = '[.](test|prop)[.]tsx?$'

module.exports = {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },

    ...Object.entries(mayImport).map(([layer, below]) => ({
      name: `${layer}-stays-in-its-layer`,
      comment: `${layer} may import only: ${below.join(', ') || 'itself'}. Move the shared part down, or pass it in as an argument.`,
      severity: 'error',
      from: { path: `^src/${layer}/`, pathNot: notTests },
      to: {
        path: '^src/',
        pathNot: `^src/(${[layer, ...below].join('|')})/`,
        ...(layer === 'web' && { dependencyTypesNot: ['type-only'] }),
      },
    })),

    {
      name: 'foundations-know-no-medicine',
      severity: 'error',
      from: { path: '^src/core/(units|outcome|time|stats)/', pathNot: notTests },
      to: { path: '^src/core/', pathNot: '^src/core/(units|outcome|time|stats)/' },
    },
    {
      name: 'pure-layers-touch-no-machine', // 'core' here means Node's built-in modules
      severity: 'error',
      from: { path: '^src/(core|content|demo|documents|actions)/', pathNot: notTests },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'core-and-content-stand-alone',
      comment: 'The allow-list of pure packages stands in docs/decisions/0003-what-core-may-import.md.',
      severity: 'error',
      from: { path: '^src/(core|content|demo)/', pathNot: notTests },
      to: {
        dependencyTypes: ['npm', 'npm-dev', 'npm-no-pkg', 'npm-unknown'],
        pathNot:
          'node_modules/(decimal[.]js|temporal-polyfill|temporal-spec|temporal-utils|zod|@noble/hashes|@stdlib/)',
      },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
  },
}
