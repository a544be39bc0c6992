/**
 * The smooth step from 0 to 1 by which scripts begin and end what they do: its first and second derivative vanish at
 * both ends.
 *
 *     σ(u) = u³ (10 - 15 u + 6 u²),   σ' = 30 u² (1 - u)²,   σ'' = 60 u (1 - u) (1 - 2 u),   u clamped to 0..1
 */
const clamped = (u: number): number => Math.min(Math.max(u, 0), 1);

export function smoothStep(u: number): number {
  const v = clamped(u);
  return v * v * v * (10 - v * (15 - 6 * v));
}

/** σ' */
export function smoothStepRate(u: number): number {
  const v = clamped(u);
  return 30 * (v * (1 - v)) ** 2;
}

/** σ'' */
export function smoothStepAcceleration(u: number): number {
  const v = clamped(u);
  return 60 * v * (1 - v) * (1 - 2 * v);
}
