/** A design brought to a wanted measure, held against closed forms and against checks of the changed design. */
import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { checkDesign } from '../../src/check-design.js';
import { adjust, type Adjusted } from '../../src/explore/adjust.js';

const porch = readFileSync('fixtures/porch-rocker/design.yaml', 'utf8');
const g = 9.80665;

/** Weighed parts, so that nothing but the arc changes with its radius: an arc about (0, R), a lump at (0, h). */
const weighed = `trueroll: 1
units: m
dimensions: { radius: 1 m, high: 0.5 m }
parts:
  - { name: rocker, count: 2, mass: 1 g, outline: { rocker: { radius: radius, depth: 0.05, nose: 0.4, tail: 0.4 } } }
extras: [ { name: lump, mass: 9.998 kg, at: [0, high], inertia: 1.4 kg m² } ]
`;

function adjusted(text: string, to: readonly string[], by: readonly string[]): Adjusted {
  const found = adjust({ text, file: 'cabin.yaml', to, by });
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  return found.value;
}
const issues = (text: string, to: readonly string[], by: readonly string[]): string[] => {
  const found = adjust({ text, file: 'cabin.yaml', to, by });
  return found.ok
    ? []
    : found.issues.map(({ file, expected, found, hint }) => `${file}: ${expected}, ${found} (${hint ?? ''})`);
};

describe('a radius for a period', () => {
  it('is the fixed point of R = h + (2π/T)² (I + m h²)/(m g)', () => {
    for (const period of [1.6, 2, 2.4]) {
      const [found, ...more] = adjusted(
        weighed,
        [`empty/period=${period} s`],
        ['radius=0.6 m..3 m'],
      ).solutions;
      expect(more).toEqual([]);
      // Mass properties at each radius from the design itself; the period only from the closed form.
      let radius = 1;
      for (let round = 0; round < 60; round++) {
        const built = checkDesign(weighed, 'cabin.yaml', new Map([['radius', radius]]));
        if (!built.ok) throw new Error('a chair that cannot be built');
        const { mass, centre, inertia } = built.value.chair.body;
        radius = centre.y + ((2 * Math.PI) / period) ** 2 * ((inertia + mass * centre.y ** 2) / (mass * g));
      }
      expect(Math.abs(found!.exact![0]! / radius - 1)).toBeLessThan(1e-9);
    }
  });

  it('of a whole chair gives that period, and in sixteenths nearly', () => {
    const { solutions, targets } = adjusted(porch, ['period=2.1 s'], ['radius=30 in..42 in']);
    expect(targets[0]!.asked).toMatchObject({ load: 'seated', sitter: 'shortest' });
    expect(solutions).toHaveLength(1);
    const periodAt = (radius: number): number => {
      const checked = checkDesign(porch, 'porch.yaml', new Map([['radius', radius]]));
      if (!checked.ok) throw new Error('a porch rocker that cannot be built');
      return checked.value.loads
        .find(({ record }) => record.load.id === 'seated')!
        .measured.get('periodS') as number;
    };
    const { exact, rounded, measures } = solutions[0]!;
    expect(periodAt(exact![0]!)).toBeCloseTo(2.1, 9);
    const sixteenths = (rounded[0]! / 0.0254) * 16;
    expect(Math.abs(sixteenths - Math.round(sixteenths))).toBeLessThan(1e-9);
    expect(periodAt(rounded[0]!)).toBeCloseTo(measures[0]!, 12);
  });
});

test('two measures by two sizes', () => {
  const { solutions } = adjusted(porch, ['period=2.1 s', 'seatSlope=9 deg'], ['radius', 'touch']);
  const [radius, touch] = solutions[0]!.exact!;
  const checked = checkDesign(
    porch,
    'porch.yaml',
    new Map([
      ['radius', radius!],
      ['touch', touch!],
    ]),
  );
  if (!checked.ok) throw new Error('a porch rocker that cannot be built');
  const { measured } = checked.value.loads.find(({ record }) => record.load.id === 'seated')!;
  expect(measured.get('periodS')).toBeCloseTo(2.1, 8);
  expect(measured.get('seatSlopeDeg')).toBeCloseTo((9 * Math.PI) / 180, 8);
});

test('sizes stay in the ranges that are asked for, wherever the design states them', () => {
  const high = 0.5;
  for (const by of [
    ['radius=1.1 m..1.3 m', 'high=0.45 m..0.7 m'],
    ['radius=0.7 m..0.95 m', 'high=0.3 m..0.49 m'],
  ]) {
    const { solutions, by: ranges } = adjusted(weighed, ['empty/period=1.8 s'], by);
    const { exact, rounded, measures } = solutions[0]!;
    for (const values of [exact!, rounded])
      ranges.forEach(({ least, greatest }, i) => {
        expect(values[i]).toBeGreaterThan(least - 1e-9);
        expect(values[i]).toBeLessThan(greatest + 1e-9);
      });
    expect(measures[0]).toBeCloseTo(1.8, 2);
    // The radius changes by no more than it must.
    expect(exact![0]).toBeCloseTo(by[0]!.includes('1.1') ? 1.1 : 0.95, 9);
    expect(exact![1]).not.toBeCloseTo(high, 3);
  }
});

test('a range without a whole step of a maker is refused, not left', () => {
  expect(issues(porch, ['period=2.1 s'], ['radius=36.01 in..36.02 in'])).toEqual([
    expect.stringMatching(
      /a range for radius that holds a whole step of 1\/16 in, `radius=36\.01 in\.\.36\.02 in`/,
    ),
  ]);
  expect(issues(porch, [], ['tallest mass=80.03 kg..80.04 kg'])).toEqual([
    expect.stringMatching(/a whole step of 0\.1 lb,/),
  ]);
});

test('a target out of reach: what comes closest, and how far it reaches', () => {
  const { solutions, reach, closest } = adjusted(porch, ['period=9 s'], ['radius=34 in..42 in']);
  expect(solutions).toEqual([]);
  expect(reach![1]).toBeLessThan(2.3);
  expect(closest!.exact![0]).toBeCloseTo(34 * 0.0254, 6);
});

test('the nearest design that meets all limits, one step less not', () => {
  const short = readFileSync('fixtures/short-tails/design.yaml', 'utf8');
  const { solutions } = adjusted(short, [], ['tail']);
  const [tail] = solutions[0]!.rounded;
  const verdictAt = (value: number) => {
    const checked = checkDesign(short, 'short.yaml', new Map([['tail', value]]));
    return checked.ok ? checked.value.verdict : null;
  };
  expect(verdictAt(tail!)).toBe('pass');
  expect(verdictAt(tail! - 0.0254 / 16)).toBe('fail');
});

test('two sizes where one stands at an end of what is possible', () => {
  // No weight is less than none.
  const { solutions } = adjusted(porch, ['period=2.0 s'], ['radius', 'tail-weight']);
  expect(solutions).toHaveLength(1);
  expect(solutions[0]!.measures[0]).toBeCloseTo(2, 2);
});

test('a target that is met already leaves the design as it stands', () => {
  for (const [to, by] of [
    ['restCount=1', ['radius']],
    ['flatLongest=0 in', ['radius', 'tail']],
  ] as const) {
    const { solutions } = adjusted(porch, [to], by);
    expect(solutions).toHaveLength(1);
    const stated = { radius: 36 * 0.0254, tail: 21 * 0.0254 };
    expect(solutions[0]!.rounded).toEqual(by.map((name) => expect.closeTo(stated[name], 12) as number));
  }
});

test('a size on which the measure does not depend is named, and nothing comes closer with it', () => {
  const text = porch.replace('dimensions:', 'dimensions:\n  unused: 3 in');
  const { idle, solutions, closest } = adjusted(text, ['period=2.2 s'], ['unused']);
  expect(idle.map(({ variable }) => variable.name)).toEqual(['unused']);
  expect([solutions, closest]).toEqual([[], null]);
  const both = adjusted(text, ['period=2.1 s'], ['unused', 'radius']);
  expect(both.idle.map(({ variable }) => variable.name)).toEqual(['unused']);
  expect(both.solutions).toHaveLength(1);
  expect(adjusted(text, ['period=2.1 s'], ['radius']).idle).toEqual([]);
});

test('a range far wider than the size is looked at about the size too', () => {
  const near = adjusted(porch, ['period=2.0 s'], ['radius=30 in..42 in']).solutions[0]!.exact![0]!;
  for (const range of ['0 in..1e5 in', '0 in..1e7 in']) {
    const { solutions } = adjusted(porch, ['period=2.0 s'], [`radius=${range}`]);
    expect(solutions.some(({ exact }) => Math.abs(exact![0]! / near - 1) < 1e-9)).toBe(true);
  }
});

describe('several sizes, one of which goes up and down', () => {
  /** A height of which the middle is a polynomial of u with five turns, in inches: 16 u⁵ - 20 u³ + 5 u (Chebyshev). */
  const turning = (u: number): string => `trueroll: 1
units: in
dimensions: { u: ${u} in, x: u / (1 in), radius: 40 in }
parts:
  - { name: rocker, count: 2, density: 700 kg/m3, across: 1.25 in, outline: { rocker: { radius: radius, depth: 2 in, nose: 18 in, tail: 20 in, at: 1 in } } }
  - { name: seat, mass: 2 kg, outline: { rectangle: { from: [-8, 15], to: [10, 16] } } }
extras: [ { name: lump, mass: 30 kg, at: [0, 18 in + (16*x*x*x*x*x-20*x*x*x+5*x) * 1 in], inertia: 1.5 kg m2 } ]
`;
  const range = { u: [-1.05, 1.05], radius: [30, 60] } as const;
  const by = Object.entries(range).map(([name, [from, to]]) => `${name}=${from} in..${to} in`);
  /** For places of u one after the other the radius by itself: the least change of all. */
  function least(text: string, period: number, stated: number): number {
    let best = Infinity;
    for (let u = range.u[0]; u <= range.u[1] + 1e-9; u += 0.03) {
      const there = text.replace(/u: \S+ in/, `u: ${u.toFixed(6)} in`);
      for (const { exact } of adjusted(there, [`empty/period=${period} s`], ['radius=30 in..60 in'])
        .solutions)
        best = Math.min(best, Math.hypot((u - stated) / 2.1, (exact![0]! / 0.0254 - 40) / 30));
    }
    return best;
  }

  it.each([
    [-0.95, 1.45],
    [0.8, 1.36],
    [0.8, 1.45],
  ])('from u = %f in to %f s finds as little change as any', (stated, period) => {
    const text = turning(stated);
    const { solutions } = adjusted(text, [`empty/period=${period} s`], by);
    const [u, radius] = solutions[0]!.exact!.map((value) => value / 0.0254);
    const change = Math.hypot((u! - stated) / 2.1, (radius! - 40) / 30);
    expect(change).toBeLessThan(least(text, period, stated) + 1e-6);
  });
});

describe('what cannot be asked', () => {
  it.each<[string[], string[], RegExp[]]>([
    [['perod=2 s'], ['radius'], [/--to `perod=2 s`.*did you mean `period`/]],
    [['period'], ['radius'], [/`measure=value`/]],
    [['period=2 kg'], ['radius'], [/a time/]],
    [['period=2 s'], ['radios'], [/did you mean `radius`/]],
    [['period=2 s'], ['radius=40 in..30 in'], [/the lower end first/]],
    [['period=2 s'], ['radius=40 in'], [/a range for radius/]],
    [['period=2 s'], [], [/--by: what to change/]],
    [['period=2 s', 'seatSlope=9 deg'], ['radius'], [/at least as many sizes as targets/]],
    [['period=2 s', 'seated/period=2.1 s'], ['radius', 'tail'], [/each measure once, seated\/period/]],
    [['period=2 s'], ['radius=36 in..40 in:1 in'], [/a range without a step.*write `radius=36 in\.\.40 in`/]],
    [['perod=2 s'], ['radios', 'radius', 'radius'], [/perod/, /radios/, /each size once/]],
  ])('%j by %j', (to, by, messages) => {
    const found = issues(porch, to, by);
    expect(found).toHaveLength(messages.length);
    messages.forEach((message, i) => {
      expect(found[i]).toMatch(message);
    });
  });
});
