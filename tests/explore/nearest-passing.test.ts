/** The nearest design that meets all limits, held against every whole step of its ranges judged one by one. */
import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { readDesign, type Design } from '../../src/design/read-design.js';
import { adjust, type Adjusted } from '../../src/explore/adjust.js';
import { designFunction } from '../../src/explore/design-function.js';
import { judgeFor } from '../../src/explore/judge.js';
import { variableNamed } from '../../src/explore/varied.js';

/** Weighed parts on an arc about (0, R), a lump at (0, h): the period hangs on R and h, the lean to the tail end on its length and R. */
const text = `trueroll: 1
units: m
dimensions: { radius: 1 m, high: 0.5 m, tail: 0.4 m }
parts:
  - { name: rocker, count: 2, mass: 1 g, outline: { rocker: { radius: radius, depth: 0.05, nose: 0.4, tail: tail } } }
extras: [ { name: lump, mass: 9.998 kg, at: [0, high], inertia: 1.4 kg m² } ]
limits: { empty: { period: 1.83 s .. 1.89 s, rockerEndBack: 25.5 deg .. } }
`;
const design = ((): Design => {
  const read = readDesign(text, 'cabin.yaml');
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
})();

interface Range {
  readonly name: string;
  /** Millimetres. */
  readonly least: number;
  readonly greatest: number;
}

const asked = ({ name, least, greatest }: Range): string => `${name}=${least} mm..${greatest} mm`;

function adjusted(of: string, by: readonly string[]): Adjusted {
  const answer = adjust({ text: of, file: 'cabin.yaml', to: [], by });
  if (!answer.ok) throw new Error(JSON.stringify(answer.issues));
  return answer.value;
}
const adjustedTo = (of: string, by: readonly string[]): readonly number[] | undefined =>
  adjusted(of, by).solutions[0]?.rounded;

/** Every pair of whole millimetres. */
function everyPassing(ranges: readonly [Range, Range]): readonly (readonly [number, number])[] {
  const variables = ranges.map(({ name }) => {
    const named = variableNamed(name, design);
    if (!named.ok) throw new Error(name);
    return named.value;
  });
  const { at } = designFunction(design, variables);
  const judge = judgeFor();
  const along = ({ least, greatest }: Range): number[] =>
    Array.from({ length: greatest - least + 1 }, (_, i) => (least + i) / 1000);
  return along(ranges[0]).flatMap((a) =>
    along(ranges[1]).flatMap((b) => {
      const tried = at([a, b]);
      return tried.ok && judge(tried).verdict === 'pass' ? [[a, b] as const] : [];
    }),
  );
}

const statedAt = { radius: 1, high: 0.5, tail: 0.4 } as Record<string, number>;
const far = (ranges: readonly Range[], values: readonly number[]): number =>
  Math.hypot(
    ...ranges.map(
      ({ name, least, greatest }, i) => (values[i]! - statedAt[name]!) / ((greatest - least) / 1000),
    ),
  );

const range = (name: string, least: number, greatest: number): Range => ({ name, least, greatest });

describe.each<[string, [Range, Range]]>([
  ['two sizes of which neither does it alone', [range('radius', 920, 1020), range('tail', 380, 460)]],
  ['one that is stated below its range', [range('radius', 940, 1020), range('tail', 410, 450)]],
  ['one that is stated above its range', [range('high', 470, 495), range('radius', 900, 1010)]],
  ['both stated outside of theirs', [range('radius', 930, 970), range('tail', 405, 445)]],
])('%s', (_, ranges) => {
  const passing = everyPassing(ranges);
  const best = Math.min(...passing.map((values) => far(ranges, values)));

  it('finds a place in its ranges that meets all, as near as any does to within a step', () => {
    const values = adjustedTo(text, ranges.map(asked))!;
    ranges.forEach(({ least, greatest }, i) => {
      expect(1000 * values[i]!).toBeGreaterThan(least - 1e-6);
      expect(1000 * values[i]!).toBeLessThan(greatest + 1e-6);
    });
    expect(passing.some(([a, b]) => Math.hypot(a - values[0]!, b - values[1]!) < 1e-9)).toBe(true);
    const step = Math.hypot(...ranges.map(({ least, greatest }) => 1 / (greatest - least)));
    expect(far(ranges, values)).toBeLessThan(best + step);
  });
});

test('a design that passes is changed where it may not stay as it stands', () => {
  const wide = text.replace(/^limits.*$/m, '');
  expect(adjustedTo(wide, ['radius=0.9 m..1.1 m'])).toEqual([1]);
  expect(adjustedTo(wide, ['radius=1.05 m..1.1 m'])).toEqual([1.05]);
  // Between two steps it may stay, and is not rounded.
  const between = wide.replace('radius: 1 m', 'radius: 1000.4 mm');
  expect(adjustedTo(between, ['radius=0.9 m..1.1 m'])).toEqual([1.0004]);
});

test('where none passes, what comes closest lies in the range too', () => {
  const never = text.replace('1.83 s .. 1.89 s', '9 s ..');
  const { solutions, closest } = adjusted(never, ['radius=1.01 m..1.05 m', 'tail=0.41 m..0.42 m']);
  expect(solutions).toEqual([]);
  const [radius, tail] = closest!.rounded;
  // A smaller radius rocks slower, and reaches its end later.
  expect([radius, tail]).toEqual([expect.closeTo(1.01, 9), expect.closeTo(0.42, 9)]);
});

describe('legs cut for a slow chair: the edge of what passes slants', () => {
  const slow = (period: number): string => `trueroll: 1
units: in
parts:
  - { name: rocker, count: 2, density: 700 kg/m3, across: 1.25 in, outline: { rocker: { radius: 40 in, depth: 2 in, nose: 18 in, tail: 20 in, at: 1 in } } }
  - { name: leg, count: 2, mass: 1 kg, outline: { rectangle: { from: [8, 2.5], to: [10, 18] } } }
  - { name: post, count: 2, mass: 1.5 kg, outline: { rectangle: { from: [-8, 3], to: [-6, 40] } } }
  - { name: seat, mass: 2 kg, outline: { rectangle: { from: [-8, 15], to: [10, 16] } } }
extras: [ { name: lump, mass: 30 kg, at: [0, 20], inertia: 1.5 kg m2 } ]
seat: { front: [10, 16.4], rear: [-8, 14.5] }
limits: { empty: { period: ${period} s .., seatSlope: off } }
`;

  // With 1.62 s all legs by themselves do it too, and are farther.
  it.each([1.66, 1.62])('at %f s no two whole steps that pass are nearer', (period) => {
    const of = slow(period);
    const { solutions, by } = adjusted(of, ['both-legs', 'back-legs']);
    const [both, back] = solutions[0]!.rounded;
    expect(both).not.toBe(0);
    expect(back).not.toBe(0);
    const spans = by.map(({ least, greatest }) => greatest - least);
    const farAt = (a: number, b: number): number => Math.hypot(a / spans[0]!, b / spans[1]!);
    const read = readDesign(of, 'cabin.yaml');
    if (!read.ok) throw new Error('a chair that cannot be read');
    const fn = designFunction(
      read.value,
      by.map(({ variable }) => variable),
    );
    const judge = judgeFor(['empty']);
    const step = 0.0254 / 16;
    for (let a = -31; a <= 31; a++)
      for (let b = -31; b <= 31; b++) {
        if (farAt(a * step, b * step) >= farAt(both!, back!) - 1e-9) continue;
        const tried = fn.at([a * step, b * step]);
        if (tried.ok) expect(judge(tried).verdict).not.toBe('pass');
      }
  });
});

test('two narrow limits are met between the places of the net', () => {
  const porch = readFileSync('fixtures/porch-rocker/design.yaml', 'utf8').replace(
    'limits:',
    'limits:\n  period: 2.19 s .. 2.21 s\n  seatSlope: 8.9 deg .. 9.1 deg',
  );
  const one = porch.replace(/^ {2}- \{ name: tallest.*$/m, '');
  const { solutions } = adjusted(one, ['radius', 'touch']);
  expect(solutions[0]!.judgement!.verdict).toBe('pass');
});
