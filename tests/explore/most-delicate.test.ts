import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkDesign } from '../../src/check-design.js';
import { farthest, mostDelicate } from '../../src/explore/most-delicate.js';
import { sayDelicate } from '../../src/report/delicate-words.js';
import { read, valueOf } from '../design/read.js';

const fixture = (name: string): string => readFileSync(`fixtures/${name}/design.yaml`, 'utf8');

describe('the most delicate sizes', () => {
  it.each(['porch-rocker', 'two-radii', 'nursing'])(
    'of %s: a 1/64 in short of it the limit is met, a 1/64 in beyond it is missed',
    (name) => {
      const text = fixture(name);
      const design = read(text);
      const found = mostDelicate(design, 2);
      expect(found.length).toBeGreaterThan(0);
      for (const { name: dimension, by, limit } of found) {
        const stated = design.dimensions.find((one) => one.name === dimension)!.value;
        const verdictAt = (value: number) =>
          valueOf(checkDesign(text, 'x', new Map([[dimension, value]]))).limits.find(
            ({ id }) => id === limit.id,
          )?.verdict;
        const small = Math.sign(by) * (0.0254 / 64);
        expect(verdictAt(stated + by - small)).toBe('pass');
        expect(verdictAt(stated + by + small)).toBe('fail');
      }
      expect(Math.abs(found[0]!.by)).toBeLessThanOrEqual(Math.abs(found.at(-1)!.by));
    },
  );

  it('are none without sitters, without dimensions, or where all are far from a limit', () => {
    const text = fixture('porch-rocker');
    expect(mostDelicate(read(text.replace(/^sitters:\n( {2}- .*\n)+/m, '')), 2)).toEqual([]);
    expect(mostDelicate(read(fixture('dead-spot')), 2)).toEqual([]);
    for (const { by } of mostDelicate(read(text), 9)) expect(Math.abs(by)).toBeLessThan(farthest);
  });

  it('are told rounded down, in the units of the file', () => {
    const [first] = mostDelicate(read(fixture('porch-rocker')), 1);
    const one = { ...first!, by: -0.0254 * (9 / 16 + 0.06) };
    expect(sayDelicate(one, 'in')).toBe(
      'touch: 9/16 in less, and tallest is out of a limit: seat slope, front higher',
    );
    expect(sayDelicate({ ...one, by: 0.0121 }, 'mm')).toContain('touch: 12 mm more, and');
    expect(sayDelicate({ ...one, by: 0.0008 }, 'mm')).toContain('touch: under 1 mm more, and');
  });
});
