/** What one load costs once the chair is built: rest, crests, periods, pushes, friction, all of them. */
import { profileOf } from '../src/geometry/profile.js';
import { runningSurface, type RunningSurface } from '../src/geometry/running-surface.js';
import type { Profile } from '../src/geometry/profile.js';
import { fullTurn } from '../src/geometry/lean.js';
import { rollAtRest } from '../src/rolling/roll-at-rest.js';
import { endOf, startOf, type Loop, type Piece } from '../src/geometry/piece.js';
import type { Finding } from './finding.js';
import { microsecondsPerCall } from './timing.js';

export const question = 'How long do all steady measures of one load take on a profile of 20 pieces?';

/** A runner of `count` tangent arcs of radii from 0.9 to 1.1 m in turn, closed by a straight top. */
export function runnerLoop(count: number): Loop {
  const width = 0.9 / count;
  const bottom: Piece[] = [];
  let [start, end] = [-Math.PI / 2 - 0.5, { x: -0.48, y: 0.12 }];
  for (let i = 0; i < count; i++) {
    const radius = 1 + 0.1 * Math.sin(i);
    const centre = { x: end.x - radius * Math.cos(start), y: end.y - radius * Math.sin(start) };
    const arc: Piece = { kind: 'arc', centre, radius, start, sweep: width };
    bottom.push(arc);
    [start, end] = [start + width, endOf(arc)];
  }
  return [...bottom, { kind: 'line', from: end, to: startOf(bottom[0]!) }];
}

export function runnerOf(count: number): { profile: Profile; surface: RunningSurface } {
  const profile = profileOf([[runnerLoop(count)]]);
  return { profile, surface: runningSurface(profile) };
}

const body = { mass: 80, centre: { x: -0.02, y: 0.6 }, inertia: 9 };
const settings = { swing: (6 / 360) * fullTurn, pushedAt: { x: -0.4, y: 1.05 } };

export function run(): Promise<Finding[]> {
  const { profile, surface } = runnerOf(18);
  const record = rollAtRest(profile, surface, body, settings);
  if (record.atRest === null) throw new Error('the benchmark’s chair does not stand');
  const { low, median, high } = microsecondsPerCall(() => rollAtRest(profile, surface, body, settings));
  const target = 15;
  return Promise.resolve([
    {
      what: `all steady measures of one load, ${profile.elements.length} hull elements`,
      value: median,
      spread: { low, high },
      unit: 'µs',
      target,
      met: median < target,
    },
  ]);
}
