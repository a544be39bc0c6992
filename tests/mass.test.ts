import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combineMasses, type MassProperties } from '../src/mass.js';
import { between } from './arbitraries/rolling.js';

const masses: fc.Arbitrary<MassProperties> = fc.record({
  mass: between(0.01, 100),
  centre: fc.record({ x: between(-2, 2), y: between(-2, 2) }),
  inertia: between(0, 10),
});

describe('combining masses', () => {
  // Textbook: a dumbbell of two points, m/2 each at ±a: m a².
  it('of a dumbbell is m a² about its middle', () => {
    const end = (x: number): MassProperties => ({ mass: 3, centre: { x, y: 1 }, inertia: 0 });
    expect(combineMasses([end(-0.5), end(0.5)])).toEqual({ mass: 6, centre: { x: 0, y: 1 }, inertia: 1.5 });
  });

  // About the origin Σ (I + m r²) is the same for the parts and for the whole (Huygens and Steiner).
  it('keeps mass, first moment and moment of inertia about the origin, in any grouping', () => {
    const aboutOrigin = ({ mass, centre, inertia }: MassProperties): number =>
      inertia + mass * (centre.x ** 2 + centre.y ** 2);
    fc.assert(
      fc.property(fc.array(masses, { minLength: 2, maxLength: 6 }), fc.nat(), (parts, pick) => {
        const cut = 1 + (pick % (parts.length - 1));
        const whole = combineMasses(parts);
        const grouped = combineMasses([combineMasses(parts.slice(0, cut)), combineMasses(parts.slice(cut))]);
        const sum = (read: (part: MassProperties) => number): number =>
          parts.reduce((total, part) => total + read(part), 0);
        for (const all of [whole, grouped]) {
          expect(all.mass).toBeCloseTo(
            sum(({ mass }) => mass),
            10,
          );
          expect(all.mass * all.centre.x).toBeCloseTo(
            sum(({ mass, centre }) => mass * centre.x),
            10,
          );
          expect(all.mass * all.centre.y).toBeCloseTo(
            sum(({ mass, centre }) => mass * centre.y),
            10,
          );
          expect(aboutOrigin(all)).toBeCloseTo(sum(aboutOrigin), 9);
        }
      }),
    );
  });

  it('refuses nothing at all, and a mass that is none', () => {
    const none = { centre: { x: 0, y: 0 }, inertia: 0 };
    expect(() => combineMasses([])).toThrow(RangeError);
    expect(() => combineMasses([{ ...none, mass: 0 }])).toThrow(RangeError);
    expect(() => combineMasses([{ ...none, mass: Number.NaN }])).toThrow(RangeError);
  });
});
