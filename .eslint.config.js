import js from '@eslint/js';
import { defineConfig } from 'eslint/config';
import ts from 'typescript-eslint';

export default defineConfig(
  { ignores: ['dist', 'coverage'] },
  js.configs.recommended,
  { files: ['bin/*.js'], languageOptions: { globals: { URL: 'readonly' } } },
  {
    files: ['**/*.ts'],
    extends: [ts.configs.strictTypeChecked],
    languageOptions: {
      parserOptions: { project: './tests/tsconfig.json', tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      // Messages are full of numbers.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      // `table[i]!` where the line above bounds i reads better than a branch that cannot be taken.
      '@typescript-eslint/no-non-null-assertion': 'off',
      // Constants stand with the digits their source prints, so that they can be compared with it.
      'no-loss-of-precision': 'off',
    },
  },
);
