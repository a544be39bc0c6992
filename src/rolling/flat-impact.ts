/**
 * Passing a flat: the contact jumps by its length at once, and the body strikes its new contact without bounce.
 * With x_a, x_b how far G is ahead of the contact left and the contact met, both at height H:
 *
 *     θ̇⁺/θ̇⁻ = (I + m (H² + x_a x_b)) / (I + m (H² + x_b²))
 *     grip needed: m H |x_b| / (I + m H²)
 *
 * (angular momentum about the new contact). Not positive: the body stops on the flat.
 */
export interface FlatImpact {
  /** θ̇⁺/θ̇⁻. */
  readonly speedRatio: number;
  /** (θ̇⁺/θ̇⁻)² A⁺/A⁻: the share of kinetic energy kept; 0 when it stops. */
  readonly energyKept: number;
  /** |impulse along the floor| over the impulse up. */
  readonly grip: number;
}

/**
 * @param gyration2 I/m, m²
 * @param height H, metres
 * @param left x_a, @param met x_b, metres
 */
export function flatImpact(gyration2: number, height: number, left: number, met: number): FlatImpact {
  const level = gyration2 + height * height;
  const speedRatio = (level + left * met) / (level + met * met);
  const energyKept = speedRatio > 0 ? (speedRatio ** 2 * (level + met * met)) / (level + left * left) : 0;
  return { speedRatio, energyKept, grip: (height * Math.abs(met)) / level };
}
