import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { profileOf } from '../../src/geometry/profile.js';
import { floorForceAt } from '../../src/rolling/floor-force.js';
import { landscapeOf, stretchAt } from '../../src/rolling/landscape.js';
import { indexAt } from '../../src/geometry/profile.js';
import { motionAt, passOver } from '../../src/rolling/rolling-time.js';
import { between, roundRockers } from '../arbitraries/rolling.js';
import { armAt } from '../oracles/rolling-motion.js';
import { standardGravity as g } from '../oracles/round-runner.js';

describe('floor force', () => {
  // Newton: N - m g and F are what the momentum of G changes by. v = θ̇ × r, dt = dθ/θ̇; central differences.
  it('changes the momentum of G', () => {
    fc.assert(
      fc.property(
        roundRockers,
        between(-0.9, 0.9),
        between(0.3, 0.95),
        ({ runner, body, rest, nose, tail }, place, height) => {
          const amplitude = height * Math.min(tail - rest, rest - nose);
          const landscape = landscapeOf(profileOf([[runner.outline]]), body.centre);
          const stretch = stretchAt(landscape, indexAt(landscape.profile, rest));
          const pass = passOver(stretch, body.inertia / body.mass, rest + amplitude, 0);
          const lean = rest + place * amplitude;
          const arc = runner.tracks[1]!;
          const rate = (at: number): number => -Math.sqrt(motionAt(pass, at).rateSquared);
          const momentum = (at: number) => {
            const r = armAt(arc, body.centre, at);
            return { x: -rate(at) * r.y, y: rate(at) * r.x };
          };
          const h = 1e-5 * amplitude;
          const [before, after] = [momentum(lean - h), momentum(lean + h)];
          const perSecond = rate(lean) / (2 * h);
          const { normal, along } = floorForceAt(pass, lean);
          // Differences over 1e-5 of a swing: 1e-10 by order two, some 1e-10 by rounding, of forces of the size of g.
          expect(normal).toBeCloseTo(1 + ((after.y - before.y) * perSecond) / g, 7);
          expect(along).toBeCloseTo(((after.x - before.x) * perSecond) / g, 7);
        },
      ),
    );
  });

  it('the energy is constant along the swing, and not zero', () => {
    fc.assert(
      fc.property(
        roundRockers,
        between(-1, 1),
        between(0.05, 0.95),
        ({ runner, body, rest, nose, tail }, place, share) => {
          const amplitude = share * Math.min(tail - rest, rest - nose);
          const landscape = landscapeOf(profileOf([[runner.outline]]), body.centre);
          const stretch = stretchAt(landscape, indexAt(landscape.profile, rest));
          const pass = passOver(stretch, body.inertia / body.mass, rest + amplitude, 0);
          const arc = runner.tracks[1]!;
          const energy = (lean: number): number => {
            const r = armAt(arc, body.centre, lean);
            const kinetic =
              ((body.inertia + body.mass * (r.x ** 2 + r.y ** 2)) * motionAt(pass, lean).rateSquared) / 2;
            return kinetic + body.mass * g * r.y;
          };
          const still = body.mass * g * armAt(arc, body.centre, rest + amplitude).y;
          expect(Math.abs(energy(rest + place * amplitude) / still - 1)).toBeLessThan(1e-12);
          expect(motionAt(pass, rest).rateSquared).toBeGreaterThan(0);
          expect(still).toBeGreaterThan(0);
        },
      ),
    );
  });
});
