/** What is said of a body released on its floor, against an independent integrator. */
import { describe, expect, it } from 'vitest';
import { opinionAtRest } from '../../src/contact/opinion-at-rest.js';
import { profileOf } from '../../src/geometry/profile.js';
import { runningSurface } from '../../src/geometry/running-surface.js';
import { rollAtRest } from '../../src/rolling/roll-at-rest.js';
import { slideOn } from '../oracles/sliding-arc.js';
import { roundRunner } from '../rolling/runners.js';
import { bodies, degree, roundBody } from './round-bodies.js';

function released(swing: number, friction: number) {
  const { centre, radius, body } = roundBody('person');
  const { outline, ends } = roundRunner(centre, radius, -25 * degree, 25 * degree);
  const profile = profileOf([[outline]]);
  const surface = runningSurface(profile, () => [ends.nose, ends.tail]);
  const { atRest } = rollAtRest(profile, surface, body, { swing: swing * degree, pushedAt: null });
  return opinionAtRest({ profile, surface, body, atRest: atRest!, swing: swing * degree, friction });
}

describe('on the floor of the design', () => {
  it.each([
    [8, 0.03],
    [15, 0.05],
  ])('let go at %s° a chair slides on friction %s as stick and slip say', (swing, friction) => {
    const [radius, height, mass, inertia] = bodies.person;
    const arc = { radius, height, mass, inertia, friction };
    const { slide, lifts } = released(swing, friction);
    // Over one swing, 2.05 s.
    const farthest = slideOn(arc, swing * degree, 2.05, 0.01).reduce(
      (most, { slid }) => (Math.abs(slid) > Math.abs(most) ? slid : most),
      0,
    );
    expect(Math.abs(farthest)).toBeGreaterThan(1e-3);
    // Half a hundredth, and a tenth of a millimetre where it hardly slides.
    expect(Math.abs(slide! - farthest)).toBeLessThan(1e-4 + 5e-3 * Math.abs(farthest));
    expect(lifts).toBe(false);
  });

  it('does not slide where the floor holds it', () => {
    // 0.0827 is asked for at 8°.
    expect(released(8, 0.09).slide).toBe(0);
    expect(released(8, 0.075).slide).not.toBe(0);
  });
});
