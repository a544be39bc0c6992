/** What a period at an amplitude costs on one arc, and how far it is from its own quadrature with many more steps. */
import { profileOf } from '../src/geometry/profile.js';
import { runningSurface } from '../src/geometry/running-surface.js';
import { rocker } from '../src/geometry/words/rocker.js';
import { isMissing } from '../src/numeric/missing.js';
import { landscapeOf } from '../src/rolling/landscape.js';
import { wholeSwing } from '../src/rolling/rolling-time.js';
import { freeSwing } from '../src/rolling/swing.js';
import type { Finding } from './finding.js';
import { microsecondsPerCall } from './timing.js';

export const question = 'How long does a period at an amplitude take on one arc, and how exact is it?';

const body = { mass: 80, centre: { x: 0, y: 0.6 }, inertia: 9 };
const degree = Math.PI / 180;
const machineEpsilon = 2 ** -52;

export function run(): Promise<Finding[]> {
  const made = rocker({
    arcs: [{ radius: 1.07, until: null }],
    depth: 0.05,
    nose: 0.5,
    tail: 0.5,
    at: 0,
    along: 'level',
  });
  if (!made.ok) throw new Error('the benchmark’s rocker is none');
  const profile = profileOf([[made.boundary]]);
  const surface = runningSurface(profile, () => [made.ends.tail, made.ends.nose]);
  const landscape = landscapeOf(profile, body.centre);
  const { low, median, high } = microsecondsPerCall(() => freeSwing(landscape, surface, body, 0, 6 * degree));
  const stretch = landscape.stretches
    .filter((each) => each.kind === 'round')
    .find(({ radius }) => radius > 0)!;
  const errors = [2, 6, 15, 21].map((degrees) => {
    const swing = freeSwing(landscape, surface, body, 0, degrees * degree);
    if (isMissing(swing)) throw new Error(swing.missing);
    return Math.abs(swing.period / wholeSwing(stretch, body.inertia / body.mass, degrees * degree, 200) - 1);
  });
  return Promise.resolve([
    {
      what: 'period at 6° on one arc',
      value: median,
      spread: { low, high },
      unit: 'µs',
      target: 1,
      met: median < 1,
    },
    {
      what: 'its distance to 200 steps, worst of 2, 6, 15 and 21°',
      value: Math.max(...errors) / machineEpsilon,
      unit: 'roundings of 2⁻⁵²',
      // Sums of 8 and of 200 square roots differ by some roundings each.
      target: 16,
      met: Math.max(...errors) <= 16 * machineEpsilon,
    },
  ]);
}
