import { describe, expect, it } from 'vitest';
import type { Arc } from '../../src/geometry/piece.js';
import { flatImpact } from '../../src/rolling/flat-impact.js';
import { landscapeOf } from '../../src/rolling/landscape.js';
import { profileOf } from '../../src/geometry/profile.js';
import {
  blockSpeedRatio,
  halfDiscPeriod,
  halfHoopPeriod,
  hemispherePeriod,
  pointMassPeriod,
  quarterPeriodOfBlock,
} from '../oracles/textbook-periods.js';
import { rollToTurn, type Track } from '../oracles/rolling-motion.js';
import { degree, off, roll, settled, swingFreely, there } from './roll.js';
import { block, bowl, uniform } from './textbook-shapes.js';

/** Closed form against closed form. */
const exact = 1e-9;

describe.each([0.1, 1, 37])('bodies of radius %f m on their round side', (r) => {
  const period = (mass: number, height: number, inertia: number): number =>
    there(settled(bowl(r), { mass, inertia, centre: { x: 0, y: height } }).smallPeriod);

  it('uniform half disc, its centroid and inertia from its outline', () => {
    const { smallPeriod, rest } = settled(bowl(r), uniform(bowl(r)));
    expect(off(there(smallPeriod), halfDiscPeriod(r))).toBeLessThan(exact);
    expect(rest.lean).toBeCloseTo(0, 12);
  });

  it('half hoop: G 2r/π below the centre, m r² about the centre', () => {
    const below = (2 * r) / Math.PI;
    expect(off(period(3, r - below, 3 * (r * r - below * below)), halfHoopPeriod(r))).toBeLessThan(exact);
  });

  it('solid hemisphere: G 3r/8 below the centre, 83/320 m r² about it', () => {
    expect(off(period(7, (5 / 8) * r, (7 * 83 * r * r) / 320), hemispherePeriod(r))).toBeLessThan(exact);
  });
});

describe('a point mass on a massless disc', () => {
  // The seam of the profile, the contact and θ = 0 come to lie anywhere.
  const disc: Arc = { kind: 'arc', centre: { x: 2, y: -1 }, radius: 1, start: 0.7, sweep: 2 * Math.PI };

  it.each([0.25, 0.5, 0.75])('%f of the radius out', (r) => {
    for (const drawn of [0, 1, Math.PI / 2, 3, 3.1415, -3.1415, -3, -2, -0.5]) {
      const centre = { x: 2 - r * Math.sin(drawn), y: -1 - r * Math.cos(drawn) };
      const { rest, smallPeriod } = settled([disc], { mass: 5, inertia: 0, centre });
      expect(off(there(smallPeriod), pointMassPeriod(1, r))).toBeLessThan(exact);
      const turned = (rest.lean - drawn) / (2 * Math.PI);
      expect(Math.abs(turned - Math.round(turned))).toBeLessThan(1e-12);
      expect(Math.abs(rest.lean)).toBeLessThanOrEqual(Math.PI + 1e-12);
    }
  });

  it.each([Math.PI, -Math.PI])('drawn upside down, %f, it balances on its crest', (drawn) => {
    const centre = { x: 2 - 0.5 * Math.sin(drawn), y: -1 - 0.5 * Math.cos(drawn) };
    const { atRest, rollsOff } = roll([disc], { mass: 5, inertia: 0, centre });
    expect([atRest, rollsOff]).toEqual([null, null]);
  });

  it('swings alike wherever its outline begins and however it is drawn', () => {
    const centreOf = (drawn: number) => ({ x: 2 - 0.5 * Math.sin(drawn), y: -1 - 0.5 * Math.cos(drawn) });
    const swing = (drawn: number, from: number) =>
      there(swingFreely([disc], { mass: 5, inertia: 0.3, centre: centreOf(drawn) }, drawn, drawn + from));
    const track: Track = { from: -10, to: 10, centre: disc.centre, radius: 1 };
    for (const amplitude of [0.1, 1, 2, 3]) {
      const motion = rollToTurn([track], { mass: 5, inertia: 0.3, centre: centreOf(0) }, amplitude, -1, 2e-3);
      for (const drawn of [0, 1, 2.5, 3.1, Math.PI, -3.1, -2, -Math.PI / 2]) {
        const { period, turns } = swing(drawn, amplitude);
        expect(off(period, 2 * motion.time)).toBeLessThan(1e-8);
        expect(turns[0] - drawn).toBeCloseTo(-amplitude, 9);
      }
    }
  });
});

describe('rectangular block', () => {
  it.each([0.05, 0.2, 0.5, 0.9])(
    'slenderness %f: speed after over before the landing is 1 - 1.5 sin² α',
    (alpha) => {
      const { half, high, body } = block(alpha);
      const { speedRatio, energyKept } = flatImpact(body.inertia / body.mass, high, -half, half);
      expect(off(speedRatio, blockSpeedRatio(alpha))).toBeLessThan(1e-12);
      expect(off(energyKept, blockSpeedRatio(alpha) ** 2)).toBeLessThan(1e-12);
    },
  );

  it('stands on its base: a flat at rest has no small period; tips about its edges', () => {
    const { half, outline, body } = block(0.2);
    const { rest, smallPeriod, back, forward } = settled(outline, body);
    expect(rest.place).toBe('flat');
    expect(rest.flat).toBeCloseTo(2 * half, 12);
    expect(smallPeriod).toHaveProperty('missing');
    expect(there(back.tip).angle).toBeCloseTo(0.2, 12);
    expect(there(forward.tip).angle).toBeCloseTo(0.2, 12);
    // m g (1 - cos α), half diagonal 1.
    expect(off(there(back.tip).energy, body.mass * 9.80665 * (1 - Math.cos(0.2)))).toBeLessThan(exact);
  });

  it("a quarter of its swing is Housner's, longer by a nineteenth of α² at θ₀ = α/4", () => {
    const excess = (alpha: number): number => {
      const { outline, body } = block(alpha);
      const release = alpha / 4;
      const { period, turns } = there(swingFreely(outline, body, 0, release));
      // Four quarters: from the release, to and from the turning point on the other side, to the next on this one.
      const quarters = [release, -turns[0], -turns[0], turns[1]].map((lean) =>
        quarterPeriodOfBlock(1, lean / alpha),
      );
      return period / quarters.reduce((sum, quarter) => sum + quarter, 0) - 1;
    };
    // What the impacts take is of order α² too: they leave the four quarters nearly one amplitude.
    expect(excess(0.05) / excess(0.025)).toBeGreaterThan(3.95);
    expect(excess(0.05) / excess(0.025)).toBeLessThan(4.05);
    // cos φ₀ - cos φ = (φ² - φ₀²)/2 (1 - (φ² + φ₀²)/12 …) with φ = φ₀ cosh w, φ₀ = α - θ₀: (φ₀/α)² (3/2 + sinh 2w / 4w) / 24.
    const [share, w] = [3 / 4, Math.acosh(4 / 3)];
    const factor = (share ** 2 * (1.5 + Math.sinh(2 * w) / (4 * w))) / 24;
    expect(factor).toBeCloseTo(1 / 19.05, 4);
    expect(off(excess(0.01) / 0.01 ** 2, factor)).toBeLessThan(1e-3);
  });

  it('lands with less and less: each turning point is lower by the ratio of the impact', () => {
    const alpha = 0.3;
    const { outline, body } = block(alpha);
    const height = (lean: number) => Math.cos(alpha - Math.abs(lean)) - Math.cos(alpha);
    const { turns, impacts } = there(swingFreely(outline, body, 0, 5 * degree));
    const kept = blockSpeedRatio(alpha) ** 2;
    expect(impacts).toHaveLength(2);
    expect(off(height(turns[0]), kept * height(5 * degree))).toBeLessThan(exact);
    expect(off(height(turns[1]), kept ** 2 * height(5 * degree))).toBeLessThan(exact);
  });

  it('a squat one, wider than 54.7° half way, stops where it lands', () => {
    // 1 - 1.5 sin² α vanishes at sin² α = 2/3.
    const { outline, body } = block(Math.asin(Math.sqrt(2 / 3)) + 0.01);
    expect(swingFreely(outline, body, 0, 2 * degree)).toHaveProperty(
      'missing',
      expect.stringContaining('stops on a flat'),
    );
    const less = block(Math.asin(Math.sqrt(2 / 3)) - 0.01);
    expect(swingFreely(less.outline, less.body, 0, 2 * degree)).toHaveProperty('period');
  });

  it('rests on each of its four sides', () => {
    const { outline, body } = block(0.4);
    const { stretches } = landscapeOf(profileOf([[outline]]), body.centre);
    expect(stretches).toHaveLength(4);
  });
});
