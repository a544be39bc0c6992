import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inOrder, type Hand } from '../../src/explore/in-order.js';

const later = (turns: number): Promise<void> =>
  turns <= 0 ? Promise.resolve() : Promise.resolve().then(() => later(turns - 1));

async function all<T>(answers: AsyncGenerator<T>): Promise<T[]> {
  const found: T[] = [];
  for await (const answer of answers) found.push(answer);
  return found;
}

test('answers come in the order of the chunks, each hand at one chunk at a time, few ahead', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 1, max: 5 }),
      fc.array(fc.nat(9), { maxLength: 40 }),
      async (count, slowness) => {
        let [given, taken, atWork] = [0, 0, 0];
        const hand = (): Hand<number> => {
          let busy = false;
          return {
            work: async (chunk) => {
              expect(busy).toBe(false);
              busy = true;
              atWork = Math.max(atWork, ++given - taken);
              await later(slowness[chunk]!);
              busy = false;
              return chunk;
            },
          };
        };
        const found: number[] = [];
        for await (const answer of inOrder(slowness.length, Array.from({ length: count }, hand))) {
          taken++;
          found.push(answer);
        }
        expect(found).toEqual(slowness.map((_, i) => i));
        expect(atWork).toBeLessThanOrEqual(4 * count + 1);
      },
    ),
  );
});

test('a failing chunk is told after those before it, and nothing after it', async () => {
  const hand: Hand<number> = {
    work: (chunk) => (chunk === 3 ? Promise.reject(new Error('chunk 3')) : later(1).then(() => chunk)),
  };
  const found: number[] = [];
  const read = async (): Promise<void> => {
    for await (const answer of inOrder(9, [hand])) found.push(answer);
  };
  await expect(read()).rejects.toThrow('chunk 3');
  expect(found).toEqual([0, 1, 2]);
});

test('stopped, it gives out no more and yields what was begun', async () => {
  let begun = 0;
  const hand: Hand<number> = { work: (chunk) => later(1).then(() => (begun++, chunk)) };
  const found = await all(inOrder(1000, [hand], () => begun >= 2));
  expect(found.length).toBe(begun);
  expect(begun).toBeLessThan(10);
});
