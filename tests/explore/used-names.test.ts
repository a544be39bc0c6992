import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkDesign, withRemedies } from '../../src/check-design.js';
import { mostDelicate } from '../../src/explore/most-delicate.js';
import { toleranceOf } from '../../src/explore/tolerance.js';
import { usedNames } from '../../src/explore/used-names.js';
import { read } from '../design/read.js';

const short = readFileSync('fixtures/short-tails/design.yaml', 'utf8');
const more = Array.from({ length: 300 }, (_, i) => `  idle${i}: ${i + 1} in\n`).join('');
const crowded = short.replace(
  'dimensions:\n',
  `dimensions:\n${more}  ratio: 3\n  base: 12 in\n  half: base / 2\n`,
);

test('what something is made of is used, if by way of others', () => {
  const plain = [...usedNames(read(short))];
  expect(plain).toContain('tail');
  expect(new Set(usedNames(read(crowded)))).toEqual(new Set(plain));
  const used = usedNames(read(crowded.replace(/tail: 12 in/, 'tail: half * 2')));
  expect(new Set(used)).toEqual(new Set([...plain, 'half', 'base']));
});

test('what nothing is made of is neither changed, nor off, nor delicate, nor looked at', () => {
  const design = read(crowded);
  const spread = (text: string) => {
    const answer = toleranceOf(read(text), { samples: 2, seed: 1, chance: null, people: null });
    if (!answer.ok) throw new Error('a chair that cannot be built');
    return answer.value;
  };
  const { errors, exact } = spread(crowded);
  const names = (of: readonly { readonly variable: { readonly name: string } }[]): string[] =>
    of.map(({ variable }) => variable.name);
  expect(names(errors).filter((name) => name.startsWith('idle'))).toEqual([]);
  expect(exact.map(({ name }) => name)).not.toContain('ratio');
  expect(mostDelicate(design, 2)).toEqual(mostDelicate(read(short), 2));
  const remediesOf = (text: string) => {
    const result = checkDesign(text, 'short.yaml');
    if (!result.ok) throw new Error('a chair that cannot be checked');
    const { remedies } = withRemedies(result.value, text, { stage: 'drawing' });
    return [...remedies].map(([id, all]) => [
      id,
      all.map(({ changes }) => names(changes.map(({ change }) => change))),
    ]);
  };
  expect(remediesOf(crowded)).toEqual(remediesOf(short));
  // Unless the design says how far off it is.
  expect(names(spread(`${crowded}\nerrors: { idle7: 1/8 in }\n`).errors)).toContain('idle7');
});
