/**
 * The radius from which on a body stands on every single arc, its mass and centre of gravity held.
 *
 * The arc touches the floor at the frame's origin below; G lies a level distance e from that touch and y above it.
 * It rests where tan θ = e/(R - y), which must be on the runner: sin θ ≤ t/R, t the level distance from the touch
 * to the runner's end on G's side. Both are equalities for
 *
 *     R = (y t² + t e sqrt(y² + e² - t²)) / (t² - e²)      while y² + e² ≥ t²
 *
 * otherwise every arc that reaches the end and is flatter than y serves: R = max(y, t).
 * @returns metres; Infinity when G is beyond the runner's end
 */
export function leastRadius(y: number, e: number, t: number): number {
  if (!(e < t)) return Infinity;
  const beyond = y * y + e * e - t * t;
  if (beyond < 0) return Math.max(y, t);
  return (y * t * t + t * e * Math.sqrt(beyond)) / (t * t - e * e);
}
