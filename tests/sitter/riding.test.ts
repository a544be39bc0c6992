import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combineMasses } from '../../src/mass.js';
import { riding } from '../../src/sitter/riding.js';
import { chairs, people, poseIn, uprightChair } from './people-seated.js';

const massOf = (riders: readonly { readonly mass: number }[]) =>
  riders.reduce((sum, { mass }) => sum + mass, 0);

const noChild = { child: null } as const;

describe('what rides', () => {
  it('is the whole sitter with the feet up, to the last digit', () => {
    fc.assert(
      fc.property(people, chairs, (person, chair) => {
        const riders = riding(poseIn(person, chair), { feet: 'up', ...noChild });
        // Rounding of a sum of eight.
        expect(Math.abs(massOf(riders) / person.mass - 1)).toBeLessThan(1e-14);
      }),
    );
  });

  // de Leva 1996: men 2 (0.0433 + 0.0137); women 2 (0.0481 + 0.0129), of a sum of 0.9999.
  it.each([
    ['male', 0.114],
    ['female', 0.122 / 0.9999],
  ] as const)('leaves shanks and feet to the floor: %s', (body, legs) => {
    const pose = poseIn({ body, stature: 1.7, mass: 70 }, uprightChair);
    const riders = riding(pose, { feet: 'floor', ...noChild });
    expect(massOf(riders)).toBeCloseTo(70 * (1 - legs), 9);
    expect(new Set(riders.map(({ group }) => group))).toEqual(new Set(['trunk', 'thigh']));
  });

  it('is a point before the chest, of a child in arms', () => {
    const pose = poseIn({ body: 'male', stature: 1, mass: 70 }, uprightChair);
    const riders = riding(pose, { feet: 'floor', child: { mass: 9 } });
    const child = riders.find(({ name }) => name === 'child')!;
    // Upright, by hand: hip (0.072, 0.05), trunk 0.288.
    expect(child.centre.x).toBeCloseTo(0.072 + 0.15, 12);
    expect(child.centre.y).toBeCloseTo(0.05 + 0.6 * 0.288, 12);
    expect(child).toMatchObject({ mass: 9, inertia: 0, group: 'trunk' });
  });

  it('lies further ahead and higher with a child', () => {
    fc.assert(
      fc.property(people, fc.double({ min: 3, max: 15, noNaN: true }), (person, mass) => {
        const pose = poseIn(person, uprightChair);
        const alone = combineMasses(riding(pose, { feet: 'floor', ...noChild }));
        const together = combineMasses(riding(pose, { feet: 'floor', child: { mass } }));
        expect(together.mass).toBeCloseTo(alone.mass + mass, 9);
        expect(together.centre.x).toBeGreaterThan(alone.centre.x);
        expect(together.centre.y).toBeGreaterThan(alone.centre.y);
      }),
    );
  });

  it.each([0, -9, Number.NaN, Infinity])('refuses a child of %f kg', (mass) => {
    const pose = poseIn({ body: 'female', stature: 1.6, mass: 60 }, uprightChair);
    expect(() => riding(pose, { feet: 'up', child: { mass } })).toThrow(RangeError);
  });
});
