/** A swing that is none: missing, with its reason. */
import { describe, expect, it } from 'vitest';
import type { MassProperties } from '../../src/mass.js';
import { degree, roll, settled, swingFreely, swingFrom, there, why } from './roll.js';
import { plumbAbove, roundRunner, runner } from './runners.js';
import { isMissing } from '../../src/numeric/missing.js';

const [nose, tail] = [-15 * degree, 20 * degree];
const made = roundRunner({ x: 0, y: 1 }, 1, nose, tail);
const body: MassProperties = { mass: 70, centre: { x: 0, y: 0.55 }, inertia: 8 };

describe('a swing past an end of the rockers', () => {
  it.each([
    [14.9, null],
    [15.1, 'the swing passes the nose end of the rockers'],
    [19.9, 'the swing passes the nose end of the rockers'],
    [20.1, 'the swing passes the tail end of the rockers'],
  ])('let go %f° back of rest', (amplitude, reason) => {
    const swing = swingFrom(made.outline, body, 0, amplitude * degree);
    if (reason === null) expect(swing).toHaveProperty('period');
    else expect(why(swing)).toBe(reason);
    // The record says the same of swing and forces.
    const { swing: recorded, forces } = settled(made.outline, body, { swing: amplitude * degree });
    if (reason !== null) expect([why(recorded), why(forces)]).toEqual([reason, reason]);
  });

  it('with nothing in the way turns on the corner', () => {
    const { turns } = there(swingFreely(made.outline, body, 0, 17 * degree));
    expect(turns[0]).toBeLessThan(nose);
  });
});

describe('a swing past a crest', () => {
  it('let go beyond it', () => {
    const crest = there(settled(made.outline, body).back.tip).crest;
    expect(swingFreely(made.outline, body, 0, crest - 0.01)).toHaveProperty('period');
    expect(why(swingFreely(made.outline, body, 0, crest + 0.01))).toBe('let go past the point of no return');
    expect(why(swingFreely(made.outline, body, 0, crest))).toBe('let go past the point of no return');
  });

  it('thrown over the other one passes the end on the way', () => {
    // Its nose is nearer: let go high over the tail it goes over the nose.
    expect(why(swingFrom(made.outline, body, 0, 19.99 * degree))).toBe(
      'the swing passes the nose end of the rockers',
    );
    const far = there(settled(made.outline, body).back.tip).crest - 0.001;
    const swing = swingFreely(made.outline, body, 0, far);
    // On its back or its front it comes to a standstill somewhere, or breaks on a flat: never an endless loop.
    expect(isMissing(swing) || swing.period > 0).toBe(true);
  });

  it('let go in the hollow of another rest', () => {
    const humped = runner([{ radius: 1, turn: 0.3 }, { corner: 0.1 }, { radius: 1, turn: 0.3 }], -0.35);
    const centre = plumbAbove(humped.tracks, 0, 0.5);
    const stone = { mass: 50, centre, inertia: 4 };
    const [rest, other] = roll(humped.outline, stone).restsOnSurface;
    expect(why(swingFrom(humped.outline, stone, rest!.lean, other!.lean + 0.02))).toBe(
      'turns back before it reaches its rest',
    );
    // From higher up it passes the hump and both hollows.
    const over = there(swingFrom(humped.outline, stone, rest!.lean, other!.lean + 0.15));
    expect(over.turns[0]).toBeLessThan(rest!.lean);
  });
});

describe('a swing that leaves the floor', () => {
  it('is missing with its forces, while its rest and small period stand', () => {
    // Half a ring let go high: G whips past under the centre, and on the way the floor has to pull.
    const ring = roundRunner({ x: 0, y: 1 }, 1, -3, 3);
    const light: MassProperties = { mass: 1, centre: { x: 0, y: 0.05 }, inertia: 0.001 };
    const record = settled(ring.outline, light, { swing: 2.9 });
    expect(why(record.swing)).toBe('leaves the floor');
    expect(why(record.forces)).toBe('leaves the floor');
    expect(there(record.smallPeriod)).toBeGreaterThan(0);
  });
});
