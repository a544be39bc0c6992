/** Linear equations of a few unknowns, by elimination with the largest pivot of each column. */

/**
 * x with A x = b.
 * @param rows of A, square
 * @returns null when they do not decide x: a pivot under `smallest` of the largest number
 */
export function solveLinear(rows: readonly (readonly number[])[], b: readonly number[]): number[] | null {
  const size = b.length;
  const work = rows.map((row, i) => [...row, b[i]!]);
  const largest = Math.max(...rows.flat().map(Math.abs));
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let i = column + 1; i < size; i++)
      if (Math.abs(work[i]![column]!) > Math.abs(work[pivot]![column]!)) pivot = i;
    if (!(Math.abs(work[pivot]![column]!) > smallest * largest)) return null;
    [work[column], work[pivot]] = [work[pivot]!, work[column]!];
    for (let i = column + 1; i < size; i++) {
      const factor = work[i]![column]! / work[column]![column]!;
      for (let k = column; k <= size; k++) work[i]![k]! -= factor * work[column]![k]!;
    }
  }
  const x = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    let sum = work[i]![size]!;
    for (let k = i + 1; k < size; k++) sum -= work[i]![k]! * x[k]!;
    x[i] = sum / work[i]![i]!;
  }
  return x;
}

/** A row of a matrix that has numbers beside its diagonal only. */
export interface ThreeInARow {
  readonly before: number;
  readonly on: number;
  readonly after: number;
}

/**
 * The same of such rows, one after another (L. H. Thomas’s elimination, from memory): good where each number on the diagonal is larger than
 * the two beside it together.
 */
export function solveTridiagonal(rows: readonly ThreeInARow[], b: readonly number[]): number[] {
  const [after, x] = [[] as number[], [] as number[]];
  rows.forEach(({ before, on, after: next }, i) => {
    const pivot = on - before * (after[i - 1] ?? 0);
    after.push(next / pivot);
    x.push((b[i]! - before * (x[i - 1] ?? 0)) / pivot);
  });
  for (let i = rows.length - 2; i >= 0; i--) x[i]! -= after[i]! * x[i + 1]!;
  return x;
}

/** Below this a pivot is rounding. */
const smallest = 1e-13;

/**
 * The shortest x with A x = b, fewer equations than unknowns: x = Aᵀ (A Aᵀ)⁻¹ b.
 * @returns null when the equations depend on each other
 */
export function shortestSolution(
  rows: readonly (readonly number[])[],
  b: readonly number[],
): number[] | null {
  const gram = rows.map((row) => rows.map((other) => dotOf(row, other)));
  const weights = solveLinear(gram, b);
  if (weights === null) return null;
  const columns = rows[0]?.length ?? 0;
  return Array.from({ length: columns }, (_, k) =>
    rows.reduce((sum, row, i) => sum + row[k]! * weights[i]!, 0),
  );
}

const dotOf = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0);

/**
 * The x for which A x comes nearest to b, more equations than unknowns: AᵀA x = Aᵀb.
 * @returns null when they do not decide it
 */
export function leastSquares(rows: readonly (readonly number[])[], b: readonly number[]): number[] | null {
  const columns = rows[0]!.length;
  const products = Array.from({ length: columns }, () => new Array<number>(columns).fill(0));
  const wanted = new Array<number>(columns).fill(0);
  rows.forEach((row, j) => {
    for (let i = 0; i < columns; i++) {
      if (row[i] === 0) continue;
      wanted[i]! += row[i]! * b[j]!;
      for (let k = 0; k < columns; k++) products[i]![k]! += row[i]! * row[k]!;
    }
  });
  return solveLinear(products, wanted);
}
