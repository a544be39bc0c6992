import { describe, expect, it } from 'vitest';
import { facetedHull, facetOn } from '../../src/contact/faceted-hull.js';
import { profileOf, supportAt } from '../../src/geometry/profile.js';
import { runner } from '../rolling/runners.js';
import { degree } from './round-bodies.js';

const step = 1 / 240;
const facets = { from: -10 * degree, to: 10 * degree, share: 0.05, step };
// Nose to tail: an arc, a flat, a corner, a flatter arc.
const made = runner(
  [
    { radius: 0.9, turn: 15 * degree },
    { flat: 0.04 },
    { corner: 4 * degree },
    { radius: 1.3, turn: 15 * degree },
  ],
  -16 * degree,
);
const profile = profileOf([[made.outline]]);

describe('a hull in facets', () => {
  const hull = facetedHull(profile, facets);

  it('is as high as the hull to within the sagitta of a facet', () => {
    // L²/(8 R), L = R φ, on the larger arc.
    const sagitta = (1.3 * facetOn(1.3, facets) ** 2) / 8;
    for (let lean = facets.from; lean <= facets.to; lean += 0.003) {
      const high = Math.max(...hull.map(({ x, y }) => -(x * Math.sin(lean) + y * Math.cos(lean))));
      expect(supportAt(profile, lean) - high).toBeGreaterThan(-1e-12);
      expect(supportAt(profile, lean) - high).toBeLessThan(sagitta);
    }
  });

  it('turns one way all round', () => {
    hull.forEach((b, i) => {
      const [a, c] = [hull.at(i - 1)!, hull[(i + 1) % hull.length]!];
      // In order of lean is clockwise.
      expect((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x)).toBeLessThan(1e-15);
    });
  });

  it('has facets by the rule where it is rolled on, and a flat as it is', () => {
    const lengths = hull.map((b, i) => Math.hypot(b.x - hull.at(i - 1)!.x, b.y - hull.at(i - 1)!.y));
    const within = (length: number) => lengths.some((one) => Math.abs(one - length) < 1e-6);
    expect(within(0.04)).toBe(true);
    // 0.05 Δt sqrt(2 g / R) at 0.9 m: 0.0557°, 0.875 mm long.
    expect(facetOn(0.9, facets) / degree).toBeCloseTo(0.0557, 4);
    expect(within(0.9 * facetOn(0.9, facets))).toBe(true);
    expect(within(1.3 * facetOn(1.3, facets))).toBe(true);
  });

  it('has few facets elsewhere', () => {
    const all = facetedHull(profile, { ...facets, from: -16 * degree, to: 16 * degree });
    expect(hull.length).toBeLessThan(0.75 * all.length);
    expect(hull.length).toBeGreaterThan(0.5 * all.length);
  });
});
