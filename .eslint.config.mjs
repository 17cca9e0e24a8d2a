// Under a dot name because the top of the checkout holds no tool files; `npm run lint` passes it by --config.
import js from '@eslint/js';
import tseslint from 'typescript-eslint';

const size = (max) => ['warn', { max, skipBlankLines: true, skipComments: true }];

const nodeGlobals = {
  process: 'readonly',
  Buffer: 'readonly',
  performance: 'readonly',
  console: 'readonly',
  URL: 'readonly',
};

export default tseslint.config(
  {
    ignores: ['node_modules/', 'src/generated/', 'schemas/report.d.ts', 'bin/planish.bundle.*', 'examples/'],
  },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  js.configs.recommended,
  {
    rules: {
      eqeqeq: 'error',
      'no-restricted-globals': ['error', 'isNaN', 'isFinite'],
      'max-lines': size(300),
    },
  },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/consistent-type-assertions': ['error', { assertionStyle: 'never' }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'separate-type-imports' }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/explicit-module-boundary-types': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      // The compiler asks for `record['key']` where the key comes from an index signature only in other settings.
      '@typescript-eslint/dot-notation': 'off',
      // Designations, dates and identification numbers are read character by character; none holds a joined character.
      '@typescript-eslint/no-misused-spread': 'off',
      // Both only shorten what a reader is glad to see written out.
      '@typescript-eslint/no-unnecessary-type-arguments': 'off',
      '@typescript-eslint/no-meaningless-void-operator': 'off',
      // A number in a sentence needs no wrapping.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
    },
  },
  {
    // Clock, locale, environment and randomness stay in cli/, so that a verdict depends on plan, packs and date alone.
    files: ['src/**/*.ts'],
    ignores: ['src/cli/**'],
    rules: {
      'no-console': 'error',
      'no-restricted-globals': [
        'error',
        'process',
        'isNaN',
        'isFinite',
        'performance',
        'Intl',
        'fetch',
        'setTimeout',
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random' },
        { object: 'Date', property: 'now' },
        ...['toLocaleString', 'toLocaleDateString', 'toLocaleTimeString', 'localeCompare'].map(
          (property) => ({ property }),
        ),
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
          message: 'The date comes from the command line.',
        },
      ],
    },
  },
  {
    files: ['tests/**/*.ts'],
    rules: {
      'max-lines': size(500),
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/unbound-method': 'off',
      'no-loss-of-precision': 'off',
      '@typescript-eslint/explicit-module-boundary-types': 'off',
      '@typescript-eslint/no-confusing-void-expression': 'off',
      // A property that fast-check runs is not always asynchronous, and its promise is often returned.
      '@typescript-eslint/require-await': 'off',
      // Wrong input is made on purpose.
      '@typescript-eslint/consistent-type-assertions': ['error', { assertionStyle: 'as' }],
    },
  },
  {
    files: ['**/*.mjs'],
    languageOptions: { globals: nodeGlobals },
  },
  {
    files: ['bin/*.js', '**/*.cjs'],
    languageOptions: {
      sourceType: 'commonjs',
      globals: { ...nodeGlobals, require: 'readonly', module: 'writable', __dirname: 'readonly' },
    },
  },
);
