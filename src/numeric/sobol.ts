/**
 * Points that fill a cube more evenly than chance does: Sobol' 1967, USSR Comput. Math. Math. Phys. 7(4), 86-112; direction
 * numbers of Joe and Kuo 2008, SIAM J. Sci. Comput. 30, 2635-2654 (their table new-joe-kuo-6, its first rows).
 */

/** Degree s of a primitive polynomial over the field of two, its inner coefficients a, and m_1 … m_s; the first coordinate has none. */
const rows: readonly (readonly [degree: number, inner: number, ...first: number[]])[] = [
  [1, 0, 1],
  [2, 1, 1, 3],
  [3, 1, 1, 3, 1],
  [3, 2, 1, 1, 1],
  [4, 1, 1, 1, 3, 3],
  [4, 4, 1, 3, 5, 13],
  [5, 2, 1, 1, 5, 5, 17],
  [5, 4, 1, 1, 5, 5, 5],
  [5, 7, 1, 1, 7, 11, 19],
  [5, 11, 1, 1, 5, 1, 1],
  [5, 13, 1, 1, 1, 3, 11],
  [5, 14, 1, 3, 5, 5, 31],
  [6, 1, 1, 3, 3, 9, 7, 49],
  [6, 13, 1, 1, 1, 15, 21, 21],
  [6, 16, 1, 3, 1, 13, 27, 49],
  [6, 19, 1, 1, 1, 15, 7, 5],
  [6, 22, 1, 3, 1, 15, 13, 25],
  [6, 25, 1, 1, 5, 5, 19, 61],
  [7, 1, 1, 3, 7, 11, 23, 15, 103],
  [7, 4, 1, 3, 7, 13, 13, 15, 69],
  [7, 7, 1, 1, 3, 13, 7, 35, 63],
  [7, 8, 1, 3, 5, 9, 1, 25, 53],
  [7, 14, 1, 3, 1, 13, 9, 35, 107],
  [7, 19, 1, 3, 1, 5, 27, 61, 31],
  [7, 21, 1, 1, 5, 11, 19, 41, 61],
  [7, 28, 1, 3, 5, 3, 3, 13, 69],
  [7, 31, 1, 1, 7, 13, 1, 19, 1],
  [7, 32, 1, 3, 7, 5, 13, 19, 59],
  [7, 37, 1, 1, 3, 9, 25, 29, 41],
  [7, 41, 1, 3, 5, 13, 23, 1, 55],
  [7, 42, 1, 3, 7, 3, 13, 59, 17],
  [7, 50, 1, 3, 1, 3, 5, 53, 69],
  [7, 55, 1, 1, 5, 5, 23, 33, 13],
  [7, 56, 1, 1, 7, 7, 1, 61, 123],
  [7, 59, 1, 1, 7, 9, 13, 61, 49],
  [7, 62, 1, 3, 3, 5, 3, 55, 33],
  [8, 14, 1, 3, 1, 15, 31, 13, 49, 245],
  [8, 21, 1, 3, 5, 15, 31, 59, 63, 97],
  [8, 22, 1, 3, 1, 11, 11, 11, 77, 249],
];

/** As many coordinates as the table has. */
export const mostCoordinates = rows.length + 1;

const bits = 32;

/** A coordinate's binary digits: v_k = m_k / 2^k, as whole numbers of 32 digits. */
export type Directions = readonly number[];

/** m_k = 2 a_1 m_{k-1} ⊕ 4 a_2 m_{k-2} ⊕ … ⊕ 2^s m_{k-s} ⊕ m_{k-s}, k > s; the first coordinate has m_k = 1. */
export function directionsOf(coordinate: number): Directions {
  if (coordinate === 0) return Array.from({ length: bits }, (_, k) => (1 << (bits - 1 - k)) >>> 0);
  const row = rows[coordinate - 1];
  if (row === undefined) throw new RangeError(`directionsOf: coordinate ${coordinate} of ${mostCoordinates}`);
  const [degree, inner, ...first] = row;
  const v = first.map((m, k) => (m << (bits - 1 - k)) >>> 0);
  for (let k = degree; k < bits; k++) {
    let next = v[k - degree]! ^ (v[k - degree]! >>> degree);
    for (let j = 1; j < degree; j++) if ((inner >>> (degree - 1 - j)) & 1) next ^= v[k - j]!;
    v.push(next >>> 0);
  }
  return v;
}

/** The digits of the point of that number, from 0: in the order of the Gray code (Antonov and Saleev 1979). */
export function sobolDigits(directions: Directions, point: number): number {
  let digits = 0;
  for (let gray = point ^ (point >>> 1), k = 0; gray !== 0; gray >>>= 1, k++)
    if (gray & 1) digits ^= directions[k]!;
  return digits >>> 0;
}
