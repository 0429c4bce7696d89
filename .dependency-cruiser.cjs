/**
 * Rules about modules and packages. Which room may import which is the business of tests/meta/layers.test.ts.
 * @type {import('dependency-cruiser').IConfiguration}
 */
module.exports = {
  forbidden: [
    {
      name: 'no-circular',
      comment: 'Two modules that need each other are one module, or lack a third one below both.',
      severity: 'error',
      from: { path: '^src' },
      to: { circular: true },
    },
    {
      name: 'no-unresolvable',
      comment: 'The import leads nowhere.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'no-tests-in-product',
      comment: 'What the product needs belongs in src.',
      severity: 'error',
      from: { path: '^src' },
      to: { path: '^tests' },
    },
    {
      name: 'no-development-package-in-product',
      comment:
        'The app ships with the packages of "dependencies" only; the launchers may use the build tool.',
      severity: 'error',
      from: { path: '^src', pathNot: '^src/cli/[^/]+[.]mjs$' },
      to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'], dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'charts-only-in-charts',
      comment:
        'The chart library is loaded after the first answer; import a chart from ui/charts/lazy.ts instead.',
      severity: 'error',
      from: { path: '^(src|tests)', pathNot: '^src/ui/charts/' },
      to: { path: '^node_modules/recharts' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
    },
  },
};
