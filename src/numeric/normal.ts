/** The normal distribution: the chance to lie below a number, and the number of a chance. */

const halfLogTwoPi = Math.log(2 * Math.PI) / 2;
const density = (z: number): number => Math.exp((-z * z) / 2 - halfLogTwoPi);

/** Beyond this the series loses digits to the sum's ½, and the fraction converges fast. */
const seriesTo = 3;

/**
 * Φ(z) = ½ + φ(z) (z + z³/3 + z⁵/(3·5) + …); in the tails Φ(-z) = φ(z)/(z + 1/(z + 2/(z + 3/(z + …)))).
 * Abramowitz and Stegun 1964, 26.2.11 and 26.2.14.
 */
export function normalBelow(z: number): number {
  if (Number.isNaN(z)) throw new RangeError('normalBelow: NaN');
  if (Math.abs(z) > seriesTo) return z > 0 ? 1 - tail(z) : tail(-z);
  let [sum, term] = [0, z];
  for (let k = 3; sum + term !== sum; k += 2) {
    sum += term;
    term *= (z * z) / k;
  }
  return 0.5 + density(z) * sum;
}

/** From z = 3 on eighty steps of the fraction reach the last digit. */
const steps = 80;

function tail(z: number): number {
  if (z === Infinity) return 0;
  let fraction = z;
  for (let k = steps; k > 0; k--) fraction = z + k / fraction;
  return density(z) / fraction;
}

/** Coefficients of rational approximations by falling power: above, below. */
type Rational = readonly [above: readonly number[], below: readonly number[]];

const middle: Rational = [
  [
    2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457,
    13731.693765509461125, 1971.5909503065514427, 133.14166789178437745, 3.387132872796366608,
  ],
  [
    5226.495278852854561, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867,
    5394.1960214247511077, 687.1870074920579083, 42.313330701600911252, 1,
  ],
];
const near: Rational = [
  [
    7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258,
    3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
  ],
  [
    1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966, 0.14810397642748007459,
    0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187, 1,
  ],
];
const far: Rational = [
  [
    2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
    0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
  ],
  [
    2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
    0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769, 1,
  ],
];

const polynomial = (coefficients: readonly number[], x: number): number =>
  coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0);
const ratio = ([above, below]: Rational, x: number): number => polynomial(above, x) / polynomial(below, x);

/** z with Φ(z) = p, to about 1e-16 relative: Wichura 1988, algorithm AS 241 (PPND16), Applied Statistics 37, 477-484. */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`normalQuantile: ${p}`);
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(middle, 0.180625 - q * q);
  const outside = Math.min(p, 1 - p);
  if (outside === 0) return q < 0 ? -Infinity : Infinity;
  const r = Math.sqrt(-Math.log(outside));
  return Math.sign(q) * (r <= 5 ? ratio(near, r - 1.6) : ratio(far, r - 5));
}
