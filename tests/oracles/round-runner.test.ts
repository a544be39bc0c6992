import { describe, expect, it } from 'vitest';
import {
  demandAtTurn,
  heightAtRest,
  periodAt,
  restOf,
  smallPeriodOf,
  standardGravity,
} from './round-runner.js';

const degree = Math.PI / 180;
const runner = (radius: number, height: number, mass: number, inertia: number) => ({
  centre: { x: 0, y: radius },
  radius,
  body: { mass, inertia, centre: { x: 0, y: height } },
});

describe('closed forms of a round runner', () => {
  /**
   * A second derivation with its own integrator, printed to a microsecond for g = 9.81 m/s²: times go as 1/sqrt(g).
   */
  const printedFor = Math.sqrt(standardGravity / 9.81);

  it.each([
    [2, 2.0122],
    [8, 2.024244],
    [15, 2.056269],
  ])('period at %f° is the published %f s', (amplitude, period) => {
    const here = periodAt(runner(1.07, 0.6, 80, 9), amplitude * degree);
    expect(Math.abs(here * printedFor - period)).toBeLessThan(1e-6);
  });

  it('small period and friction demand are the published ones', () => {
    const person = runner(1.07, 0.6, 80, 9);
    expect(smallPeriodOf(person) * printedFor).toBeCloseTo(2.011395, 6);
    expect(demandAtTurn(person, 8 * degree)).toBeCloseTo(0.0827, 4);
  });

  it('rest is the published 4.86451° for G 40 mm ahead', () => {
    const { centre, radius, body } = runner(1.07, 0.6, 80, 9);
    const rest = restOf({ centre, radius, body: { ...body, centre: { x: 0.04, y: 0.6 } } });
    expect(-rest / degree).toBeCloseTo(4.86451, 5);
  });

  /**
   * With R = 0 and I = 0 it is a plain pendulum of length d: T = 4 sqrt(d/g) K(sin(a/2)) = 2π sqrt(d/g) / agm(1, cos(a/2))
   * (Gauss).
   */
  it.each([0.01, 0.5, 1.5, 2.5])('a runner shrunk to its centre is a pendulum: %f rad', (amplitude) => {
    let [a, b] = [1, Math.cos(amplitude / 2)];
    for (let i = 0; i < 8; i++) [a, b] = [(a + b) / 2, Math.sqrt(a * b)];
    const exact = (2 * Math.PI * Math.sqrt(0.7 / standardGravity)) / a;
    const pendulum = {
      centre: { x: 0, y: 0.7 },
      radius: 0,
      body: { mass: 3, inertia: 0, centre: { x: 0, y: 0 } },
    };
    // 200 nodes are at rounding for every amplitude here.
    expect(Math.abs(periodAt(pendulum, amplitude) / exact - 1)).toBeLessThan(1e-13);
    expect(heightAtRest(pendulum)).toBe(-0.7);
  });
});
