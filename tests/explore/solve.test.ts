import { describe, expect, it } from 'vitest';
import { solveOne } from '../../src/explore/solve-one.js';
import { solveSeveral } from '../../src/explore/solve-several.js';

describe('one target by one size', () => {
  it('finds every root in the range', () => {
    const { solutions, jumps } = solveOne(Math.sin, 0.5, 0, 10);
    const roots = [1 / 6, 5 / 6, 13 / 6, 17 / 6].map((share) => share * Math.PI);
    expect(solutions).toHaveLength(4);
    solutions.forEach((x, i) => {
      expect(x).toBeCloseTo(roots[i]!, 9);
    });
    expect(jumps).toEqual([]);
  });

  it('finds what only touches, and ends of the range', () => {
    expect(solveOne((x) => (x - 0.37) ** 2, 0, 0, 1).solutions[0]).toBeCloseTo(0.37, 4);
    expect(solveOne((x) => x, 1, 0, 1).solutions).toEqual([1]);
    expect(solveOne((x) => x, 0, 0, 1).solutions).toEqual([0]);
  });

  it('finds what touches beside what crosses, and what crosses twice within a step', () => {
    // (x - 0.2)² (0.8 - x): touches at 0.2 and crosses at 0.8.
    const both = solveOne((x) => (x - 0.2) ** 2 * (0.8 - x), 0, 0, 1).solutions;
    expect(both).toHaveLength(2);
    expect(both[0]).toBeCloseTo(0.2, 4);
    expect(both[1]).toBeCloseTo(0.8, 9);
    // The parabola's roots lie 0.002 apart, a quarter of a step.
    const twice = solveOne((x) => (x - 0.503) * (x - 0.505), 0, 0, 1).solutions;
    expect(twice).toEqual([expect.closeTo(0.503, 9), expect.closeTo(0.505, 9)]);
  });

  it('finds a root between the edge of a stretch without value and the next place', () => {
    const f = (x: number): number | null => (x < 0.5003 ? null : x);
    expect(solveOne(f, 0.501, 0, 1).solutions).toEqual([expect.closeTo(0.501, 9)]);
    const g = (x: number): number | null => (x > 0.5003 ? null : x);
    expect(solveOne(g, 0.5002, 0, 1).solutions).toEqual([expect.closeTo(0.5002, 9)]);
  });

  it('tells a stretch on the target once, at its beginning', () => {
    const { solutions } = solveOne((x) => Math.max(0.3, Math.min(x, 0.6)), 0.6, 0, 1);
    expect(solutions).toHaveLength(1);
    expect(solutions[0]).toBeCloseTo(0.6, 9);
    expect(solveOne((x) => Math.min(x, 0.3), 0.3, 0, 1).solutions).toEqual([expect.closeTo(0.3, 9)]);
    expect(solveOne(() => 2, 2, 0, 1).solutions).toEqual([0]);
  });

  it('takes a jump for no solution', () => {
    const { solutions, jumps } = solveOne((x) => (x < 0.4 ? 1 : 3), 2, 0, 1);
    expect(solutions).toEqual([]);
    expect(jumps[0]).toBeCloseTo(0.4, 9);
  });

  it('says how near it comes where it does not reach', () => {
    const { solutions, reach, closest } = solveOne((x) => x * (1 - x), 2, 0, 1);
    expect(solutions).toEqual([]);
    expect(reach![1]).toBeCloseTo(0.25, 3);
    expect(closest).toBeCloseTo(0.5, 3);
    // The bottom lies between two of its looks, half a step from each: it reaches as low as it comes closest.
    const low = 64.5 / 128;
    const hollow = solveOne((x) => (x - low) ** 2, -1, 0, 1);
    expect(hollow.reach![0]).toBeCloseTo(0, 12);
    expect(hollow.closest).toBeCloseTo(low, 6);
  });

  it('passes over where it has no value', () => {
    const f = (x: number): number | null => (x > 0.3 && x < 0.6 ? null : x);
    expect(solveOne(f, 0.8, 0, 1).solutions[0]).toBeCloseTo(0.8, 9);
    expect(solveOne(f, 0.45, 0, 1).solutions).toEqual([]);
    expect(solveOne(() => null, 0.45, 0, 1)).toEqual({
      solutions: [],
      jumps: [],
      reach: null,
      closest: null,
    });
  });
});

describe('several targets by several sizes', () => {
  const wide: [number, number][] = [
    [-9, 9],
    [-9, 9],
    [-9, 9],
  ];

  it('of linear ones gives the least change by Lagrange', () => {
    // x + y + z = 3 and x - z = 1: the shortest is (3/2, 1, 1/2).
    const solved = solveSeveral(([x, y, z]) => [x! + y! + z! - 3, x! - z! - 1], wide);
    expect(solved?.solved).toBe(true);
    [1.5, 1, 0.5].forEach((value, i) => {
      expect(solved!.z[i]).toBeCloseTo(value, 8);
    });
  });

  it('of curved ones gives the nearest place of the curve', () => {
    // The place of the hyperbola x y = 1 nearest to the origin, from (0.1, 0.2) off: (1, 1) by symmetry.
    const solved = solveSeveral(([x, y]) => [(x! + 0.01) * (y! + 0.01) - 1], wide.slice(1));
    expect(solved?.solved).toBe(true);
    expect(solved!.z[0]).toBeCloseTo(0.99, 5);
    expect(solved!.z[1]).toBeCloseTo(0.99, 5);
  });

  it('stays within its ranges', () => {
    const solved = solveSeveral(
      ([x, y]) => [x! + y! - 2],
      [
        [-0.5, 0.5],
        [-5, 5],
      ],
    );
    expect(solved).toMatchObject({ solved: true });
    expect(solved!.z).toEqual([expect.closeTo(0.5, 9), expect.closeTo(1.5, 9)]);
  });

  it('begins at the nearer end of a range without 0, and stays within it', () => {
    const seen: number[] = [];
    const f = ([x, y]: readonly number[]): number[] => {
      seen.push(x!);
      return [x! + y! - 3];
    };
    // The shortest, (3/2, 3/2), lies outside; (2, 1) is the nearest to 0 inside.
    const solved = solveSeveral(f, [
      [2, 3],
      [-9, 9],
    ])!;
    expect(solved.solved).toBe(true);
    expect(solved.z).toEqual([expect.closeTo(2, 9), expect.closeTo(1, 9)]);
    // But for differences.
    expect(Math.min(...seen)).toBeGreaterThan(2 - 1e-4);
  });

  it('says what is left where it cannot', () => {
    const solved = solveSeveral(([x]) => [x! - 2, x! - 3], [[-5, 5]]);
    expect(solved).toMatchObject({ solved: false });
    expect(
      solveSeveral(
        ([x, y]) => [x! + y! - 9],
        [
          [-1, 1],
          [-1, 1],
        ],
      )!.solved,
    ).toBe(false);
    expect(solveSeveral(() => null, [[-1, 1]])).toBeNull();
  });
});
