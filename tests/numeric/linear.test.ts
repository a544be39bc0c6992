import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shortestSolution, solveLinear } from '../../src/numeric/linear.js';

const number = fc.double({ min: -5, max: 5, noNaN: true });

test('what is put together from a solution gives it back', () => {
  const systems = fc.integer({ min: 1, max: 5 }).chain((size) =>
    fc.tuple(
      fc.array(fc.array(number, { minLength: size, maxLength: size }), {
        minLength: size,
        maxLength: size,
      }),
      fc.array(number, { minLength: size, maxLength: size }),
    ),
  );
  fc.assert(
    fc.property(systems, ([rows, x]) => {
      // Made regular by a heavy diagonal, whose inverse is at most 1/10: errors stay roundings.
      const regular = rows.map((row, i) => row.map((value, k) => (i === k ? value + 40 : value)));
      const found = solveLinear(
        regular,
        regular.map((row) => row.reduce((sum, value, k) => sum + value * x[k]!, 0)),
      );
      found!.forEach((value, i) => {
        expect(value).toBeCloseTo(x[i]!, 11);
      });
    }),
  );
});

test('needs the largest pivot, and refuses equations that do not decide', () => {
  expect(
    solveLinear(
      [
        [0, 1],
        [1, 0],
      ],
      [2, 3],
    ),
  ).toEqual([3, 2]);
  // From 1e-20 as a pivot elimination would lose x entirely (the textbook case).
  expect(
    solveLinear(
      [
        [1e-20, 1],
        [1, 1],
      ],
      [1, 2],
    ),
  ).toEqual([1, 1]);
  expect(
    solveLinear(
      [
        [1, 2],
        [2, 4],
      ],
      [1, 2],
    ),
  ).toBeNull();
});

test('the shortest solution lies square to what changes nothing', () => {
  // x + y = 2: (1, 1). On a plane through the origin the foot of the origin: b a/|a|².
  expect(shortestSolution([[1, 1]], [2])).toEqual([1, 1]);
  fc.assert(
    fc.property(fc.tuple(number, number, number), number, (a, b) => {
      const size = a.reduce((sum, value) => sum + value * value, 0);
      fc.pre(size > 0.1);
      shortestSolution([a], [b])!.forEach((value, i) => {
        expect(value).toBeCloseTo((b * a[i]!) / size, 11);
      });
    }),
  );
  expect(
    shortestSolution(
      [
        [1, 1],
        [2, 2],
      ],
      [1, 2],
    ),
  ).toBeNull();
});
