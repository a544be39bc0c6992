import { describe, expect, it } from 'vitest';
import { chairKinds } from '../../src/names.js';
import { childMass } from '../../src/sitter/child-mass.js';
import { sitterSize } from '../../src/sitter/sitter-size.js';
import { standardSitters } from '../../src/sitter/standard-sitters.js';
import { present } from './people-seated.js';

/** Metres and kilograms of the feet, inches and pounds written beside, worked out by hand. */
const grown = [
  ['shortest', 'female', 1.524, 47.6272], // 5' 0", 105 lb
  ['middle', 'female', 1.7018, 72.57478], // 5' 7", 160 lb
  ['tallest', 'male', 1.905, 113.39809], // 6' 3", 250 lb
] as const;

const expected = {
  adult: grown,
  porch: grown,
  nursing: [
    ['shortest', 'female', 1.5748, 54.43108], // 5' 2", 120 lb
    ['tallest', 'female', 1.7526, 86.18255], // 5' 9", 190 lb
  ],
  child: [
    ['shortest', 'female', 1.016, 15.87573], // 3' 4", 35 lb
    ['tallest', 'male', 1.27, 27.21554], // 4' 2", 60 lb
  ],
} as const;

describe.each(chairKinds)('standard sitters of the kind %s', (kind) => {
  const { sitters, child } = standardSitters(kind);

  it('are those of the list, in its order', () => {
    expect(sitters.map(({ name, body }) => [name, body])).toEqual(
      expected[kind].map(([name, body]) => [name, body]),
    );
    sitters.forEach((sitter, i) => {
      const { stature, mass } = present(sitterSize(sitter));
      expect(stature).toBeCloseTo(expected[kind][i]![2], 9);
      // Written above to 0.01 g.
      expect(Math.abs(mass - expected[kind][i]![3])).toBeLessThan(1e-5);
    });
  });

  it('come with a child in a nursing chair only', () => {
    expect(child === null).toBe(kind !== 'nursing');
  });
});

describe('the standard child', () => {
  // WHO median of a boy of 18 months: 10.94 kg; the list rounds it to 10.9.
  it('weighs what boys of its age weigh', () => {
    const child = standardSitters('nursing').child!;
    expect(present(childMass(child)).mass).toBe(10.9);
    expect(Math.abs(present(childMass({ ...child, mass: null })).mass - 10.9)).toBeLessThan(0.05);
  });
});
