/**
 * Integrals of smooth functions: Gauss and Kronrod's pair of 7 and 15 nodes, halved where the two disagree.
 * Nodes and weights: Piessens, de Doncker-Kapenga, Überhuber, Kahaner, QUADPACK (1983), rule qk15
 * (from memory; the tests hold them to exactness for every polynomial up to degree 22).
 */
const nodes = [
  0.991455371120812639206854697526329, 0.949107912342758524526189684047851,
  0.864864423359769072789712788640926, 0.741531185599394439863864773280788,
  0.586087235467691130294144691258378, 0.405845151377397166906606412076961,
  0.207784955007898467600689403773245,
];
const kronrod = [
  0.02293532201052922496373200805897, 0.063092092629978553290700663189204,
  0.104790010322250183839876322541518, 0.140653259715525918745189590510238,
  0.16900472663926790282658342659855, 0.190350578064785409913256402421014,
  0.204432940075298892414161999234649,
];
const kronrodMiddle = 0.209482141084727828012999174891714;
const gauss = [
  0.129484966168869693270611432679082, 0.27970539148927666790146777142378,
  0.381830050505118944950369775488975,
];
const gaussMiddle = 0.417959183673469387755102040816327;

/** Disagreement, relative to the whole, below which halving only moves the last digits. */
const agreement = 1e-13;
/** 2⁻⁴⁰ of the range: a function that still disagrees there has an end that should have been substituted away. */
const deepest = 40;
/** Halves of halves looked at in all: a peak or a jump takes two a depth, what is rough everywhere would never end. */
const mostRanges = 2000;

/**
 * ∫ f from a to b, to about 1e-13 of its size for a smooth f.
 * @throws RangeError when it does not settle, or f is not finite.
 */
export function integrate(f: (x: number) => number, a: number, b: number): number {
  return halving(f, a, b, 0, 0, { left: mostRanges });
}

function halving(
  f: (x: number) => number,
  a: number,
  b: number,
  whole: number,
  depth: number,
  ranges: { left: number },
): number {
  const middle = (a + b) / 2;
  const half = (b - a) / 2;
  const atMiddle = f(middle);
  let fine = kronrodMiddle * atMiddle;
  let coarse = gaussMiddle * atMiddle;
  for (let i = 0; i < nodes.length; i++) {
    const step = half * nodes[i]!;
    const pair = f(middle - step) + f(middle + step);
    fine += kronrod[i]! * pair;
    if (i % 2 === 1) coarse += gauss[(i - 1) / 2]! * pair;
  }
  const value = fine * half;
  if (!Number.isFinite(value)) throw new RangeError(`integrate: not finite between ${a} and ${b}`);
  const size = Math.max(Math.abs(value), whole);
  if (settled(Math.abs(fine - coarse) * Math.abs(half), size)) return value;
  ranges.left -= 2;
  if (depth >= deepest || ranges.left < 0) throw new RangeError(`integrate: does not settle near ${middle}`);
  return halving(f, a, middle, size, depth + 1, ranges) + halving(f, middle, b, size, depth + 1, ranges);
}

/** QUADPACK's estimate: the fine rule's error is about (200 × disagreement)^1.5 of the size. */
function settled(disagreement: number, size: number): boolean {
  return size === 0 || (200 * disagreement) / size <= agreement ** (2 / 3);
}
