/** What a curve of the profile costs over an arc: the same runner drawn as arcs and as the cubics that fit them. */
import { profileOf, type Profile } from '../src/geometry/profile.js';
import { endOf, startOf, type Arc, type Cubic, type Loop, type Piece } from '../src/geometry/piece.js';
import { plus, times, unitAt } from '../src/geometry/point.js';
import { runningSurface, type RunningSurface } from '../src/geometry/running-surface.js';
import { rollAtRest } from '../src/rolling/roll-at-rest.js';
import type { Finding } from './finding.js';
import { runnerLoop } from './steady-measures.js';
import { timeRatio } from './timing.js';

export const question = 'What does a curve piece of the profile cost over an arc piece?';

/** The cubic with the arc's ends, tangents and middle: control points 4/3 tan(sweep/4) radii along the tangents. */
function fitted(arc: Arc): Cubic {
  const reach = (4 / 3) * Math.tan(arc.sweep / 4) * arc.radius;
  const [from, to] = [startOf(arc), endOf(arc)];
  const along = (angle: number) => times(unitAt(angle + Math.PI / 2), reach);
  return {
    kind: 'cubic',
    from,
    control1: plus(from, along(arc.start)),
    control2: plus(to, times(along(arc.start + arc.sweep), -1)),
    to,
  };
}

const asCubics = (loop: Loop): Piece[] => loop.map((piece) => (piece.kind === 'arc' ? fitted(piece) : piece));

const rolling = (loop: Loop): { profile: Profile; surface: RunningSurface; roll: () => void } => {
  const profile = profileOf([[loop]]);
  const surface = runningSurface(profile);
  const body = { mass: 80, centre: { x: -0.02, y: 0.6 }, inertia: 9 };
  const settings = { swing: 0.1, pushedAt: { x: -0.4, y: 1.05 } };
  return { profile, surface, roll: () => void rollAtRest(profile, surface, body, settings) };
};

export async function run(): Promise<Finding[]> {
  const loop = runnerLoop(16);
  const [arcs, cubics] = [rolling(loop), rolling(asCubics(loop))];
  const many = (roll: () => void) => () => {
    for (let i = 0; i < 500; i++) roll();
  };
  const { low, median, high } = await timeRatio(many(cubics.roll), many(arcs.roll), 21);
  // A cubic is cut at its extremes of curvature: the cost is that of its cuts.
  const share = cubics.profile.elements.length / arcs.profile.elements.length;
  return [
    {
      what: `all steady measures, ${cubics.profile.elements.length} curve pieces over ${arcs.profile.elements.length} arcs, for each piece`,
      value: median / share,
      spread: { low: low / share, high: high / share },
      unit: '×',
      target: 5,
      met: median / share <= 5,
    },
  ];
}
