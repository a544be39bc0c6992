/** All mistakes of a file are told at once, in its order, each once. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { mistakesIn } from './read.js';

it('tells six different mistakes together', async () => {
  const text = readFileSync(new URL('../golden/six-mistakes.yaml', import.meta.url), 'utf8');
  const mistakes = mistakesIn(text, 'six-mistakes.yaml');
  await expect(`${mistakes.join('\n')}\n`).toMatchFileSnapshot('../golden/six-mistakes.txt');
  expect(mistakes).toHaveLength(6);
});
