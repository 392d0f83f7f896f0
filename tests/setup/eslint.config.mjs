// Lint rules; each restriction carries its reason, so that the message teaches.
import { fileURLToPath } from 'node:url'
import tseslint from 'typescript-eslint'

const root = fileURLToPath(new URL('../..', import.meta.url))

const pure = [
  {
    selector: "CallExpression[callee.object.name='Date'][callee.property.name='now']",
    message: 'core has no clock: take the time as an argument.',
  },
  {
    selector: "NewExpression[callee.name='Date'][arguments.length=0]",
    message: 'core has no clock: take the time as an argument.',
  },
  {
    selector: "CallExpression[callee.object.name='Math'][callee.property.name='random']",
    message: 'core is deterministic: take ids and chance as arguments.',
  },
]

export default tseslint.config(
  { ignores: ['**/.build/**', '**/node_modules/**', '**/*.mjs', '**/vitest.config.ts'] },
  ...tseslint.configs.recommendedTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: root } },
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
      'no-console': 'error',
      eqeqeq: ['error', 'smart'],
      'no-restricted-exports': ['error', { restrictDefaultExports: { direct: true } }],
    },
  },
  {
    files: ['shared/**/*.ts', 'core/**/*.ts'],
    ignores: ['core/media/engine/**'],
    rules: { 'no-restricted-syntax': ['error', ...pure] },
  },
  { files: ['tests/**/*.ts'], rules: { '@typescript-eslint/no-non-null-assertion': 'off', 'no-console': 'off' } },
)
