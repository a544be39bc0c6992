/**
 * Sobol' points made random without losing their evenness: nested uniform scrambling (Owen 1995, Randomly permuted
 * (t, m, s)-nets, in: Monte Carlo and Quasi-Monte Carlo Methods, Springer). A digit is turned, or not, by chance that hangs
 * on the digits before it. Each point is then evenly distributed, and a mean over them has no bias.
 */
import { directionsOf, mostCoordinates, sobolDigits } from './sobol.js';

/** The chance: a number mixed of whole numbers, the last step that of MurmurHash3 (Appleby, public domain). */
export function mixed(...words: readonly number[]): number {
  let h = 0x9e3779b9;
  for (const word of words) {
    h = (Math.imul(h ^ word, 0x9e3779b1) + word) | 0;
    h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
    h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
    h ^= h >>> 16;
  }
  return h >>> 0;
}

const bits = 32;

export function scrambledDigits(digits: number, key: number): number {
  let turned = 0;
  for (let k = 0; k < bits; k++) {
    const before = k === 0 ? 0 : digits >>> (bits - k);
    turned |= (mixed(key, k, before) & 1) << (bits - 1 - k);
  }
  return (digits ^ turned) >>> 0;
}

/** In the middle of its last digit: never 0 and never 1. */
const between0and1 = (digits: number): number => (digits + 0.5) / 2 ** bits;

/**
 * Points in the unit cube, the same for the same seed. Their number should be a power of 2: then every coordinate alone
 * falls once into each of as many equal parts. Coordinates that the table does not have are drawn so as well, without
 * evenness among themselves (Latin hypercube, McKay, Beckman and Conover 1979).
 */
export function evenPoints(count: number, coordinates: number, seed: number): number[][] {
  const columns = Array.from({ length: coordinates }, (_, coordinate) =>
    coordinate < mostCoordinates ? scrambled(count, coordinate, seed) : shuffled(count, coordinate, seed),
  );
  return Array.from({ length: count }, (_, point) => columns.map((column) => column[point]!));
}

function scrambled(count: number, coordinate: number, seed: number): number[] {
  const directions = directionsOf(coordinate);
  const key = mixed(seed, coordinate);
  return Array.from({ length: count }, (_, point) =>
    between0and1(scrambledDigits(sobolDigits(directions, point), key)),
  );
}

function shuffled(count: number, coordinate: number, seed: number): number[] {
  const order = Array.from({ length: count }, (_, i) => [mixed(seed, coordinate, i), i] as const);
  order.sort(([a, i], [b, j]) => a - b || i - j);
  return order.map(([, i], point) => (i + between0and1(mixed(seed, coordinate, point, i))) / count);
}
