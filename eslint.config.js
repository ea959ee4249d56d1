import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

const noClock =
  'Reasoning has no clock, no chance and no process: pass the value in as an argument.';
const impure = [
  ...['Date', 'performance', 'process', 'console', 'globalThis', 'global', 'crypto', 'fetch'],
  ...['setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask', 'Buffer'],
];

export default defineConfig(
  { ignores: ['dist/', 'coverage/', 'data/', '.cache/'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      eqeqeq: 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
    },
  },
  {
    files: ['server/**/*.ts'],
    ignores: ['server/config.ts'],
    rules: {
      'no-restricted-properties': [
        'error',
        { object: 'process', property: 'env', message: 'Only server/config.ts reads settings.' },
      ],
    },
  },
  {
    files: ['server/reasoning/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', ...impure.map((name) => ({ name, message: noClock }))],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: noClock },
      ],
    },
  },
  { files: ['**/*.js', '**/*.cjs'], extends: [tseslint.configs.strict] },
  { files: ['**/*.cjs'], languageOptions: { sourceType: 'commonjs' } },
);
