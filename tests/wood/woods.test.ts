import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { densityAtMoisture, woodNamed, woodNames, woods } from '../../src/wood/woods.js';
import { greenSpecificGravity } from './green-specific-gravity.js';

describe('density of wood', () => {
  // Wood Handbook, FPL-GTR-282 (2021), table 4-6a: printed whole.
  it.each([
    { gravity: 0.6, moisture: 12, density: 672 },
    { gravity: 0.4, moisture: 100, density: 800 },
  ])('is that of table 4-6a: $gravity at $moisture %', ({ gravity, moisture, density }) => {
    expect(densityAtMoisture(gravity, moisture)).toBeCloseTo(density, 9);
  });

  it.each([
    [Number.NaN, 12],
    [0.6, Number.NaN],
    [0, 12],
    [0.6, -1],
    [0.6, Infinity],
  ])('is refused for gravity %s at %s %%', (gravity, moisture) => {
    expect(() => densityAtMoisture(gravity, moisture)).toThrow(RangeError);
  });

  // Density column of the handbook's table 5-3a worked out by hand: 1000 × gravity × 1.12.
  it.each([
    ['white ash', 672],
    ['red oak', 705.6],
    ['white oak', 761.6],
    ['hard maple', 705.6],
    ['soft maple', 604.8],
    ['eastern white pine', 392],
    ['southern pine', 616],
  ])('%s: %f kg/m³', (name, density) => {
    expect(woodNamed(name)?.density).toBeCloseTo(density, 9);
  });
});

describe('specific gravity at 12 % of the table', () => {
  /**
   * G12 = Gb / (1 - 0.265 Gb (1 - 12/30)): Wood Handbook, FPL-GTR-282, eq. 4-13, from the gravity of green wood,
   * which the handbook measured apart from the gravity at 12 %.
   */
  const fromGreen = (green: number) => green / (1 - 0.265 * green * (1 - 12 / 30));

  // 5 %: the two columns are means of different samples; the worst row, beech, is 4.1 % off. A slipped digit
  // (0.63 for 0.68, a neighbour's row) is more than that.
  it.each(Object.entries(greenSpecificGravity))('%s follows from its green gravity', (name, green) => {
    const gravity = woodNamed(name)?.specificGravity ?? Number.NaN;
    expect(Math.abs(gravity / fromGreen(green) - 1)).toBeLessThan(0.05);
  });

  it('has a green gravity to check every wood that was read', () => {
    const read = woods.filter((wood) => wood.specificGravity !== undefined && wood.mark === 'read');
    expect(read.map((wood) => wood.name).toSorted()).toEqual(Object.keys(greenSpecificGravity).toSorted());
  });
});

describe('panels', () => {
  it('weigh what the data sheet says: 36.7 kg for 18 mm birch plywood, 1220 × 2440 mm', () => {
    const density = woodNamed('birch plywood 18 mm')?.density ?? Number.NaN;
    // The sheet prints a tenth of a kilogram.
    expect(Math.abs(density * 1.22 * 2.44 * 0.018 - 36.7)).toBeLessThan(0.05);
  });

  it('stay inside the published ranges', () => {
    const published = {
      'birch plywood': [640, 710],
      'softwood plywood': [500, 650],
      OSB: [510, 800],
      MDF: [673, 833],
    };
    for (const [name, [low, high]] of Object.entries(published) as [string, [number, number]][]) {
      const { density, spread } = woodNamed(name)!;
      expect(density).toBeGreaterThan(low);
      expect(density).toBeLessThan(high);
      expect(density * (1 - spread), name).toBeLessThanOrEqual(low);
      expect(density * (1 + spread), name).toBeGreaterThanOrEqual(high);
    }
  });
});

describe('names', () => {
  it('are each known once', () => {
    const names = woodNames().map((name) => name.toLowerCase());
    expect(new Set(names).size).toBe(names.length);
    for (const name of woodNames()) {
      const wood = woodNamed(name)!;
      expect([wood.name, ...wood.aliases]).toContain(name);
    }
  });

  it('do not hang on case, spaces or hyphens', () => {
    const anySpace = fc.constantFrom(' ', '  ', '-', '\t ');
    fc.assert(
      fc.property(fc.constantFrom(...woodNames()), anySpace, fc.boolean(), (name, space, loud) => {
        const spaced = ` ${name.replaceAll(' ', space)}\n`;
        expect(woodNamed(loud ? spaced.toUpperCase() : spaced)).toBe(woodNamed(name));
      }),
    );
    expect(woodNamed('Birch Plywood 18mm')?.name).toBe('birch plywood 18 mm');
  });

  it.each([
    ['northern red oak', 'red oak'],
    ['sugar maple', 'hard maple'],
    ['rock maple', 'hard maple'],
    ['red maple', 'soft maple'],
    ['tulip poplar', 'yellow poplar'],
    ['yellow-poplar', 'yellow poplar'],
    ['Douglas-fir', 'Douglas fir'],
  ])('%s is %s', (alias, name) => {
    expect(woodNamed(alias)?.name).toBe(name);
  });

  it.each(['oak', 'maple', 'pine', 'ash', '', 'steel', 'constructor', '__proto__'])(
    '%j is no wood',
    (name) => {
      expect(woodNamed(name)).toBeUndefined();
    },
  );
});

it('every wood says where its numbers come from', () => {
  for (const wood of woods) {
    expect(wood.density).toBeGreaterThan(0);
    expect(wood.spread).toBeGreaterThan(0);
    expect(wood.spread).toBeLessThan(0.25);
    expect(wood.source).toMatch(/table|sheet|page|study/);
  }
});
