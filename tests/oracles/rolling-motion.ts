/**
 * The motion of a rolling body step by step (classical Runge and Kutta, order 4), its geometry from plain vectors.
 * Moment of momentum about the moving contact, r = G - contact in floor axes:
 *
 *     L = (I + m |r|²) θ̇        L̇ = m r_x (ρ θ̇² - g)
 *
 * Where the contact jumps over a flat, L about the new contact is taken from the velocity before: plastic impact.
 */
import type { MassProperties } from '../../src/mass.js';
import { minus, plus, times, type Point } from '../../src/geometry/point.js';
import { downAt } from './brute-support.js';
import { standardGravity as g } from './round-runner.js';

/** A stretch of runner from one lean to the next: an arc, or a corner with radius 0. */
export interface Track {
  readonly from: number;
  readonly to: number;
  readonly centre: Point;
  readonly radius: number;
}

export interface Motion {
  /** Seconds from release to the turning point. */
  readonly time: number;
  /** Lean of the turning point; null when it stops on a flat or leaves the last track. */
  readonly turn: number | null;
  /** Kinetic energy after over before each jump of the contact of more than a nanometre, joules. */
  readonly impacts: readonly { readonly before: number; readonly after: number }[];
}

interface State {
  readonly lean: number;
  readonly momentum: number;
}

/** From G to the contact, in floor axes. */
export function armAt({ centre, radius }: Track, g0: Point, lean: number): Point {
  const { x, y } = minus(g0, plus(centre, times(downAt(lean), radius)));
  const [sin, cos] = [Math.sin(lean), Math.cos(lean)];
  return { x: x * cos - y * sin, y: x * sin + y * cos };
}

/** @param sense 1 when it rolls to larger leans. @param step seconds */
export function rollToTurn(
  tracks: readonly Track[],
  body: MassProperties,
  release: number,
  sense: 1 | -1,
  step: number,
): Motion {
  let index = tracks.findIndex(
    ({ from, to }) => (sense > 0 ? release < to : release <= to) && release >= from,
  );
  let state: State = { lean: release, momentum: 0 };
  let time = 0;
  const impacts: { before: number; after: number }[] = [];
  for (;;) {
    const track = tracks[index]!;
    const end = sense > 0 ? track.to : track.from;
    const turned = (s: State): boolean => s.momentum * sense < 0;
    const done = (s: State): boolean => turned(s) || (s.lean - end) * sense > 0;
    const next = oneStep(track, body, state, step);
    if (!done(next)) {
      [state, time] = [next, time + step];
      continue;
    }
    const part = firstShare((share) => done(oneStep(track, body, state, share * step)));
    state = oneStep(track, body, state, part * step);
    time += part * step;
    if (turned(state)) return { time, turn: state.lean, impacts };
    const after = tracks[index + sense];
    if (after === undefined) return { time, turn: null, impacts };
    const met = changeTrack(track, after, body, { ...state, lean: end });
    if (met.jump > 1e-9) impacts.push(met);
    if (met.state.momentum * sense <= 0) return { time, turn: null, impacts };
    [state, index] = [met.state, index + sense];
  }
}

/** The least share of a step, to the last digit, for which something is so that is not so for 0. */
function firstShare(so: (share: number) => boolean): number {
  let [no, yes] = [0, 1];
  for (let i = 0; i < 54; i++) {
    const middle = (no + yes) / 2;
    if (so(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}

function changeTrack(
  track: Track,
  next: Track,
  { mass, inertia, centre }: MassProperties,
  { lean, momentum }: State,
): { state: State; before: number; after: number; jump: number } {
  const [left, met] = [armAt(track, centre, lean), armAt(next, centre, lean)];
  const rate = momentum / (inertia + mass * (left.x ** 2 + left.y ** 2));
  // v of G = θ̇ × r: (-θ̇ r_y, θ̇ r_x); L = I θ̇ + m (r_x v_y - r_y v_x).
  const kept = inertia * rate + mass * rate * (met.x * left.x + met.y * left.y);
  const aboutMet = inertia + mass * (met.x ** 2 + met.y ** 2);
  return {
    state: { lean, momentum: kept },
    before: (momentum * rate) / 2,
    after: kept ** 2 / (2 * aboutMet),
    jump: Math.abs(left.x - met.x),
  };
}

function oneStep(track: Track, body: MassProperties, state: State, h: number): State {
  const from = (slope: State, share: number): State => ({
    lean: state.lean + share * h * slope.lean,
    momentum: state.momentum + share * h * slope.momentum,
  });
  const a = rateOf(track, body, state);
  const b = rateOf(track, body, from(a, 0.5));
  const c = rateOf(track, body, from(b, 0.5));
  const d = rateOf(track, body, from(c, 1));
  const mean = (key: keyof State): number => (a[key] + 2 * b[key] + 2 * c[key] + d[key]) / 6;
  return { lean: state.lean + h * mean('lean'), momentum: state.momentum + h * mean('momentum') };
}

function rateOf(track: Track, { mass, inertia, centre }: MassProperties, { lean, momentum }: State): State {
  const r = armAt(track, centre, lean);
  const rate = momentum / (inertia + mass * (r.x ** 2 + r.y ** 2));
  return { lean: rate, momentum: mass * r.x * (track.radius * rate ** 2 - g) };
}
