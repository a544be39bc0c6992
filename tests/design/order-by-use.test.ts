/** Names in the order of their use. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { orderByUse } from '../../src/design/order-by-use.js';

const ordered = (uses: Record<string, readonly string[]>) =>
  orderByUse(Object.keys(uses), (name) => uses[name] ?? []);

it('puts each after those it uses', () => {
  expect(ordered({ a: ['b', 'c'], b: ['c'], c: [], d: ['unknown'] })).toEqual({
    order: ['c', 'b', 'a', 'd'],
    circles: [],
  });
});

it('tells circles apart and orders what only uses them', () => {
  expect(ordered({ a: ['b'], b: ['c', 'a'], c: ['c'], d: ['a'], e: [] })).toEqual({
    order: ['d', 'e'],
    circles: [['c'], ['a', 'b']],
  });
});

it('orders any names without circles', () => {
  // Each uses some of those with a higher number, so there is no circle; they are given in any order.
  const count = 12;
  const graph = fc.array(fc.array(fc.nat(count), { maxLength: 4 }), { minLength: count, maxLength: count });
  fc.assert(
    fc.property(graph, fc.infiniteStream(fc.nat()), (edges, keys) => {
      const uses = new Map(
        edges.map((to, i) => [`n${i}`, to.filter((j) => j > i && j < count).map((j) => `n${j}`)]),
      );
      const ranks = new Map([...uses.keys()].map((name) => [name, keys.next().value as number]));
      const names = [...uses.keys()].sort((a, b) => ranks.get(a)! - ranks.get(b)!);
      const { order, circles } = orderByUse(names, (name) => uses.get(name)!);
      expect(circles).toEqual([]);
      expect([...order].sort()).toEqual([...uses.keys()].sort());
      for (const [name, used] of uses) {
        for (const other of used) expect(order.indexOf(other)).toBeLessThan(order.indexOf(name));
      }
    }),
  );
});

it('walks a chain of a hundred thousand', () => {
  const names = Array.from({ length: 100_000 }, (_, i) => String(i));
  const { order } = orderByUse(names, (name) => [String(Number(name) + 1)]);
  expect(order[0]).toBe('99999');
  expect(order).toHaveLength(100_000);
});
