/** Flats, corners, hollows, spots and lines of runners drawn step by step: each found where the steps put it. */
import { describe, expect, it } from 'vitest';
import { polygon, type Loop } from '../../src/geometry/piece.js';
import { profileOf } from '../../src/geometry/profile.js';
import { runningSurface, surfaceLength } from '../../src/geometry/running-surface.js';
import { surfaceFaults } from '../../src/geometry/surface-faults.js';
import { unlikenessOf } from '../../src/geometry/unlike-sides.js';
import { runner, type Step } from '../rolling/runners.js';

const degree = Math.PI / 180;
const arc = (radius: number, length: number): Step => ({ radius, turn: length / radius });
/** To a hundredth of a micrometre. */
const near = (value: number) => expect.closeTo(value, 8) as number;

function sideOf(outline: Loop) {
  const profile = profileOf([[outline]]);
  return { profile, surface: runningSurface(profile) };
}
const faultsOf = (outline: Loop) => {
  const { profile, surface } = sideOf(outline);
  return surfaceFaults(profile, surface, [outline]);
};
/** Steps are drawn from nose to tail; the places wanted count from the tail. */
const faultsOfSteps = (steps: readonly Step[], nose = -0.3) => faultsOf(runner(steps, nose).outline);

describe('faults of a runner', () => {
  it('are none on one arc, nor where two arcs join', () => {
    expect(faultsOfSteps([arc(1, 0.6)])).toEqual([]);
    expect(faultsOfSteps([arc(1, 0.3), arc(1.3, 0.3)])).toEqual([]);
  });

  it('a flat, and a corner beyond it', () => {
    const steps = [arc(1, 0.25), { flat: 0.038 }, arc(1, 0.15), { corner: 3 * degree }, arc(1, 0.2)];
    expect(faultsOfSteps(steps)).toEqual([
      { what: 'corner', from: near(0.2), to: near(0.2), turn: near(3 * degree) },
      { what: 'flat', from: near(0.35), to: near(0.388), length: near(0.038), hollow: 0 },
    ]);
  });

  it('a flat beyond a curve whose radius changes much', () => {
    // A parabola, y = 6 x² for x from -0.5 to 0.1, then straight on for 50 mm: its length in closed form.
    const along = (x: number): number => (x / 2) * Math.sqrt(1 + 144 * x * x) + Math.asinh(12 * x) / 24;
    const [tail, joint] = [-0.5, 0.1];
    const [from, to] = [
      { x: tail, y: 6 * tail * tail },
      { x: joint, y: 6 * joint * joint },
    ];
    const handle = (joint - tail) / 3;
    const way = Math.hypot(1, 12 * joint);
    const end = { x: joint + 0.05 / way, y: to.y + (0.05 * 12 * joint) / way };
    const outline: Loop = [
      {
        kind: 'cubic',
        ...{ from, to },
        control1: { x: tail + handle, y: from.y + handle * 12 * tail },
        control2: { x: joint - handle, y: to.y - handle * 12 * joint },
      },
      ...polygon([to, end, { x: 0.1, y: 2 }, from]).slice(0, 3),
    ];
    const flat = along(joint) - along(tail);
    const found = faultsOf(outline).filter(({ what }) => what === 'flat');
    expect(found).toHaveLength(1);
    expect(found[0]!.from).toBeCloseTo(flat, 6);
    expect(found[0]!.to).toBeCloseTo(flat + 0.05, 6);
  });

  it('a hollow that the floor spans, with its depth', () => {
    // Two arcs of radius 1 whose centres are 80 mm apart: they meet 1 - √(1 - 0.04²) over their common tangent.
    const leans = (from: number, to: number, x: number) =>
      ({
        kind: 'arc',
        centre: { x, y: 1 },
        radius: 1,
        start: -Math.PI / 2 + from,
        sweep: to - from,
      }) as const;
    const meet = Math.asin(0.04);
    const outline: Loop = [
      leans(-0.3, meet, -0.04),
      leans(-meet, 0.3, 0.04),
      ...polygon([
        { x: 0.04 + Math.sin(0.3), y: 1 - Math.cos(0.3) },
        { x: 0, y: 0.4 },
        { x: -0.04 - Math.sin(0.3), y: 1 - Math.cos(0.3) },
      ]).slice(0, 2),
    ];
    expect(faultsOf(outline)).toEqual([
      { what: 'flat', from: near(0.3), to: near(0.38), length: near(0.08), hollow: near(1 - Math.cos(meet)) },
    ]);
  });

  it.each([
    ['a high spot', 0.8, -0.2],
    ['a low spot', 1.25, 0.25],
  ])('%s, by how much', (_, radius, jump) => {
    expect(faultsOfSteps([arc(1, 0.25), arc(radius, 0.03), arc(1, 0.3)])).toEqual([
      { what: 'spot', from: near(0.3), to: near(0.33), jump: near(jump), radius },
    ]);
    // Longer than 50 mm it is the shape of the runner.
    expect(faultsOfSteps([arc(1, 0.25), arc(radius, 0.06), arc(1, 0.3)])).toEqual([]);
  });

  it('a curve drawn as lines, told once and not as so many flats', () => {
    const lines = Array.from({ length: 12 }, (): Step[] => [{ corner: degree }, { flat: 0.018 }]).flat();
    const faults = faultsOfSteps([arc(1, 0.2), ...lines, { corner: degree }, arc(1, 0.2)]);
    expect(faults).toEqual([
      {
        what: 'lines',
        from: near(0.2),
        to: near(0.2 + 12 * 0.018),
        count: 12,
        longest: near(0.018),
        bulge: near((0.018 ** 2 * 12 * degree) / (8 * 12 * 0.018)),
      },
    ]);
  });

  it('all lie on the runner, whatever the design leans by', () => {
    for (const nose of [-0.5, -0.3, -0.1]) {
      const { outline } = runner(
        [arc(1, 0.25), { flat: 0.03 }, arc(1.1, 0.02), { flat: 0.02 }, arc(1, 0.3)],
        nose,
      );
      const whole = surfaceLength(sideOf(outline).surface);
      for (const { from, to } of faultsOf(outline)) {
        expect(from).toBeGreaterThan(0);
        expect(to).toBeLessThan(whole);
      }
    }
  });
});

describe('two runners that were to be alike', () => {
  it('differ most where one of them is flatter', () => {
    // From the lean where they part: S₁ - S₂ = (R₁ - R₂)(1 - cos θ), largest at the tail end.
    const [left, right] = [1.02, 1].map((radius) =>
      sideOf(
        runner(
          [
            { radius: 1, turn: 0.3 },
            { radius, turn: 0.25 },
          ],
          -0.3,
        ).outline,
      ),
    );
    const { higher, fromTail } = unlikenessOf(left!, right!)!;
    expect(higher).toBeCloseTo(0.02 * (1 - Math.cos(0.25)), 8);
    expect(fromTail).toBeCloseTo(0, 6);
    expect(unlikenessOf(right!, right!)!.higher).toBe(0);
  });
});
