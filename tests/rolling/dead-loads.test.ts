/** Weights put on a chair at once, in closed form on one arc, and against the run through time. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/point.js';
import { profileOf } from '../../src/geometry/profile.js';
import type { MassProperties } from '../../src/mass.js';
import {
  largestStep,
  loadedCentre,
  stepPeak,
  type Standing,
  type StepPeak,
} from '../../src/rolling/dead-loads.js';
import type { Script } from '../../src/rolling/script.js';
import { rollThrough } from '../../src/rolling/scripted-roll.js';
import { between } from '../arbitraries/rolling.js';
import { standardGravity as g } from '../oracles/round-runner.js';
import { off, there, why } from './roll.js';
import { roundRunner } from './runners.js';
import { courseOn, still } from './scripted.js';

interface Scene {
  readonly radius: number;
  readonly body: MassProperties;
  readonly rest: number;
  readonly nose: number;
  readonly tail: number;
}

const madeOf = ({ radius, nose, tail }: Scene) => roundRunner({ x: 0, y: radius }, radius, nose, tail);
const standingOf = (scene: Scene): Standing => ({ profile: profileOf([[madeOf(scene).outline]]), ...scene });

const scenes: fc.Arbitrary<Scene> = fc
  .record({
    radius: between(0.8, 1.5),
    hang: between(0.3, 0.8),
    rest: between(-0.1, 0.1),
    mass: between(5, 40),
    nose: between(-0.6, -0.35),
    tail: between(0.35, 0.6),
  })
  .map(({ radius, hang, rest, mass, nose, tail }) => {
    const centre = { x: -hang * radius * Math.sin(rest), y: radius - hang * radius * Math.cos(rest) };
    return { radius, rest, nose, tail, body: { mass, centre, inertia: mass * 0.1 } };
  });

const pressed = (body: MassProperties, place: Point, force: number): Script => ({
  ...still(body),
  presses: [{ place: () => place, force: () => force }],
});

/** Where it turns, by the run through time; null: over the crest. */
function turnOf(scene: Scene, place: Point, force: number): number | null {
  const centre = loadedCentre(scene.body, [{ place, force }]);
  const made = madeOf(scene);
  const [back, forward] = [
    Math.max(scene.tail, Math.atan2(centre.x - made.ends.tail.x, centre.y - made.ends.tail.y)),
    Math.min(scene.nose, Math.atan2(centre.x - made.ends.nose.x, centre.y - made.ends.nose.y)),
  ];
  const course = courseOn(made, pressed(scene.body, place, force), {
    guards: [{ from: 0, back, forward }],
    until: 20,
  });
  const { legs, goesOver } = rollThrough(course, { lean: scene.rest, rate: 0 });
  if (goesOver !== null) return null;
  return legs.find(({ from }, i) => i > 0 && from.sense !== legs[0]!.from.sense)!.from.lean;
}

const places = fc.record({ x: between(-0.5, 0.5), y: between(0.2, 0.7) });

describe('a weight put on at once', () => {
  // V = const - D cos(θ - low): alike on both sides of the loaded rest.
  it('rolls one arc as far beyond the loaded rest as it began before it', () => {
    fc.assert(
      fc.property(scenes, places, between(5, 100), (scene, place, force) => {
        const { x, y } = loadedCentre(scene.body, [{ place, force }]);
        const low = Math.atan2(-x, scene.radius - y);
        const peak = 2 * low - scene.rest;
        fc.pre(peak < scene.tail && peak > scene.nose && Math.abs(low - scene.rest) > 1e-3);
        const found = stepPeak(standingOf(scene), { place, force }, 'back') as StepPeak;
        // The root is where V's difference rounds to nothing: 1e-16 over its slope.
        expect(found.peak).toBeCloseTo(peak, 11);
        expect(turnOf(scene, place, force)).toBeCloseTo(found.peak, 9);
      }),
      { numRuns: 60 },
    );
  });

  // On the tail T: (m + M) |G* - T| cos(θ - crest) = V/g = m H(rest) + M Y(rest), and crest has G* plumb over T.
  it('peaks on the tail end where the corner regains V', () => {
    fc.assert(
      fc.property(scenes, between(-0.5, -0.3), between(0.9, 0.999), (scene, x, share) => {
        const { radius, body, rest, tail } = scene;
        const T = madeOf(scene).ends.tail;
        const place = { x, y: 0.4 };
        const largest = largestStep(standingOf(scene), place, 'back');
        fc.pre(typeof largest === 'number');
        const force = share * largest;
        const centre = loadedCentre(body, [{ place, force }]);
        const crest = Math.atan2(centre.x - T.x, centre.y - T.y);
        const started =
          radius -
          Math.hypot(centre.x, radius - centre.y) * Math.cos(rest - Math.atan2(-centre.x, radius - centre.y));
        const peak = crest - Math.acos(started / Math.hypot(centre.x - T.x, centre.y - T.y));
        fc.pre(peak > tail);
        // A thousandth of the load from the crest, V still falls by a hundredth: 1e-16 of it is 1e-14 of lean.
        const found = stepPeak(standingOf(scene), { place, force }, 'back') as StepPeak;
        expect(found.peak).toBeCloseTo(peak, 10);
        expect(found.crest).toBeCloseTo(crest, 12);
        expect(turnOf(scene, place, force)).toBeCloseTo(peak, 9);
      }),
      { numRuns: 30 },
    );
  });

  it('does not move what it is plumb over', () => {
    fc.assert(
      fc.property(scenes, between(0.1, 0.9), between(5, 200), (scene, deep, force) => {
        const { radius, rest } = scene;
        const place = { x: -deep * radius * Math.sin(rest), y: radius - deep * radius * Math.cos(rest) };
        const { peak } = stepPeak(standingOf(scene), { place, force }, 'back') as StepPeak;
        // Two places a rounding apart.
        expect(peak).toBeCloseTo(rest, 12);
      }),
    );
  });

  it('goes over just above the largest step and not just below, by the run through time too', () => {
    fc.assert(
      fc.property(scenes, places, (scene, place) => {
        const largest = largestStep(standingOf(scene), place, 'back');
        fc.pre(typeof largest === 'number' && largest > 1 && largest < 1e4);
        const [below, above] = [0.9999, 1.0001].map((share) => share * largest);
        const borne = stepPeak(standingOf(scene), { place, force: below! }, 'back') as StepPeak;
        expect(borne).toHaveProperty('peak');
        // Beyond a quarter turn from the rest no crest counts: there it is over though the run might come back.
        fc.pre(Math.abs(borne.crest - scene.rest) < Math.PI / 2);
        expect(['back', 'forward']).toContain(stepPeak(standingOf(scene), { place, force: above! }, 'back'));
        expect(turnOf(scene, place, below!)).not.toBeNull();
        expect(turnOf(scene, place, above!)).toBeNull();
      }),
      { numRuns: 40 },
    );
  });

  // On T itself: m H(rest) + M Y_T(rest) = (m + M) |G* - T| = m |G - T|, Y_T = R (1 - cos(tail - rest)).
  it('on the tail end the largest is in closed form', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const { radius, body, rest, tail } = scene;
        const T = madeOf(scene).ends.tail;
        // Beyond a quarter turn from the rest no crest counts.
        fc.pre(Math.atan2(body.centre.x - T.x, body.centre.y - T.y) - rest < Math.PI / 2);
        const height = radius - Math.hypot(body.centre.x, radius - body.centre.y);
        const over = Math.hypot(body.centre.x - T.x, body.centre.y - T.y) - height;
        const mass = (body.mass * over) / (radius * (1 - Math.cos(tail - rest)));
        // Sought to the last digits of its share of the whole, from a rest known to 1e-16.
        expect(off(there(largestStep(standingOf(scene), T, 'back')), mass * g)).toBeLessThan(1e-9);
      }),
    );
  });

  it('any is borne near the contact, where even the weight alone would not roll it to its end', () => {
    fc.assert(
      fc.property(scenes, between(-0.45, 0.45), between(0.3, 0.9), (scene, share, deep) => {
        // At an angle from plumb of less than half the way to the nearer end: 2 low - rest stays on the arc.
        const { radius, rest, nose, tail } = scene;
        const low = rest + share * Math.min(tail - rest, rest - nose);
        const place = { x: -deep * radius * Math.sin(low), y: radius - deep * radius * Math.cos(low) };
        expect(why(largestStep(standingOf(scene), place, 'back'))).toBe('bears any load put there at once');
      }),
    );
  });

  it('of a mirrored chair is the mirror image', () => {
    const turned = ({ x, y }: Point): Point => ({ x: -x, y });
    fc.assert(
      fc.property(scenes, places, between(5, 200), (scene, place, force) => {
        const mirrored: Scene = {
          ...scene,
          body: { ...scene.body, centre: turned(scene.body.centre) },
          ...{ rest: -scene.rest, nose: -scene.tail, tail: -scene.nose },
        };
        const [one, other] = [
          stepPeak(standingOf(scene), { place, force }, 'back'),
          stepPeak(standingOf(mirrored), { place: turned(place), force }, 'forward'),
        ];
        if (typeof one === 'string') expect(other).toBe(one === 'back' ? 'forward' : 'back');
        else {
          // Near the crest V is flat: 1e-16 of V is 1e-8 of lean.
          expect((other as StepPeak).peak).toBeCloseTo(-one.peak, 7);
          expect((other as StepPeak).crest).toBeCloseTo(-one.crest, 11);
        }
        const [most, mostMirrored] = [
          largestStep(standingOf(scene), place, 'back'),
          largestStep(standingOf(mirrored), turned(place), 'forward'),
        ];
        if (typeof most === 'number') expect(off(mostMirrored as number, most)).toBeLessThan(1e-8);
        else expect(mostMirrored).toEqual(most);
      }),
    );
  });
});
