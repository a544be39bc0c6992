import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sitterSize, type BodyMeasure } from '../../src/sitter/sitter-size.js';
import { people, present, sitterOf } from './people-seated.js';
import { ansur2012 } from './published/ansur2012.js';

const measures: readonly BodyMeasure[] = ['kneeHollow', 'buttockToKneeHollow', 'elbowAboveSeat'];

describe('size of a sitter', () => {
  it('is what is stated', () => {
    const size = present(sitterSize(sitterOf({ body: 'female', stature: 1.6, mass: 70, percentile: 5 })));
    expect(size).toMatchObject({ body: 'female', stature: 1.6, mass: 70 });
    expect(size.basis.stature.from).toBe('stated');
    expect(size.basis.mass.from).toBe('stated');
  });

  // ANSUR II 2012, the 95th percentile of each by itself.
  it('takes stature and mass each from its own percentile', () => {
    const { stature, mass, basis } = present(sitterSize(sitterOf({ body: 'male', percentile: 95 })));
    expect([stature, mass]).toEqual([1.87, 110.7]);
    expect(basis.mass).toEqual({
      from: 'percentile',
      says: expect.stringMatching(/^percentile 95 of male mass: ANSUR II 2012/) as string,
    });
  });

  it('takes from the percentile only what is not stated', () => {
    const size = present(sitterSize(sitterOf({ body: 'female', stature: 1.8, percentile: 5 })));
    expect([size.stature, size.mass]).toEqual([1.8, 51.3]);
    const other = present(sitterSize(sitterOf({ body: 'female', mass: 90, percentile: 5 })));
    expect([other.stature, other.mass]).toEqual([1.525, 90]);
  });

  it('is missing with its reason when there is nothing to go by', () => {
    expect(sitterSize(sitterOf({ mass: 70 }))).toEqual({
      missing: 'the sitter’s stature is not stated, nor a percentile',
    });
    expect(sitterSize(sitterOf({ stature: 1.7 }))).toEqual({
      missing: 'the sitter’s mass is not stated, nor a percentile',
    });
    expect(sitterSize(sitterOf({ percentile: 99.5 }))).toEqual({
      missing: expect.stringContaining('99.5') as string,
    });
  });

  // ANSUR II 2012: mean of the length over mean of stature. Half a unit of the last of four digits.
  it.each(['female', 'male'] as const)('has body lengths in the ratio of the means: %s', (body) => {
    const size = present(sitterSize(sitterOf({ body, stature: 1.7, mass: 70 })));
    for (const name of measures) {
      const ratio = ansur2012[body][name].mean / ansur2012[body].stature.mean;
      expect(Math.abs(size[name] / 1.7 - ratio), name).toBeLessThan(5e-5);
      expect(size.basis[name].from).toBe('ratio');
    }
  });

  it('takes measured lengths as they are, each by itself', () => {
    const tape = { kneeHollow: 0.4, buttockToKneeHollow: null, elbowAboveSeat: 0.21 };
    const size = present(sitterSize(sitterOf({ stature: 1.7, mass: 70, measured: tape })));
    expect(size).toMatchObject({ kneeHollow: 0.4, elbowAboveSeat: 0.21 });
    expect(measures.map((name) => size.basis[name].from)).toEqual(['measured', 'ratio', 'measured']);
  });

  it('calls the proportions of children, and of very tall people, a stretch', () => {
    const says = (stature: number) =>
      present(sitterSize(sitterOf({ stature, mass: 30 }))).basis.kneeHollow.says;
    expect(says(1.1)).toMatch(/a stretch/);
    expect(says(2.05)).toMatch(/a stretch/);
    expect(says(1.75)).not.toMatch(/a stretch/);
  });

  it('scales with stature', () => {
    fc.assert(
      fc.property(people, fc.double({ min: 0.5, max: 2, noNaN: true }), (person, k) => {
        const size = present(sitterSize(sitterOf(person)));
        const scaled = present(sitterSize(sitterOf({ ...person, stature: k * person.stature })));
        for (const name of measures) expect(scaled[name]).toBeCloseTo(k * size[name], 12);
        expect(scaled.mass).toBe(size.mass);
      }),
    );
  });

  it.each([0, -1.7, Number.NaN, Infinity])('refuses a stature, mass or length of %f', (wrong) => {
    expect(() => sitterSize(sitterOf({ stature: wrong, mass: 70 }))).toThrow(RangeError);
    expect(() => sitterSize(sitterOf({ stature: 1.7, mass: wrong }))).toThrow(RangeError);
    const tape = { kneeHollow: wrong, buttockToKneeHollow: null, elbowAboveSeat: null };
    expect(() => sitterSize(sitterOf({ stature: 1.7, mass: 70, measured: tape }))).toThrow(/kneeHollow/);
  });
});
