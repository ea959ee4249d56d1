/** Which way imports may point: one entry a line of the table in docs/architecture.md. */

const ours = (...folders) => folders.map((folder) => `^server/${folder}`);
const npm = (...names) => names.map((name) => `^node_modules/${name}/`);
const node = (...names) => names.map((name) => `^(node:)?${name}$`);

/** A folder may import itself and what is listed, nothing else. */
const mayImport = (folder, ...allowed) => ({
  name: `${folder}-imports`,
  severity: 'error',
  from: { path: `^server/${folder}/` },
  to: { pathNot: [`^server/${folder}/`, ...allowed.flat()] },
});

/** A package is used in these places only (and in tests). */
const onlyIn = (name, ...places) => ({
  name: `${name}-only-in`,
  severity: 'error',
  from: { path: '^server/', pathNot: places },
  to: { path: npm(name) },
});

const web = [
  ...ours('reasoning/index\\.ts$', 'output/', 'words/', 'errors\\.ts$', 'config\\.ts$'),
  ...npm('fastify', '@fastify/[^/]+', 'fastify-type-provider-zod', 'zod', 'handlebars', 'pino'),
];

module.exports = {
  forbidden: [
    mayImport('reasoning'),
    mayImport(
      'catalogue',
      ours('reasoning/', 'errors\\.ts$'),
      npm('zod', 'yaml'),
      node('fs', 'path', 'url', 'process'),
    ),
    mayImport('words', ours('reasoning/')),
    mayImport(
      'output',
      ours('reasoning/', 'words/'),
      npm('qrcode', '@types/qrcode', 'd3-[a-z]+', '@types/d3-[a-z]+'),
    ),
    {
      name: 'web-imports',
      severity: 'error',
      from: { path: '^server/web/' },
      to: { pathNot: ['^server/web/', ...web], dependencyTypesNot: ['core'] },
    },
    {
      name: 'reasoning-front-door',
      severity: 'error',
      from: { path: '^server/', pathNot: '^server/reasoning/' },
      to: { path: '^server/reasoning/', pathNot: '^server/reasoning/index\\.ts$' },
    },
    { name: 'main-is-last', severity: 'error', from: {}, to: { path: '^server/main\\.ts$' } },
    {
      name: 'no-tests-in-server',
      severity: 'error',
      from: { path: '^server/' },
      to: { path: '^tests/' },
    },
    onlyIn('fastify', '^server/web/', '^server/main\\.ts$'),
    onlyIn('handlebars', '^server/web/plugins/views\\.ts$'),
    onlyIn('yaml', '^server/catalogue/'),
    onlyIn('qrcode', '^server/output/'),
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    { name: 'no-unresolved', severity: 'error', from: {}, to: { couldNotResolve: true } },
    {
      name: 'no-dev-packages',
      severity: 'error',
      from: { path: '^server/' },
      to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['type-only'] },
    },
  ],
  options: {
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { conditionNames: ['import', 'node', 'types', 'default'] },
  },
};
