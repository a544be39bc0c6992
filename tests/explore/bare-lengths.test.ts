/** Lengths that makers write without a unit, in a design that says which it is. */
import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { checkDesign, withRemedies } from '../../src/check-design.js';
import { adjust } from '../../src/explore/adjust.js';
import { bareLengths } from '../../src/explore/bare-lengths.js';
import { toleranceOf } from '../../src/explore/tolerance.js';
import { printAdjustment } from '../../src/report/adjust-text.js';
import { reportJson } from '../../src/report/json.js';
import { read } from '../design/read.js';

const withUnits = readFileSync('fixtures/short-tails/design.yaml', 'utf8');
const [head, body] = ((): [string, string] => {
  const at = withUnits.indexOf('\n\n', withUnits.indexOf('dimensions:'));
  return [withUnits.slice(0, at), withUnits.slice(at)];
})();
/** The same in inches without saying so at each. */
const bare =
  head.slice(0, head.indexOf('dimensions:')) +
  head.slice(head.indexOf('dimensions:')).replace(/(\d) in\b/g, '$1') +
  body;

describe('a design whose dimensions are bare numbers', () => {
  it('is changed by the same steps, told in the same words', () => {
    expect(bare).not.toBe(withUnits);
    const remediesOf = (text: string) => {
      const result = checkDesign(text, 'short.yaml');
      if (!result.ok) throw new Error(JSON.stringify(result.issues));
      return reportJson(withRemedies(result.value, text, { stage: 'drawing' })).limits.flatMap((limit) =>
        limit.remedies.map(({ changes }) => changes),
      );
    };
    expect(remediesOf(bare).length).toBeGreaterThan(0);
    expect(remediesOf(bare)).toEqual(remediesOf(withUnits));
  });

  it('is off by what the shop is off', () => {
    const spreadOf = (text: string) => {
      const answer = toleranceOf(read(text), { samples: 16, seed: 1, chance: 0.3, people: null });
      if (!answer.ok) throw new Error(JSON.stringify(answer.issues));
      const { errors, exact, shop } = answer.value;
      return {
        errors: errors.map(({ variable, size }) => [variable.name, size]),
        exact: exact.map(({ name }) => name),
        spreads: shop.limits.map(({ spread }) => spread?.deviation.toPrecision(6)),
      };
    };
    expect(spreadOf(bare).errors.length).toBeGreaterThan(0);
    expect(spreadOf(bare)).toEqual(spreadOf(withUnits));
    const stated = spreadOf(`${bare}\nerrors: { tail: 1/8 }\n`).errors;
    expect(new Map(stated as [string, number][]).get('tail')).toBeCloseTo(0.0254 / 8, 12);
  });

  it('is adjusted over a range with or without a unit, and stays as it was written', () => {
    const by = (range: string) => {
      const answer = adjust({ text: bare, file: 'short.yaml', to: [], by: [`tail=${range}`] });
      if (!answer.ok) throw new Error(JSON.stringify(answer.issues));
      return answer.value;
    };
    const inUnits = by('10 in..24 in');
    expect(by('10..24').solutions[0]!.rounded).toEqual(inUnits.solutions[0]!.rounded);
    const said = printAdjustment(inUnits, { columns: 100, paint: (_, text) => text });
    expect(said).toMatch(/set: tail 12 in → \d+-\d+\/16 in/);
    expect(said).toMatch(/in `dimensions`, set `tail: \d+-\d+\/16`/);
  });
});

test('only what everything takes for a length is one', () => {
  const lengths = (dimensions: string, uses: string): string[] => [
    ...bareLengths(
      read(`trueroll: 1
units: in
dimensions: { ${dimensions} }
parts:
  - { name: rocker, count: 2, mass: 1 kg, outline: { rocker: { radius: 40, depth: 2, nose: 18, tail: 20 } } }
extras: [ ${uses} ]
`),
    ),
  ];
  const at = (x: string, mass = '1 kg'): string => `{ name: "${x} ${mass}", mass: ${mass}, at: [${x}, 3] }`;
  expect(lengths('a: 4, b: 8', at('a + b / 2'))).toEqual(['a', 'b']);
  expect(lengths('a: 4, b: a / 2', at('b'))).toEqual(['a', 'b']);
  expect(lengths('share: 0.5, a: 8', at('a * share'))).toEqual([]);
  expect(lengths('ratio: 3', at('ratio * 5'))).toEqual([]);
  expect(lengths('a: 4', [at('a'), at('1', 'a * 1 kg')].join(', '))).toEqual([]);
  expect(lengths('a: 4', at('2'))).toEqual([]);
  expect(lengths('a: 4 in', at('a'))).toEqual([]);
});
