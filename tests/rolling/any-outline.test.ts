/** Bodies of any outline of lines and arcs, drawn any way up: the whole record against the motion step by step. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopMoments } from '../../src/geometry/area-moments.js';
import type { HullElement } from '../../src/geometry/hull-element.js';
import type { Loop } from '../../src/geometry/piece.js';
import { plus, times, type Point } from '../../src/geometry/point.js';
import { contactAt, profileOf } from '../../src/geometry/profile.js';
import type { MassProperties } from '../../src/mass.js';
import { between, thickLoops } from '../arbitraries/rolling.js';
import { hullOutline } from '../geometry/hull-outline.js';
import { denseMaximum } from '../oracles/dense-maximum.js';
import { armAt, rollToTurn, type Track } from '../oracles/rolling-motion.js';
import { balances, off, roll, swingFreely } from './roll.js';
import { isMissing } from '../../src/numeric/missing.js';

const bodies = fc
  .record({
    loop: thickLoops,
    away: between(0, 0.9),
    direction: between(-Math.PI, Math.PI),
    gyration: between(0.1, 0.5),
  })
  .map(({ loop, away, direction, gyration }) => {
    const { centroid } = loopMoments(hullOutline(profileOf([[loop]])));
    const edge = contactAt(profileOf([[loop]]), direction);
    const centre = plus(times(centroid, 1 - away), times(edge, away));
    const body: MassProperties = { mass: 20, centre, inertia: 20 * gyration ** 2 };
    return { loop, body };
  });

/** Three turns of the hull, as tracks. */
function tracksOf(loop: Loop): Track[] {
  const { elements } = profileOf([[loop]]);
  const track = (element: HullElement, turned: number): Track => {
    if (element.kind !== 'round') throw new RangeError(`tracksOf: a ${element.kind}`);
    const { from, to, centre, radius } = element;
    return { from: from + turned, to: to + turned, centre, radius };
  };
  return [-2 * Math.PI, 0, 2 * Math.PI].flatMap((turned) =>
    elements.map((element) => track(element, turned)),
  );
}

describe('any outline', () => {
  it('is rolled to a record of finite numbers, or of reasons', () => {
    fc.assert(
      fc.property(bodies, between(0.001, 1.5), ({ loop, body }, swing) => {
        const record = roll(loop, body, { swing, pushedAt: plus(body.centre, { x: -0.1, y: 0.3 }) });
        for (const [key, value] of numbersIn(record)) expect(Number.isFinite(value), key).toBe(true);
        if (record.atRest === null) return;
        const { rest, back, forward } = record.atRest;
        expect(rest.height).toBeGreaterThan(0);
        for (const { tip, rockerEnd } of [back, forward]) {
          expect(rockerEnd).toBeGreaterThan(-1e-6);
          if (!isMissing(tip)) expect(tip.energy).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('swings about each of its rests as the motion step by step', () => {
    fc.assert(
      fc.property(bodies, between(0.05, 0.9), fc.nat(), ({ loop, body }, share, pick) => {
        const found = balances(loop, body.centre);
        const index = pick % Math.max(found.length, 1);
        const [rest, crest] = [found[index], found[index + 1]];
        fc.pre(rest?.kind === 'rest' && crest !== undefined);
        const release = rest.lean + share * (crest.lean - rest.lean);
        fc.pre(release - rest.lean > 1e-3);
        const tracks = tracksOf(loop);
        const one = rollToTurn(tracks, body, release, -1, 1e-4);
        const swing = swingFreely(loop, body, rest.lean, release);
        if (one.turn === null) {
          expect(swing).toHaveProperty('missing', expect.stringContaining('stops on a flat'));
          return;
        }
        const other = one.impacts.length > 0 ? rollToTurn(tracks, body, one.turn, 1, 1e-4) : one;
        if (other.turn === null || one.turn > rest.lean) {
          expect(swing).toHaveProperty('missing');
          return;
        }
        // A tenth of a millisecond is coarse for a body that spins about its edge: order four leaves some 1e-8.
        expect(isMissing(swing) ? NaN : off(swing.period, one.time + other.time)).toBeLessThan(1e-6);
        expect(isMissing(swing) ? NaN : Math.abs(swing.turns[0] - one.turn)).toBeLessThan(1e-6);
      }),
      { numRuns: 40 },
    );
  });

  it('tips with the push that looking everywhere finds', () => {
    fc.assert(
      fc.property(bodies, between(-0.3, 0.3), between(0, 1), ({ loop, body }, x, y) => {
        const at = plus(body.centre, { x, y });
        const { atRest } = roll(loop, body, { pushedAt: at });
        fc.pre(atRest !== null);
        const tracks = tracksOf(loop);
        for (const { tip, push } of [atRest.back, atRest.forward]) {
          if (isMissing(tip)) continue;
          const looked = largestLever(tracks, body.centre, at, atRest.rest.lean, tip.crest);
          // A push on a point near the floor has no bound.
          if (isMissing(push)) expect(looked).toBeGreaterThan(1);
          else if (looked < 10)
            expect(Math.abs(push - 20 * 9.80665 * looked)).toBeLessThan(1e-6 * push + 1e-8);
        }
      }),
      { numRuns: 40 },
    );
  });
});

/** Largest |H'|/Y_b between two leans, each track for itself; no bound where Y_b is nothing. */
function largestLever(
  tracks: readonly Track[],
  centre: Point,
  at: Point,
  rest: number,
  crest: number,
): number {
  const [from, to] = [Math.min(rest, crest), Math.max(rest, crest)];
  const levers = tracks
    .filter((track) => track.to > from && track.from < to)
    .map((track) => {
      const lever = (lean: number): number => {
        const height = armAt(track, at, lean).y;
        return height > 0 ? Math.abs(armAt(track, centre, lean).x) / height : Infinity;
      };
      return denseMaximum(lever, Math.max(from, track.from), Math.min(to, track.to));
    });
  return Math.max(...levers);
}

/** Every number of a record, with the way to it. */
function numbersIn(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null || path.includes('stretch')) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${path}.${key}`));
}
