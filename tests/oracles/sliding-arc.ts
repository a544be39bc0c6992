/**
 * A body on a runner of one arc that may slide: three degrees of freedom less the contact. R, d, h = H(θ) as in
 * round-runner.ts with G plumb below the centre at θ = 0; x is G's place along the floor, v = ẋ + H θ̇ the velocity of
 * the place that touches. From Newton and Euler with N = m (g + H'θ̈ + H''θ̇²), H' = d sin θ, H'' = d cos θ:
 *
 *     sticking   (I + m (H² + H'²)) θ̈ = -m H' (g + (H + H'') θ̇²)            F = -m (H θ̈ + H' θ̇²)
 *     sliding    (I + m H' (H' + μ s H)) θ̈ = -m (H' + μ s H) (g + H'' θ̇²)    F = -μ s N,  s = sgn v
 *
 * It slides from |F| > μ N on, and sticks again where v comes through 0 and μ N would hold it. Between two changes an
 * independent integrator (odex: Hairer and Wanner's extrapolation) goes on.
 */
import { Solver } from 'odex';
import { standardGravity as g } from './round-runner.js';

export interface SlidingArc {
  readonly radius: number;
  readonly height: number;
  readonly mass: number;
  readonly inertia: number;
  readonly friction: number;
}

export interface SlidingState {
  readonly time: number;
  readonly lean: number;
  readonly rate: number;
  /** v, metres a second, and how far it has slid, metres. */
  readonly slip: number;
  readonly slid: number;
}

type Mode = 'sticks' | 1 | -1;

/** Seconds between two looks at whether it sticks or slides; the change itself is found by halving. */
const look = 1e-3;
const closeness = 1e-11;

/** States at every `every` seconds, from a standstill at a lean. */
export function slideOn(arc: SlidingArc, release: number, until: number, every: number): SlidingState[] {
  const states: SlidingState[] = [{ time: 0, lean: release, rate: 0, slip: 0, slid: 0 }];
  let mode: Mode = startsAs(arc, release);
  let here = states[0]!;
  const looks = Math.round(every / look);
  for (let n = 1; n * look <= until + look / 2; n++) {
    ({ state: here, mode } = goOn(arc, here, mode, n * look));
    if (n % looks === 0) states.push(here);
  }
  return states;
}

function startsAs(arc: SlidingArc, lean: number): Mode {
  const { along, normal } = forces(arc, 'sticks', lean, 0);
  if (Math.abs(along) <= arc.friction * normal) return 'sticks';
  // The floor would have to push that way: it slides the other.
  return along > 0 ? -1 : 1;
}

function forces(arc: SlidingArc, mode: Mode, lean: number, rate: number) {
  const { radius, height, mass: m, inertia, friction } = arc;
  const d = radius - height;
  const [H, slope, bend] = [radius - d * Math.cos(lean), d * Math.sin(lean), d * Math.cos(lean)];
  const lever = mode === 'sticks' ? 0 : slope + friction * mode * H;
  const turning =
    mode === 'sticks'
      ? (-m * slope * (g + (H + bend) * rate ** 2)) / (inertia + m * (H ** 2 + slope ** 2))
      : (-m * lever * (g + bend * rate ** 2)) / (inertia + m * slope * lever);
  const normal = m * (g + slope * turning + bend * rate ** 2);
  const along = mode === 'sticks' ? -m * (H * turning + slope * rate ** 2) : -friction * mode * normal;
  return { turning, normal, along, H, slope };
}

/** From a state to a time in one mode, however long. */
function inOneMode(arc: SlidingArc, from: SlidingState, mode: Mode, to: number): SlidingState {
  const solver = new Solver(4);
  solver.absoluteTolerance = closeness;
  solver.relativeTolerance = closeness;
  const rates = (_: number, [lean, rate, slip]: readonly number[]): number[] => {
    const { turning, along, H, slope } = forces(arc, mode, lean!, rate!);
    // v̇ = ẍ + H θ̈ + H' θ̇²
    const slipRate = mode === 'sticks' ? 0 : along / arc.mass + H * turning + slope * rate! ** 2;
    return [rate!, turning, slipRate, mode === 'sticks' ? 0 : slip!];
  };
  const { y } = solver.solve(rates, from.time, [from.lean, from.rate, from.slip, from.slid], to);
  return { time: to, lean: y[0]!, rate: y[1]!, slip: mode === 'sticks' ? 0 : y[2]!, slid: y[3]! };
}

/** Whether a mode still holds. */
function holds(arc: SlidingArc, { lean, rate, slip }: SlidingState, mode: Mode): boolean {
  if (mode !== 'sticks') return slip * mode >= 0;
  const { along, normal } = forces(arc, mode, lean, rate);
  return Math.abs(along) <= arc.friction * normal;
}

function goOn(
  arc: SlidingArc,
  from: SlidingState,
  mode: Mode,
  to: number,
): { readonly state: SlidingState; readonly mode: Mode } {
  const there = inOneMode(arc, from, mode, to);
  if (holds(arc, there, mode)) return { state: there, mode };
  let [early, late] = [from.time, to];
  while (late - early > 1e-12) {
    const middle = (early + late) / 2;
    if (holds(arc, inOneMode(arc, from, mode, middle), mode)) early = middle;
    else late = middle;
  }
  const change = { ...inOneMode(arc, from, mode, late), slip: 0 };
  const next = afterChange(arc, change, mode);
  return to - late < 1e-9
    ? { state: { ...change, time: to }, mode: next }
    : { state: inOneMode(arc, change, next, to), mode: next };
}

/** v is 0: it sticks if it can, else it slides the way that the floor does not hold it. */
function afterChange(arc: SlidingArc, { lean, rate }: SlidingState, before: Mode): Mode {
  const { along, normal } = forces(arc, 'sticks', lean, rate);
  if (before !== 'sticks' && Math.abs(along) <= arc.friction * normal) return 'sticks';
  return along > 0 ? -1 : 1;
}
