import { describe, expect, it } from 'vitest';
import {
  describeDimension,
  dimensionOf,
  sameDimension,
  type Dimension,
} from '../../src/quantity/dimension.js';

describe('dimensions', () => {
  it.each([
    ['number', 'a pure number'],
    ['length', 'a length'],
    ['mass', 'a mass'],
    ['time', 'a time'],
    ['angle', 'an angle'],
    ['force', 'a force'],
    ['energy', 'an energy'],
    ['density', 'a density'],
    ['inertia', 'a moment of inertia'],
  ] as const)('%s is %s', (kind, words) => {
    expect(describeDimension(dimensionOf[kind])).toBe(words);
  });

  it.each([
    [[2, 0, 0, 0], 'an area'],
    [[3, 0, 0, 0], 'a volume'],
    [[2, -1, 0, 0], 'a quantity in m²/kg'],
    [[-1, 1, -2, 0], 'a quantity in kg/(m s²)'],
    [[-1, 0, 0, 0], 'a quantity in 1/m'],
    [[0.5, 0, 0, 1], 'a quantity in m^0.5 rad'],
  ] as const satisfies readonly (readonly [Dimension, string])[])('%j is %s', (dimension, words) => {
    expect(describeDimension(dimension)).toBe(words);
  });

  it('agree with mechanics: energy is force × length, inertia mass × area', () => {
    const { force, energy, length, inertia, mass, density } = dimensionOf;
    const times = (a: Dimension, b: Dimension, power = 1) =>
      a.map((x, i) => x + power * b[i]!) as unknown as Dimension;
    expect(sameDimension(times(force, length), energy)).toBe(true);
    expect(sameDimension(times(mass, length, 2), inertia)).toBe(true);
    expect(sameDimension(times(mass, length, -3), density)).toBe(true);
    expect(sameDimension(force, energy)).toBe(false);
  });
});
