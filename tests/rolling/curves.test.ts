/** Bodies that roll on curves: against the arcs they fit, and against textbook ellipses. */
import { describe, expect, it } from 'vitest';
import { endOf, startOf, type Arc, type Cubic, type Loop } from '../../src/geometry/piece.js';
import { plus, times, unitAt } from '../../src/geometry/point.js';
import { profileOf } from '../../src/geometry/profile.js';
import { runningSurface } from '../../src/geometry/running-surface.js';
import { isMissing } from '../../src/numeric/missing.js';
import { rollAtRest, type RestRecord } from '../../src/rolling/roll-at-rest.js';

const g = 9.80665;
const degree = Math.PI / 180;

/** Control points 4/3 tan(sweep/4) radii along the tangents: off the arc by R (4/27) sin⁶(sweep/4)/cos²(sweep/4). */
function fitted(arc: Arc): Cubic {
  const along = (angle: number) =>
    times(unitAt(angle + Math.PI / 2), (4 / 3) * Math.tan(arc.sweep / 4) * arc.radius);
  const [from, to] = [startOf(arc), endOf(arc)];
  const control2 = plus(to, times(along(arc.start + arc.sweep), -1));
  return { kind: 'cubic', from, control1: plus(from, along(arc.start)), control2, to };
}

/** Arcs about (0, R) from 30° behind to 30° ahead, closed by their chord. */
function runner(radius: number, cuts: number): Arc[] {
  const sweep = (60 * degree) / cuts;
  return Array.from({ length: cuts }, (_, i) => ({
    kind: 'arc',
    centre: { x: 0, y: radius },
    radius,
    start: -120 * degree + i * sweep,
    sweep,
  }));
}

function roll(pieces: Loop, swing: number): RestRecord {
  const closed: Loop = [...pieces, { kind: 'line', from: endOf(pieces.at(-1)!), to: startOf(pieces[0]!) }];
  const profile = profileOf([[closed]]);
  const body = { mass: 80, centre: { x: -0.02, y: 0.6 }, inertia: 9 };
  const settings = { swing, pushedAt: { x: -0.4, y: 1.05 } };
  return rollAtRest(profile, runningSurface(profile), body, settings).atRest!;
}

const value = <T>(found: T): Exclude<T, { missing: string }> => {
  if (isMissing(found)) throw new Error(found.missing);
  return found as Exclude<T, { missing: string }>;
};

describe('cubics that fit an arc to 1e-9', () => {
  // Pieces of 7.5°: off the arc by 1.07 × (4/27) × (0.0327)⁶ = 2e-10 m.
  const arcs = runner(1.07, 8);
  const [onArcs, onCubics] = [roll(arcs, 8 * degree), roll(arcs.map(fitted), 8 * degree)];
  const near = (a: number, b: number): void => {
    expect(Math.abs(a / b - 1)).toBeLessThan(1e-6);
  };

  it('give its rest and periods to 1e-6', () => {
    near(onCubics.rest.lean, onArcs.rest.lean);
    near(value(onCubics.smallPeriod), value(onArcs.smallPeriod));
    near(value(onCubics.swing).period, value(onArcs.swing).period);
  });

  it('give its crests, energies, pushes and friction demand', () => {
    for (const side of ['back', 'forward'] as const) {
      near(value(onCubics[side].tip).angle, value(onArcs[side].tip).angle);
      near(value(onCubics[side].tip).energy, value(onArcs[side].tip).energy);
      near(value(onCubics[side].push), value(onArcs[side].push));
    }
    near(value(onCubics.forces).frictionDemand, value(onArcs.forces).frictionDemand);
  });
});

describe('a uniform ellipse on its flat side', () => {
  const [a, b] = [0.5, 0.4];
  const loop: Loop = [
    {
      kind: 'ellipse-arc',
      centre: { x: 0, y: b },
      axisA: { x: a, y: 0 },
      axisB: { x: 0, y: b },
      start: 0,
      sweep: 2 * Math.PI,
    },
  ];
  const profile = profileOf([[loop]]);
  const body = { mass: 3, centre: { x: 0, y: b }, inertia: (3 * (a * a + b * b)) / 4 };
  const swung = (swing: number): RestRecord =>
    rollAtRest(profile, runningSurface(profile), body, { swing, pushedAt: null }).atRest!;

  it('has T₀ = 2π sqrt(b (a² + 5 b²)/(4 g (a² - b²))): 2.167170 s (textbook; physics of a rolling ellipse)', () => {
    const closed = 2 * Math.PI * Math.sqrt((b * (a * a + 5 * b * b)) / (4 * g * (a * a - b * b)));
    expect(value(swung(0.1).smallPeriod)).toBeCloseTo(closed, 9);
    expect(closed).toBeCloseTo(2.16717, 5);
  });

  it('tips at a quarter turn, with m g (a - b)', () => {
    const { angle, energy } = value(swung(0.1).back.tip);
    expect(angle).toBeCloseTo(Math.PI / 2, 9);
    expect(energy).toBeCloseTo(3 * g * (a - b), 9);
  });

  it('swings from any amplitude, the period tending to T₀ with its square', () => {
    const small = value(swung(0.1).smallPeriod);
    for (let i = 1; i <= 300; i++)
      expect(value(swung(i * 0.05 * degree).swing).period).toBeGreaterThan(small);
    const excess = (swing: number): number => value(swung(swing).swing).period - small;
    // Order 2: halving the amplitude leaves a quarter, but for its square.
    expect(excess(0.02) / excess(0.01)).toBeCloseTo(4, 2);
  });
});
