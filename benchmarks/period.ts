/** What a period at an amplitude costs on one arc, and how far it is from its own quadrature with many more steps. */
import { degree, periodsOn, runnerOfOneArc } from './one-arc.js';
import type { Finding } from './finding.js';
import { microsecondsPerCall } from './timing.js';

export const question = 'How long does a period at an amplitude take on one arc, and how exact is it?';

const body = { mass: 80, centre: { x: 0, y: 0.6 }, inertia: 9 };
const machineEpsilon = 2 ** -52;

export function run(): Promise<Finding[]> {
  const { exact, truth } = periodsOn(runnerOfOneArc(), body);
  const { low, median, high } = microsecondsPerCall(() => exact(6 * degree));
  const errors = [2, 6, 15, 21].map((degrees) =>
    Math.abs(exact(degrees * degree) / truth(degrees * degree, 200) - 1),
  );
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
