/** The hard lean as a script: what moves is one motion, at the places the contract names. */
import { describe, expect, it } from 'vitest';
import { bodyAtStart, leaningScript, type LeaningBackHard } from '../../src/loads/leaning-back-hard.js';
import { combineMasses } from '../../src/mass.js';
import { standardGravity as g } from '../oracles/round-runner.js';
import { checked, oneArc, sitters } from '../reading.js';

const degree = Math.PI / 180;
const child = 'child: { mass: 9 kg }\n';

const leanOf = (text: string, id = 'leaning-back-hard'): LeaningBackHard => {
  const { load } = checked(text).loads.find(
    ({ record }) => record.load.id === id && record.load.sitter === 'tall',
  )!.record;
  if (load.script?.kind !== 'leaning-back-hard') throw new RangeError(`leanOf: ${load.id} is no hard lean`);
  return load.script;
};
const lean = leanOf(`${oneArc}${sitters}`);
const script = leaningScript(lean, { x: 0.4, y: 0.07 });
const motion = script.moving[0]!.motion;
const { hip, trunk } = lean;

/** The trunk's centre turned forward, clockwise, by an angle: about the hip by cosine and sine. */
const turned = (angle: number) => {
  const [x, y] = [trunk.centre.x - hip.x, trunk.centre.y - hip.y];
  return {
    x: hip.x + x * Math.cos(angle) + y * Math.sin(angle),
    y: hip.y + y * Math.cos(angle) - x * Math.sin(angle),
  };
};

describe('the trunk', () => {
  it.each([
    [0, 15],
    // σ is a half at the half, and (10 - 3.75 + 0.375)/64 at a quarter.
    [0.1, 15 * (1 - 6.625 / 64)],
    [0.2, 7.5],
    [0.4, 0],
    [3, 0],
  ])('at %f s is turned %f° forward', (time, angle) => {
    const { centre } = motion(time);
    expect(centre.x).toBeCloseTo(turned(angle * degree).x, 14);
    expect(centre.y).toBeCloseTo(turned(angle * degree).y, 14);
  });

  it('forward is towards +x, and throwing it back turns it as the chair leans back', () => {
    expect(motion(0).centre.x).toBeGreaterThan(motion(0.4).centre.x + 0.05);
    expect(motion(0.2).turnRate).toBeGreaterThan(0);
    // 15° σ'(1/2)/0.4 s, σ' = 30/16 there.
    expect(motion(0.2).turnRate).toBeCloseTo((15 * degree * 1.875) / 0.4, 13);
  });

  // Differences of order 2 over 1e-5 s: 1e-10/6 of third derivatives of some thousands.
  it('its velocity, turn rate and accelerations are the derivatives of its place', () => {
    const h = 1e-5;
    for (const time of [0.03, 0.11, 0.2, 0.29, 0.37, 0.5]) {
      const [before, here, after] = [motion(time - h), motion(time), motion(time + h)];
      for (const axis of ['x', 'y'] as const) {
        expect((after.centre[axis] - before.centre[axis]) / (2 * h)).toBeCloseTo(here.velocity[axis], 7);
        expect((after.velocity[axis] - before.velocity[axis]) / (2 * h)).toBeCloseTo(
          here.acceleration[axis],
          6,
        );
      }
      expect((after.turnRate - before.turnRate) / (2 * h)).toBeCloseTo(here.turnAcceleration, 6);
      // A rigid turn about the hip: v = φ̇ × r.
      expect(here.velocity.x).toBeCloseTo(-here.turnRate * (here.centre.y - hip.y), 12);
      expect(here.velocity.y).toBeCloseTo(here.turnRate * (here.centre.x - hip.x), 12);
    }
  });

  it('begins and ends at a standstill, without an acceleration', () => {
    for (const time of [0, 0.4, 1]) {
      const { velocity, acceleration, turnRate, turnAcceleration } = motion(time);
      for (const each of [velocity.x, velocity.y, acceleration.x, acceleration.y, turnRate, turnAcceleration])
        expect(Math.abs(each)).toBe(0);
    }
  });

  it('breaks only where the throw ends', () => {
    expect([script.breaks, script.end]).toEqual([[0.4], 0.4]);
  });
});

describe('what rides', () => {
  it('is chair, thighs and trunk; shanks and feet are on the floor', () => {
    const { chair, loads } = checked(`${oneArc}${sitters}`);
    const seated = loads.find(({ record: { load } }) => load.id === 'seated' && load.sitter === 'tall')!
      .record.load;
    expect(lean.fixed.mass + trunk.mass).toBeCloseTo(seated.body.mass, 10);
    expect(combineMasses([lean.fixed, trunk]).centre.x).toBeCloseTo(seated.body.centre.x, 12);
    expect(lean.fixed.mass).toBeGreaterThan(chair.body.mass);
  });

  it('at the start has the trunk as the script has it at time 0', () => {
    const start = combineMasses([lean.fixed, { ...trunk, centre: motion(0).centre }]);
    const found = bodyAtStart(lean);
    expect(found.centre.x).toBeCloseTo(start.centre.x, 14);
    expect(found.inertia).toBeCloseTo(start.inertia, 11);
  });

  it('a child rides with the trunk, and is no body weight', () => {
    const held = leanOf(`${oneArc}${sitters}${child}`, 'leaning-back-hard-with-a-child');
    expect(held.trunk.mass - trunk.mass).toBeCloseTo(9, 10);
    expect(held.bodyWeight).toBe(lean.bodyWeight);
    expect(held.fixed).toEqual(lean.fixed);
  });
});

describe('the feet', () => {
  // 0.2 × 100 kg × g; thigh and shank 0.245 + 0.246, ankle 0.039 of 1.9 m.
  it('shove with a fifth of body weight for half a second, as far as the leg is long', () => {
    expect(script.foot).toMatchObject({ until: 0.5, ankle: { x: 0.4, y: 0.07 }, hip });
    expect(script.foot!.force).toBeCloseTo(20 * g, 10);
    expect(script.foot!.reach).toBeCloseTo(0.491 * 1.9, 13);
    expect(lean.ankleHeight).toBeCloseTo(0.039 * 1.9, 14);
  });

  it.each(['shove: 0', 'shoveTime: 0 s'])('do not with %s', (setting) => {
    const still = leanOf(`${oneArc}${sitters}loads: { leaning-back-hard: { ${setting} } }\n`);
    expect(leaningScript(still, { x: 0, y: 0 }).foot).toBeNull();
  });

  it('as the design says otherwise', () => {
    const changed = leanOf(
      `${oneArc}${sitters}loads: { leaning-back-hard: { trunkAhead: 20 deg, throwTime: 0.5 s, shove: 0.1, shoveTime: 0.3 s } }\n`,
    );
    const other = leaningScript(changed, { x: 0, y: 0 });
    expect([other.end, other.foot!.until]).toEqual([0.5, 0.3]);
    expect(other.foot!.force).toBeCloseTo(10 * g, 10);
    expect(other.moving[0]!.motion(0).centre.x).toBeCloseTo(turned(20 * degree).x, 13);
  });
});
