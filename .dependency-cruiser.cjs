// A folder may import only folders that stand before it in its list.
const coreOrder = [
  'units',
  'geometry',
  'alignment',
  'hardware',
  'site',
  'need',
  'fit',
  'layout',
  'staking',
  'quantities',
  'requirements',
  'measurement',
  'verdicts',
  'record',
  'survey',
  'condition',
  'risk',
  'ranking',
  'drill',
  'scene',
]
const outerOrder = ['core', 'words', 'formats', 'protocol', 'drawing', 'documents', 'operations', 'store']
const shells = ['server', 'web', 'cli']

const upward = (root, order, always = []) =>
  order.map((name, rank) => ({
    name: `no-upward-from-${name}`,
    severity: 'error',
    from: { path: `^${root}/${name}/` },
    to: { path: `^${root}/(${[...order.slice(rank + 1), ...always].join('|') || '(?!)'})/` },
  }))

module.exports = {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    ...upward('src/core', coreOrder),
    ...upward('src', outerOrder, shells),
    {
      name: 'core-knows-no-shelf',
      comment: 'What is judged comes with its sheets; only what tests start from may take one from the shelf.',
      severity: 'error',
      from: { path: '^src/core/', pathNot: '[.]test[.]ts$' },
      to: { path: '^src/sheets/' },
    },
    {
      name: 'sheets-know-core-only',
      severity: 'error',
      from: { path: '^src/sheets/' },
      to: { path: '^src/', pathNot: '^src/(sheets|core)/' },
    },
    {
      name: 'core-is-pure',
      severity: 'error',
      from: { path: '^src/core/', pathNot: '[.]test[.]ts$' },
      to: { dependencyTypes: ['core', 'npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg', 'npm-unknown'] },
    },
    {
      name: 'store-knows-core-and-formats-only',
      severity: 'error',
      from: { path: '^src/store/' },
      to: { path: '^src/', pathNot: '^src/(store|core|formats)/' },
    },
    {
      name: 'shells-do-not-meet',
      severity: 'error',
      from: { path: '^src/(server|web|cli)/' },
      to: { path: '^src/(server|web|cli)/', pathNot: '^src/$1/' },
    },
    {
      name: 'browser-side-has-no-node',
      severity: 'error',
      from: { path: '^src/(core|words|formats|protocol|drawing|documents|operations|web)/', pathNot: '[.]test[.]ts$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'run-page-carries-no-writers-for-other-programs',
      comment: 'They are large, and a phone would fetch them before it can show a run.',
      severity: 'error',
      from: { path: '^src/web/views/run-view[.]tsx$' },
      to: { path: '^src/(drawing/dxf|documents/(pdf|xlsx)|formats/(landxml|geopackage|ifc))/', reachable: true },
    },
    {
      name: 'database-drivers-live-in-store',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/store/' },
      to: { path: 'node_modules/(pg|better-sqlite3|kysely|@electric-sql)/' },
    },
    {
      name: 'tests-are-not-imported',
      severity: 'error',
      from: { path: '^src/', pathNot: '[.]test[.]ts$' },
      to: { path: '^test/|[.]test[.]ts$' },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
  },
}
