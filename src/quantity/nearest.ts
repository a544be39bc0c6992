/** The known word that was probably meant. */

/** The first of the nearest known words, case ignored; undefined when nothing is near. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  let nearest: string | undefined;
  let least = mistypings(word) + 1;
  for (const candidate of known) {
    // Lengths alone tell most words apart.
    if (Math.abs(candidate.length - word.length) >= least) continue;
    const distance = editDistance(word.toLowerCase(), candidate.toLowerCase());
    if (distance < least) [nearest, least] = [candidate, distance];
  }
  return nearest;
}

/** How many slips a word of this length may have and still be known: in a word of two letters any slip makes another word. */
function mistypings(word: string): number {
  if (word.length <= 2) return 0;
  return word.length <= 4 ? 1 : 2;
}

/**
 * The least number of letters put in, left out, changed, or swapped with their neighbour that makes b of a
 * (optimal string alignment; Damerau, Communications of the ACM 7 (1964) 171).
 */
function editDistance(a: string, b: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const changed = a[row - 1] === b[column - 1] ? 0 : 1;
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      current[column] = Math.min(
        last[column]! + 1,
        current[column - 1]! + 1,
        last[column - 1]! + changed,
        swapped ? beforeLast[column - 2]! + 1 : Infinity,
      );
    }
    [beforeLast, last] = [last, current];
  }
  return last[b.length]!;
}
