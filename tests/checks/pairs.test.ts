import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pairsOf } from '../../src/checks/pairs.js';

interface Named {
  readonly name: string;
}
const list = fc.array(fc.record({ name: fc.constantFrom('leg', 'arm', 'rail', 'slat') }), { maxLength: 8 });
const pairs = (old: readonly Named[], now: readonly Named[]) => pairsOf(old, now, ({ name }) => name);

it('uses everything once, each with its own name', () => {
  fc.assert(
    fc.property(list, list, (old, now) => {
      const found = pairs(old, now);
      const olds = found.flatMap((pair) => (pair.old === null ? [] : [pair.old]));
      expect(new Set(olds)).toEqual(new Set(old));
      expect(olds).toHaveLength(old.length);
      // The new ones in their order, then what is gone.
      expect(found.slice(0, now.length).map((pair) => pair.new)).toEqual(now);
      expect(found.slice(now.length).every((pair) => pair.new === null)).toBe(true);
      for (const pair of found) if (pair.old && pair.new) expect(pair.old.name).toBe(pair.new.name);
    }),
  );
});

it('leaves none alone that has a partner', () => {
  fc.assert(
    fc.property(list, list, (old, now) => {
      const count = (of: readonly Named[], wanted: string) => of.filter(({ name }) => name === wanted).length;
      for (const name of ['leg', 'arm', 'rail', 'slat']) {
        const both = pairs(old, now).filter((pair) => pair.old && pair.new && pair.new.name === name);
        expect(both).toHaveLength(Math.min(count(old, name), count(now, name)));
      }
    }),
  );
});

it('sets the first of a name beside the first', () => {
  const [a, b, c] = [{ name: 'leg' }, { name: 'leg' }, { name: 'leg' }];
  expect(pairs([a, b], [c])).toEqual([
    { old: a, new: c },
    { old: b, new: null },
  ]);
  expect(pairs([a, b], [c])[0]!.old).toBe(a);
});
