/** A design as a function of its dimensions, held against checking each changed design from its text. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkDesign } from '../../src/check-design.js';
import type { Design } from '../../src/design/read-design.js';
import { readDesign } from '../../src/design/read-design.js';
import { designFunction } from '../../src/explore/design-function.js';
import { judgeFor } from '../../src/explore/judge.js';
import { variablesOf } from '../../src/explore/variables.js';

const fixtureText = (name: string): string => readFileSync(`fixtures/${name}/design.yaml`, 'utf8');

function designOf(text: string): Design {
  const read = readDesign(text, 'design.yaml');
  if (!read.ok) throw new Error('a fixture that cannot be read');
  return read.value;
}

const cases = ['porch-rocker', 'nursing', 'unequal-rockers', 'two-radii', 'free-curve', 'short-nose'];

test.each(cases)('%s: one design after another gives what each gives alone, to the last digit', (name) => {
  const text = fixtureText(name);
  const design = designOf(text);
  const variables = variablesOf(design).filter(({ of }) => of === null);
  const changing = designFunction(design, variables);
  const judge = judgeFor(['empty', 'seated', 'child-on-the-tails']);
  const factor = fc.double({ min: 0.93, max: 1.08, noNaN: true });
  const change = fc.array(fc.record({ which: fc.nat(Math.max(0, variables.length - 1)), factor }), {
    maxLength: 2,
  });
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 6 }), (changes) => {
      for (const one of changes) {
        const values = variables.map(({ stated }, i) =>
          one.reduce((value, { which, factor }) => (which === i ? value * factor : value), stated),
        );
        const named = new Map(variables.map((variable, i) => [variable.name, values[i]!]));
        const [tried, alone] = [changing.at(values), checkDesign(text, 'design.yaml', named)];
        expect(tried.ok).toBe(alone.ok);
        if (!alone.ok || !tried.ok) {
          expect(tried).toEqual(alone);
          continue;
        }
        expect(tried.chair).toEqual(alone.value.chair);
        const { limits } = judge(tried);
        const loads = new Set(limits.map(({ load }) => load));
        expect(limits).toEqual(alone.value.limits.filter(({ load }) => loads.has(load)));
      }
    }),
    { numRuns: 12 },
  );
});

test('what a dimension does not touch is the very same object as before', () => {
  const design = designOf(fixtureText('porch-rocker'));
  const variables = variablesOf(design).filter(({ name }) => name === 'radius' || name === 'spacing');
  const { at } = designFunction(design, variables);
  const [a, b, c] = [at([0.9, 0.5]), at([0.91, 0.5]), at([0.91, 0.51])];
  if (!a.ok || !b.ok || !c.ok) throw new Error('a porch rocker that cannot be built');
  const same = (one: typeof a, other: typeof a): string[] =>
    one.chair.parts.filter((part, i) => part === other.chair.parts[i]).map(({ name }) => name);
  expect(same(a, b)).toEqual(a.chair.parts.map(({ name }) => name).filter((name) => name !== 'rocker'));
  expect(same(b, c)).toContain('rocker');
  expect(same(b, c)).not.toContain('front rail');
  expect(c.chair.profile).toBe(b.chair.profile);
  expect(a.people).toBe(b.people);
});

test('sizes of sitters are varied like dimensions', () => {
  const design = designOf(fixtureText('porch-rocker'));
  const variables = variablesOf(design).filter(({ name }) => name === 'tallest mass');
  expect(variables.map(({ stated }) => stated)).toEqual([110]);
  const tried = designFunction(design, variables).at([90]);
  if (!tried.ok) throw new Error('a porch rocker that cannot be built');
  const sizes = tried.people.persons.map(({ size }) => size.mass);
  expect(sizes[1]).toBe(90);
  expect(sizes[0]).toBeCloseTo(105 * 0.45359237, 12);
});
