/**
 * The rule of Gauss and Legendre with n nodes on [-1, 1], exact for polynomials up to degree 2n - 1:
 * the nodes are the roots of P_n, the weights 2 / ((1 - x²) P_n'(x)²) (Abramowitz and Stegun 25.4.29).
 */
export interface Node {
  readonly x: number;
  readonly weight: number;
}

/** Newton doubles the digits each time; from Tricomi's start the fourth changes nothing for any n ≥ 2. */
const newtonSteps = 6;

export function gaussLegendre(count: number): readonly Node[] {
  return Array.from({ length: count }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    for (let step = 0; step < newtonSteps; step++) {
      const { value, slope } = legendre(count, x);
      x -= value / slope;
    }
    return { x, weight: 2 / ((1 - x * x) * legendre(count, x).slope ** 2) };
  });
}

/** P_n by (k + 1) P_{k+1} = (2k + 1) x P_k - k P_{k-1}, its slope by (x² - 1) P_n' = n (x P_n - P_{n-1}). */
function legendre(degree: number, x: number): { value: number; slope: number } {
  let [before, value] = [1, x];
  for (let k = 1; k < degree; k++) {
    [before, value] = [value, ((2 * k + 1) * x * value - k * before) / (k + 1)];
  }
  return { value, slope: (degree * (x * value - before)) / (x * x - 1) };
}
