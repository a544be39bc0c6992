/**
 * The area between an arc of the unit circle and its chord, half angle α. In the chord's frame (u along it from its
 * middle, v square to it towards the arc) a strip at u = sin t reaches up to v = cos t - cos α, so
 *
 *     A = ∫ v du,   ∫v dA = ∫ v²/2 du,   ∫u² dA = ∫ u² v du,   ∫v² dA = ∫ v³/3 du,   t from -α to α.
 *
 * Validity: 0 < α ≤ π (half a turn: the whole disc). The handbooks' forms, such as A = α - sin α cos α, lose all
 * digits where the arc is shallow; here nothing cancels when v is taken as 2 sin((α + t)/2) sin((α - t)/2).
 * The integrands are cosines of at most 4t: 24 nodes leave less than 1e-20 (the rule's remainder for cos 4πx),
 * so the error is that of rounding, about 1e-15 relative.
 */
import { gaussLegendre } from '../numeric/gauss-legendre.js';

export interface CircularSegment {
  readonly area: number;
  /** How far the centroid lies from the chord. */
  readonly height: number;
  /** Second moments about the axes through the centroid: ∫u² dA along the chord, ∫(v - height)² dA square to it. */
  readonly alongChord: number;
  readonly squareToChord: number;
}

const nodes = gaussLegendre(24);
/** A full circle read from a file may come out a rounding longer. */
const mostHalfAngle = Math.PI * (1 + 1e-12);

export function circularSegment(halfAngle: number): CircularSegment {
  if (!(halfAngle > 0 && halfAngle <= mostHalfAngle)) {
    throw new RangeError(`circularSegment: half angle of ${halfAngle} rad`);
  }
  let [area, first, alongChord, second] = [0, 0, 0, 0];
  for (const { x, weight } of nodes) {
    const t = halfAngle * x;
    const u = Math.sin(t);
    const v = 2 * Math.sin((halfAngle + t) / 2) * Math.sin((halfAngle - t) / 2);
    const strip = v * Math.cos(t) * halfAngle * weight;
    area += strip;
    first += (v / 2) * strip;
    alongChord += u * u * strip;
    second += ((v * v) / 3) * strip;
  }
  const height = first / area;
  return { area, height, alongChord, squareToChord: second - first * height };
}
