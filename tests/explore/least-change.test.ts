import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leastChange } from '../../src/explore/least-change.js';

/** Everything looked at one by one. */
function looked(shortfall: (steps: number) => number, least: number, greatest: number): number | null {
  for (let steps = 1; steps <= Math.max(greatest, -least); steps++)
    for (const either of [-steps, steps])
      if (either >= least && either <= greatest && shortfall(either) === 0) return either;
  return null;
}

/** A quantity wanted between two ends. */
const within =
  (low: number, high: number, f: (steps: number) => number) =>
  (steps: number): number => {
    const value = f(steps);
    return value < low ? value - low : value > high ? value - high : 0;
  };

test('of what grows or falls all the way it finds the least whole step, or none', () => {
  const slope = fc.oneof(
    fc.double({ min: 0.01, max: 3, noNaN: true }),
    fc.double({ min: -3, max: -0.01, noNaN: true }),
  );
  const place = fc.double({ min: -200, max: 200, noNaN: true });
  fc.assert(
    fc.property(
      slope,
      place,
      fc.double({ min: 0.01, max: 50, noNaN: true }),
      fc.nat(150),
      fc.nat(150),
      (by, low, wide, down, up) => {
        const shortfall = within(
          low,
          low + wide,
          (steps) => by * steps + 0.01 * by * Math.sign(steps) * steps * steps,
        );
        fc.pre(shortfall(0) !== 0);
        expect(leastChange(shortfall, -down, up)).toBe(looked(shortfall, -down, up));
      },
    ),
    { numRuns: 2000 },
  );
});

test('met on both sides, the nearer; on neither, none; met already, none', () => {
  const bowl = within(9, Infinity, (steps) => (steps > 0 ? steps : -2 * steps));
  expect(leastChange(bowl, -40, 40)).toBe(-5);
  expect(leastChange(bowl, 0, 40)).toBe(9);
  expect(leastChange(bowl, -4, 8)).toBeNull();
  expect(leastChange(() => 0, -9, 9)).toBeNull();
});

test('goes on where there is no number for a while', () => {
  const shortfall = (steps: number): number => (steps < 11 ? Infinity : 0);
  expect(leastChange(shortfall, -100, 100)).toBe(11);
  expect(leastChange(() => Infinity, -100, 100)).toBeNull();
});

test('where a number begins on the wrong side it goes on to where it is met', () => {
  // None up to 9, too small up to 12, met from there on: the change of sides from none to too small is no place where it is met.
  const begins = (steps: number): number => (steps < 10 ? Infinity : steps < 13 ? steps - 13 : 0);
  expect(leastChange(begins, 0, 100)).toBe(13);
  expect(leastChange(begins, 0, 14)).toBe(13);
  const ends = (steps: number): number =>
    steps < 10 ? Infinity : steps < 13 ? steps - 13 : steps < 40 ? 0 : 1;
  expect(leastChange(ends, 0, 100)).toBe(13);
});

test('looks at few places', () => {
  let looks = 0;
  const shortfall = within(100, 120, (steps) => (looks++, steps / 8));
  expect(leastChange(shortfall, -1000, 1000)).toBe(800);
  expect(looks).toBeLessThan(30);
});
