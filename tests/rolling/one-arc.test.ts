import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plus, type Point } from '../../src/geometry/point.js';
import type { MassProperties } from '../../src/mass.js';
import { between, roundRockers, type RoundRocker } from '../arbitraries/rolling.js';
import { bruteSupport } from '../oracles/brute-support.js';
import { denseMaximum } from '../oracles/dense-maximum.js';
import { armAt, rollToTurn } from '../oracles/rolling-motion.js';
import {
  crestOn,
  demandAtTurn,
  heightAtRest,
  periodAt,
  restOf,
  smallPeriodOf,
  standardGravity as g,
  tipEnergyOn,
} from '../oracles/round-runner.js';
import { degree, off, settled, swingFrom, there } from './roll.js';
import { roundRunner } from './runners.js';
import { isMissing } from '../../src/numeric/missing.js';

/** Closed form against closed form in other symbols: roundings only, some of them of differences. */
const exact = 1e-9;

/** Amplitudes that keep the contact on the arc, as shares of the way to the nearer end. */
const shares = between(0.01, 0.98);
const roomOf = ({ nose, tail, rest }: RoundRocker): number => Math.min(tail - rest, rest - nose);

describe('one arc', () => {
  it('rests where G is plumb below the centre', () => {
    fc.assert(
      fc.property(roundRockers, (rocker) => {
        const { rest, back, forward } = settled(rocker.runner.outline, rocker.body);
        expect(Math.abs(rest.lean - restOf(rocker))).toBeLessThan(1e-13);
        expect(Math.abs(rest.lean - rocker.rest)).toBeLessThan(1e-12);
        expect(off(rest.height, heightAtRest(rocker))).toBeLessThan(exact);
        expect(rest.flat).toBe(0);
        expect(back.rockerEnd).toBeCloseTo(rocker.tail - rocker.rest, 6);
        expect(forward.rockerEnd).toBeCloseTo(rocker.rest - rocker.nose, 6);
      }),
    );
  });

  it('has the small period of the closed form', () => {
    fc.assert(
      fc.property(roundRockers, (rocker) => {
        const { smallPeriod } = settled(rocker.runner.outline, rocker.body);
        expect(off(there(smallPeriod), smallPeriodOf(rocker))).toBeLessThan(exact);
      }),
    );
  });

  it('goes over its ends at the lean and with the energy of the closed form', () => {
    fc.assert(
      fc.property(roundRockers, (rocker) => {
        const { rest, back, forward } = settled(rocker.runner.outline, rocker.body);
        const { nose, tail } = rocker.runner.ends;
        const sides = [
          { end: tail, tip: back.tip, sign: 1 },
          { end: nose, tip: forward.tip, sign: -1 },
        ];
        for (const { end, tip: found, sign } of sides) {
          // Sought to 90° from rest.
          if (sign * (crestOn(end, rocker) - rest.lean) > Math.PI / 2) {
            expect(found).toHaveProperty('missing');
            continue;
          }
          const tip = there(found);
          expect(off(tip.angle, sign * (crestOn(end, rocker) - rest.lean))).toBeLessThan(exact);
          expect(off(tip.energy, tipEnergyOn(end, rocker))).toBeLessThan(exact);
        }
      }),
    );
  });

  it('tips under the steady push that looking everywhere finds', () => {
    fc.assert(
      fc.property(roundRockers, between(-0.5, 0.5), between(0.05, 1.5), (rocker, side, up) => {
        const at = plus(rocker.runner.ends.nose, { x: side * rocker.radius, y: up * rocker.radius });
        const record = settled(rocker.runner.outline, rocker.body, { pushedAt: at });
        for (const sense of ['back', 'forward'] as const) {
          const { tip, push } = record[sense];
          if (isMissing(tip)) return;
          const needed = pushByForce(rocker, record.rest.lean, tip.crest, at);
          if (needed === null) expect(push).toHaveProperty('missing');
          else expect(off(there(push), needed)).toBeLessThan(1e-7);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('swings with the period of the energy integral, and of the motion step by step', () => {
    fc.assert(
      fc.property(roundRockers, shares, (rocker, share) => {
        const { runner, body, rest } = rocker;
        const amplitude = share * roomOf(rocker);
        const { period, turns } = there(swingFrom(runner.outline, body, rest, rest + amplitude));
        expect(off(period, periodAt(rocker, amplitude))).toBeLessThan(1e-12);
        expect(turns[0]).toBeCloseTo(rest - amplitude, 12);
        expect(turns[1]).toBe(rest + amplitude);
        const steps = rollToTurn(runner.tracks, body, rest + amplitude, -1, period / 1500);
        expect(off(period, 2 * steps.time)).toBeLessThan(exact);
      }),
      { numRuns: 50 },
    );
  });

  it('the period tends to the small one as amplitude squared', () => {
    fc.assert(
      fc.property(roundRockers, (rocker) => {
        const { runner, body, rest } = rocker;
        const small = smallPeriodOf(rocker);
        const excess = (amplitude: number): number =>
          there(swingFrom(runner.outline, body, rest, rest + amplitude)).period / small - 1;
        // a²/16 of a pendulum, more with a long arm: at 0.01 rad well over the roundings of rest and T, 1e-12 together.
        fc.pre(Math.abs(excess(0.01)) > 1e-6);
        expect(excess(0.02) / excess(0.01)).toBeGreaterThan(3.9);
        expect(excess(0.02) / excess(0.01)).toBeLessThan(4.1);
      }),
    );
  });

  it('asks for the friction of the closed form at its turning points, and nowhere for more than looking finds', () => {
    fc.assert(
      fc.property(roundRockers, shares, (rocker, share) => {
        const { runner, body } = rocker;
        const amplitude = share * roomOf(rocker);
        const { forces } = settled(runner.outline, body, { swing: amplitude });
        const looked = denseMaximum((lean) => demandByForce(rocker, amplitude, lean), -amplitude, amplitude);
        if (isMissing(forces)) return;
        expect(forces.frictionDemand).toBeGreaterThanOrEqual(demandAtTurn(rocker, amplitude) * (1 - 1e-12));
        expect(off(forces.frictionDemand, looked)).toBeLessThan(exact);
      }),
      { numRuns: 40 },
    );
  });
});

/** Largest m g |H'| / Y_b from rest to crest, both from plain vectors; null where b reaches the floor. */
function pushByForce({ runner, body }: RoundRocker, rest: number, crest: number, at: Point): number | null {
  const support = bruteSupport([[runner.outline]]);
  const height = (lean: number): number => support(lean) + at.x * Math.sin(lean) + at.y * Math.cos(lean);
  const [from, to] = [Math.min(rest, crest), Math.max(rest, crest)];
  const lowest = -denseMaximum((lean) => -height(lean), from, to);
  // Pushed within a millimetre of the floor the push knows no bound: neither finds its top to nine digits.
  fc.pre(Math.abs(lowest) > 1e-3);
  if (lowest < 0) return null;
  const ahead = (lean: number): number => {
    const track = runner.tracks.find((each) => lean >= each.from && lean <= each.to)!;
    return armAt(track, body.centre, lean).x;
  };
  return denseMaximum((lean) => (body.mass * g * Math.abs(ahead(lean))) / height(lean), from, to);
}

/** |F|/N from the momentum of G, ψ from rest: F = d/dt(-m θ̇ H), N = m g + d/dt(m θ̇ H'), by central differences. */
function demandByForce(rocker: RoundRocker, amplitude: number, psi: number): number {
  const { radius, body } = rocker;
  const hang = radius - heightAtRest(rocker);
  const gyration2 = body.inertia / body.mass;
  const height = radius - hang * Math.cos(psi);
  const slope = hang * Math.sin(psi);
  const arm2 = gyration2 + height ** 2 + slope ** 2;
  const rate2 = (4 * g * hang * Math.sin((amplitude + psi) / 2) * Math.sin((amplitude - psi) / 2)) / arm2;
  // L̇ = m H' (ρ θ̇² - g) with L = A θ̇ and Ȧ = 2 m ρ H' θ̇.
  const turn = (slope * (radius * rate2 - g) - 2 * radius * slope * rate2) / arm2;
  const along = -(height * turn + slope * rate2);
  const up = g + slope * turn + hang * Math.cos(psi) * rate2;
  return Math.abs(along) / up;
}

describe('the published rocker', () => {
  const runner = roundRunner({ x: 0, y: 1.07 }, 1.07, -25 * degree, 22 * degree);
  const body: MassProperties = { mass: 80, inertia: 9, centre: { x: 0, y: 0.6 } };
  // Printed for g = 9.81 m/s²: times go as 1/sqrt(g), energies as g.
  const printedFor = Math.sqrt(g / 9.81);

  it('has the published periods', () => {
    expect(there(settled(runner.outline, body).smallPeriod) * printedFor).toBeCloseTo(2.011395, 6);
    for (const [amplitude, period] of [
      [2, 2.0122],
      [8, 2.024244],
      [15, 2.056269],
    ] as const) {
      const swing = there(swingFrom(runner.outline, body, 0, amplitude * degree));
      expect(swing.period * printedFor).toBeCloseTo(period, 6);
    }
  });

  it('has the published friction demand and the energy of the published tip over its tail', () => {
    const { forces, back } = settled(runner.outline, body, { swing: 8 * degree });
    expect(there(forces).frictionDemand).toBeCloseTo(0.0827, 4);
    // From the second engine's report: N/mg 0.9911 at least; 45.68 J to go over a tail 22° behind.
    expect(there(forces).leastFloorForce).toBeCloseTo(0.9911, 4);
    expect(Math.abs((there(back.tip).energy * 9.81) / g - 45.68)).toBeLessThan(0.005);
  });

  it('rests at the published angle with G 40 mm ahead', () => {
    const ahead = { ...body, centre: { x: 0.04, y: 0.6 } };
    expect(settled(runner.outline, ahead).rest.lean / degree).toBeCloseTo(-4.86451, 5);
  });
});
