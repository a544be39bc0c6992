/** Bodies on runners of one arc that a contact engine was measured with, G plumb below the arc’s centre. */
import { profileOf } from '../../src/geometry/profile.js';
import { courseAlone } from '../../src/contact/second-opinion.js';
import type { Course } from '../../src/rolling/scripted-place.js';
import type { RoundRunner } from '../oracles/round-runner.js';
import { roundRunner } from '../rolling/runners.js';

export const degree = Math.PI / 180;

/** R, h, m, I. */
export const bodies = {
  person: [1.07, 0.6, 80, 9],
  empty: [1.07, 0.42, 12, 2.2],
  child: [0.8, 0.5, 35, 3],
  tall: [1.3, 0.75, 95, 14],
  'small radius': [0.6, 0.4, 35, 3],
  'large radius': [1.5, 0.75, 95, 14],
} as const;
export type BodyName = keyof typeof bodies;
export const bodyNames = Object.keys(bodies) as BodyName[];

export function roundBody(name: BodyName): RoundRunner {
  const [radius, height, mass, inertia] = bodies[name];
  return { centre: { x: 0, y: radius }, radius, body: { mass, inertia, centre: { x: 0, y: height } } };
}

/** @param end lean at which the contact is at either end, radians */
export function courseOf(
  { centre, radius, body }: RoundRunner,
  end: number,
  more: Partial<Course> = {},
): Course {
  const { outline } = roundRunner(centre, radius, -end, end);
  return courseAlone({ profile: profileOf([[outline]]), body }, { until: 8, ...more });
}
