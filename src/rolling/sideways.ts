/**
 * Going over sideways about a rocker, as an estimate: the body turned about the line where one of two rockers
 * w apart (centre lines) stands on the floor, its lean as at rest.
 *
 *     angle   atan((w/2 - |z_G|) / H)
 *
 * @param spacing w, metres
 * @param height H at rest, metres
 * @param offset z_G, how far G lies to one side of the middle, metres
 * @returns radians
 */
export function tipSideways(spacing: number, height: number, offset = 0): number {
  return Math.atan2(spacing / 2 - Math.abs(offset), height);
}
