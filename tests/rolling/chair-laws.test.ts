/** Laws of a chair on its rockers, each with its exact hypotheses. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plus, minus, times, unitAt, type Point } from '../../src/geometry/point.js';
import { combineMasses, type MassProperties } from '../../src/mass.js';
import { isMissing, type OrMissing } from '../../src/numeric/missing.js';
import type { RestRecord } from '../../src/rolling/roll-at-rest.js';
import { between, roundRockers, type RoundRocker } from '../arbitraries/rolling.js';
import { movedLoop, movedPoint, type Move } from '../oracles/moved-loop.js';
import { roundRunner, runner } from './runners.js';
import { degree, off, roll, settled, there } from './roll.js';

const turnedAbout = (pivot: Point, q: Point, angle: number): Point => {
  const { x, y } = minus(q, pivot);
  return plus(pivot, plus(times(unitAt(angle), x), times(unitAt(angle + Math.PI / 2), y)));
};

describe('legs slid along one arc (the upper chair turned by β about the centre of the arc)', () => {
  const setting = fc.record({
    rocker: roundRockers,
    beta: between(-8, 8),
    share: between(0, 0.3),
    low: between(0.9, 1),
  });

  it('rests where the masses say: θ = -π/2 - arg(m_u e^{iβ} (G_u - C) + m_r (G_r - C))', () => {
    fc.assert(
      fc.property(
        setting,
        ({ rocker: { runner: made, body, centre, radius, nose, tail }, beta, share, low }) => {
          const turn = beta * degree;
          const rockers: MassProperties = {
            mass: share * body.mass,
            centre: plus(centre, { x: 0, y: -low * radius }),
            inertia: 0.1 * share,
          };
          const upper = { ...body, centre: turnedAbout(centre, body.centre, turn) };
          const [u, r] = [minus(upper.centre, centre), minus(rockers.centre, centre)];
          const sum = plus(times(u, upper.mass), times(r, rockers.mass));
          const expected = -Math.PI / 2 - Math.atan2(sum.y, sum.x);
          fc.pre(expected > nose + 0.01 && expected < tail - 0.01);
          const { rest } = settled(made.outline, combineMasses([upper, ...(share > 0 ? [rockers] : [])]));
          expect(Math.abs(rest.lean - expected)).toBeLessThan(1e-11);
        },
      ),
    );
  });

  it('with massless rockers the seat keeps its slope at rest', () => {
    fc.assert(
      fc.property(setting, ({ rocker: { runner: made, body, centre, nose, tail, rest }, beta }) => {
        const turn = beta * degree;
        fc.pre(rest - turn > nose + 0.01 && rest - turn < tail - 0.01);
        const slid = settled(made.outline, { ...body, centre: turnedAbout(centre, body.centre, turn) });
        // Seat slope at rest: turned by β with the legs, and leaned by the rest.
        expect(Math.abs(slid.rest.lean + turn - rest)).toBeLessThan(1e-11);
      }),
    );
  });
});

describe('legs trimmed (the upper chair turned by ε about a joint at height y_J)', () => {
  const [radius, light] = [1.1, { mass: 3, centre: { x: 0, y: 0.04 }, inertia: 0.2 }];
  const upper: MassProperties = { mass: 70, centre: { x: 0, y: 0.62 }, inertia: 8 };
  const made = roundRunner({ x: 0, y: radius }, radius, -0.5, 0.5);
  const seatTurn = (epsilon: number, joint: Point, rockers: MassProperties | null): number => {
    const turned = { ...upper, centre: turnedAbout(joint, upper.centre, epsilon) };
    return epsilon + settled(made.outline, combineMasses([turned, ...(rockers ? [rockers] : [])])).rest.lean;
  };

  it.each([
    ['about the floor, massless rockers', { x: -0.2, y: 0 }, null],
    ['about a joint up the leg, massless rockers', { x: -0.2, y: 0.1 }, null],
    ['about a joint up the leg, rockers of some mass', { x: -0.2, y: 0.1 }, light],
  ] as const)('%s: ε [1 + (m_u/m)(h_u - y_J)/(R - h)] to first order', (_, joint, rockers) => {
    const all = combineMasses([upper, ...(rockers ? [rockers] : [])]);
    const rate = 1 + ((upper.mass / all.mass) * (upper.centre.y - joint.y)) / (radius - all.centre.y);
    if (joint.y === 0) expect(rate).toBeCloseTo(radius / (radius - upper.centre.y), 12);
    const error = (epsilon: number): number => seatTurn(epsilon, joint, rockers) - epsilon * rate;
    expect(off(seatTurn(1e-6, joint, rockers), 1e-6 * rate)).toBeLessThan(1e-5);
    // Second order: half the trim, a quarter of the error; 4 within the third order's share.
    expect(error(0.02) / error(0.01)).toBeGreaterThan(3.8);
    expect(error(0.02) / error(0.01)).toBeLessThan(4.2);
    expect(error(0.002) / error(0.001)).toBeCloseTo(4, 1);
  });

  it('back legs trimmed lean it back: the rear goes down, ε > 0', () => {
    expect(seatTurn(0.01, { x: 0.2, y: 0.05 }, light)).toBeGreaterThan(0.01);
  });
});

/** Every number of a record that has a value, by name; those that the law multiplies by their factor. */
function numbersOf({ rest, smallPeriod, swing, forces, back, forward }: RestRecord) {
  const value = <T>(found: OrMissing<T>, read: (found: T) => number): number | null =>
    isMissing(found) ? null : read(found);
  return {
    lean: rest.lean,
    height: rest.height,
    small: value(smallPeriod, (period) => period),
    period: value(swing, ({ period }) => period),
    demand: value(forces, ({ frictionDemand }) => frictionDemand),
    least: value(forces, ({ leastFloorForce }) => leastFloorForce),
    backAngle: value(back.tip, ({ angle }) => angle),
    backEnergy: value(back.tip, ({ energy }) => energy),
    backPush: value(back.push, (push) => push),
    backEnd: back.rockerEnd,
    forwardAngle: value(forward.tip, ({ angle }) => angle),
    forwardEnergy: value(forward.tip, ({ energy }) => energy),
    forwardPush: value(forward.push, (push) => push),
    forwardEnd: forward.rockerEnd,
  };
}
type Numbers = ReturnType<typeof numbersOf>;

/** Two records alike but for factors. */
function expectScaled(
  a: Numbers,
  b: Numbers,
  factors: Partial<Record<keyof Numbers, number>>,
  tolerance = 1e-9,
): void {
  for (const key of Object.keys(a) as (keyof Numbers)[]) {
    const [one, other] = [a[key], b[key]];
    if (one === null || other === null) expect(other, key).toBe(one);
    else
      expect(Math.abs(other - one * (factors[key] ?? 1)), key).toBeLessThan(
        tolerance * (1e-3 + Math.abs(other)),
      );
  }
}

const record = ({ runner: made, body }: RoundRocker, move: Move, mass: number, inertia: number): Numbers => {
  const centre = movedPoint(body.centre, move);
  const pushedAt = movedPoint(
    plus(body.centre, { x: -0.3 * (made.ends.nose.x - made.ends.tail.x), y: 0.2 }),
    move,
  );
  return numbersOf(
    settled(
      movedLoop(made.outline, move),
      { mass: body.mass * mass, centre, inertia: body.inertia * inertia },
      { pushedAt },
    ),
  );
};

describe('scaling', () => {
  it('all masses × k: the same angles and periods, energies and pushes × k', () => {
    fc.assert(
      fc.property(roundRockers, between(0.01, 100), (rocker, k) => {
        const [one, other] = [record(rocker, {}, 1, 1), record(rocker, {}, k, k)];
        expectScaled(one, other, { backEnergy: k, backPush: k, forwardEnergy: k, forwardPush: k });
      }),
    );
  });

  it.each([0, 3])('all lengths × k, masses × k^%i: period × √k', (power) => {
    fc.assert(
      fc.property(
        roundRockers,
        between(-2.5, 3).map((e) => 10 ** e),
        (rocker, k) => {
          const m = k ** power;
          const [one, other] = [record(rocker, {}, 1, 1), record(rocker, { scale: k }, m, m * k * k)];
          const [root, energy] = [Math.sqrt(k), m * k];
          expectScaled(one, other, {
            height: k,
            small: root,
            period: root,
            backEnergy: energy,
            forwardEnergy: energy,
            backPush: m,
            forwardPush: m,
          });
          expect(one.small).toBeGreaterThan(0);
        },
      ),
    );
  });

  it('wherever the drawing lies', () => {
    fc.assert(
      fc.property(roundRockers, between(-100, 100), between(-100, 100), (rocker, x, y) => {
        const [one, other] = [record(rocker, {}, 1, 1), record(rocker, { shift: { x, y } }, 1, 1)];
        // Coordinates of 100 m leave 1e-14 of a metre, small crests and rests some digits less.
        expectScaled(one, other, {}, 1e-8);
      }),
    );
  });
});

describe('mirror', () => {
  it('a mirrored chair has the mirrored rest, back and forward change places', () => {
    fc.assert(
      fc.property(roundRockers, (rocker) => {
        const one = record(rocker, {}, 1, 1);
        const other = record(rocker, { mirror: true }, 1, 1);
        expectScaled(
          {
            ...one,
            lean: -one.lean,
            backAngle: one.forwardAngle,
            backEnergy: one.forwardEnergy,
            backPush: one.forwardPush,
            backEnd: one.forwardEnd,
            forwardAngle: one.backAngle,
            forwardEnergy: one.backEnergy,
            forwardPush: one.backPush,
            forwardEnd: one.backEnd,
          },
          other,
          {},
        );
      }),
    );
  });

  it('as well with two radii, a flat and a corner', () => {
    const steps = [
      { radius: 1.2, turn: 0.25 },
      { corner: 0.02 },
      { radius: 0.9, turn: 0.1 },
      { flat: 0.03 },
      { radius: 1, turn: 0.2 },
    ];
    const { outline } = runner(steps, -0.3);
    const body: MassProperties = { mass: 40, centre: { x: outlineX(outline) + 0.02, y: 0.5 }, inertia: 4 };
    const one = roll(outline, body);
    const other = roll(movedLoop(outline, { mirror: true }), {
      ...body,
      centre: { x: -body.centre.x, y: 0.5 },
    });
    expect(other.atRest?.rest.lean).toBeCloseTo(-one.atRest!.rest.lean, 12);
    expect(other.restsOnSurface.length).toBe(one.restsOnSurface.length);
    expect(there(other.atRest!.back.tip).energy).toBeCloseTo(there(one.atRest!.forward.tip).energy, 9);
  });

  /** x of the lowest place. */
  const outlineX = (outline: Parameters<typeof settled>[0]): number => {
    const piece = outline.find(({ kind }) => kind === 'arc')!;
    return piece.kind === 'arc' ? piece.centre.x : NaN;
  };
});
