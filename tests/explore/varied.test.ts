import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDesign, type Design } from '../../src/design/read-design.js';
import { chunkOf, chunksIn, gridOf, stretchOfShare } from '../../src/explore/grid.js';
import { readVaried, type Varied } from '../../src/explore/varied.js';
import { designText } from '../report/made-up.js';

const design = ((): Design => {
  const text = designText(['Ada', 'Ben']).replace('tail: radius / 2', 'tail: radius / 2, pieces: 3');
  const read = readDesign(text, 'design.yaml');
  if (!read.ok) throw new Error('a made-up design that cannot be read');
  return read.value;
})();

const inch = 0.0254;
function valuesOf(text: string): number[] {
  const read = readVaried(text, design);
  if (!read.ok) throw new Error(JSON.stringify(read.words));
  return Array.from({ length: read.value.count }, (_, i) => read.value.valueAt(i));
}
const wordsOf = (text: string) => {
  const read = readVaried(text, design);
  return read.ok ? null : read.words;
};

describe('what is varied', () => {
  it.each<[string, number[]]>([
    ['radius=36 in..38 in:1/2 in', [36, 36.5, 37, 37.5, 38].map((value) => value * inch)],
    ['radius=36..37.9:1/2', [36, 36.5, 37, 37.5].map((value) => value * inch)],
    ['radius = 1 m .. 1.1 m : 3 values', [1, 1.05, 1.1]],
    ['radius=40 in, 39 in,radius + 2 in', [40 * inch, 39 * inch, 44 * inch]],
    ['radius=max(1 m, 0.5 m), 2 m', [1, 2]],
    ['radius=40 in..40 in', [40 * inch]],
    ['pieces=2..4:1', [2, 3, 4]],
    ['Ben mass=60 kg..80 kg:10 kg', [60, 70, 80]],
    ['Ada stature=5\' 0", 5\' 2"', [60 * inch, 62 * inch]],
  ])('%s', (text, values) => {
    const found = valuesOf(text);
    expect(found).toHaveLength(values.length);
    // Sums and products of a few numbers of order 1.
    found.forEach((value, i) => {
      expect(Math.abs(value - values[i]!)).toBeLessThan(1e-12 * Math.max(1, values[i]!));
    });
  });

  it('takes eleven values where no step is said', () => {
    expect(valuesOf('radius=1 m..2 m')).toHaveLength(11);
    expect(valuesOf('radius=1 m..2 m').at(-1)).toBe(2);
  });

  it('keeps the end of a range in sixteenths, however many there are', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 1, max: 640 }), (steps, from) => {
        const to = from + steps;
        expect(valuesOf(`radius=${from}/16 in..${to}/16 in:1/16 in`)).toHaveLength(steps + 1);
      }),
    );
  });

  it.each<[string, RegExp, RegExp, RegExp]>([
    [
      'radios=1 m..2 m',
      /a dimension, a size of a sitter or an alteration/,
      /radios/,
      /did you mean `radius`/,
    ],
    [
      'heigth=1 m',
      /a dimension, .* or an alteration/,
      /heigth/,
      /there are radius, .*Ada stature.*; .*front-legs/,
    ],
    ['front-leg=0 in..1 in', /a dimension/, /front-leg/, /did you mean `front-legs`/],
    ['Ben mas=1 kg', /a dimension, a size of a sitter/, /Ben mas/, /Ben mass/],
    ['radius', /name=from\.\.to:step/, /radius/, /^$/],
    ['radius=', /name=from\.\.to:step/, /``|nothing/, /^$/],
    ['radius=1 m..', /both ends/, /1 m\.\./, /^$/],
    ['radius=2 m..1 m', /the lower end first/, /2 m\.\.1 m/, /swap the ends/],
    ['radius=1 m..2 m:0 in', /a step of more than 0/, /0 in/, /^$/],
    ['radius=1 m..2 m:-1 in', /a step of more than 0/, /-1 in/, /^$/],
    ['radius=1 m..2 m:0 values', /one value or more/, /0 values/, /^$/],
    ['radius=1 m..2 m:lots', /a name of this design/, /lots/, /^.+$/],
    ['radius=4 kg..5 kg', /a length for radius/, /a mass/, /^$/],
    ['Ben mass=60..80:1', /a mass for Ben mass/, /a pure number/, /^$/],
    ['pieces=2 in..4 in', /a pure number for pieces/, /a length/, /without a unit/],
    ['radius=1/0 m, 2 m', /a fraction/, /.+/, /^.*$/],
    ['radius=1 m / 0, 2 m', /a finite number/, /1 m \/ 0/, /division by 0/],
    ['radius=0 in..1e300 in', /no more than 1000000 m for radius/, /1e300 in/, /^$/],
    ['Ben mass=1e308 kg', /no more than 1000000 kg for Ben mass/, /1e308 kg/, /^$/],
    ['back-legs=-1e300 in', /no less than -1000000 m for back-legs/, /1e300 in/, /^$/],
    ['tail-weight=1 kg..1e308 kg', /no more than 1000000 kg for tail-weight/, /1e308 kg/, /^$/],
    ['pieces=1e12', /no more than 1000000000 for pieces/, /1e12/, /^$/],
  ])('refuses %s', (text, expected, found, hint) => {
    const words = wordsOf(text);
    expect(words?.expected).toMatch(expected);
    expect(words?.found).toMatch(found);
    expect(words?.hint ?? '').toMatch(hint);
  });
});

const steps = (count: number): Varied => ({
  variable: { name: 'n', dimension: [0, 0, 0, 0], stated: 0, of: null },
  count,
  valueAt: (index) => index,
});

describe('a grid', () => {
  const counts = fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 4 });

  it('holds every combination once, the last changing fastest', () => {
    fc.assert(
      fc.property(counts, (each) => {
        const { count, valuesAt } = gridOf(each.map(steps));
        expect(count).toBe(each.reduce((product, one) => product * one, 1));
        const all = Array.from({ length: count }, (_, i) => valuesAt(i));
        expect(new Set(all.map(String)).size).toBe(count);
        const number = (values: readonly number[]): number =>
          values.reduce((sum, value, i) => sum * each[i]! + value, 0);
        expect(all.map(number)).toEqual(all.map((_, i) => i));
      }),
    );
  });

  it('is shared and cut into chunks without a gap or an overlap', () => {
    fc.assert(
      fc.property(
        fc.nat(5000),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 300 }),
        (count, of, size) => {
          let next = 0;
          for (let share = 1; share <= of; share++) {
            const stretch = stretchOfShare(count, share, of);
            for (let chunk = 0; chunk < chunksIn(stretch, size); chunk++) {
              const { from, to } = chunkOf(stretch, size, chunk);
              expect(from).toBe(next);
              expect(to).toBeGreaterThan(from);
              next = to;
            }
            expect(stretch.to - stretch.from).toBeLessThanOrEqual(Math.ceil(count / of));
          }
          expect(next).toBe(count);
        },
      ),
    );
  });
});
