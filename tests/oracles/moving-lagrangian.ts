/**
 * A chair that rolls without slip while masses move in it by a script, from Lagrange's equation in the lean θ alone.
 * On one arc (centre c, radius ρ; a corner has ρ = 0) the centre runs level, ρ over the floor, and carries the chair:
 *
 *     P(θ, τ) = (k - ρ θ, ρ) + D(θ) (q(τ) - c)         D: turn by θ, counter-clockwise; k - ρ θ: the contact
 *     V = J θ̇ + D q̇          J = ∂P/∂θ
 *     T = Σ ½ m |V|² + ½ I (θ̇ + φ̇)²      U = Σ m g P_y      d/dτ ∂T/∂θ̇ - ∂T/∂θ + ∂U/∂θ = Q
 *     θ̈ Σ (m J² + I) = Q - Σ (m J·(a₀ + g ŷ) + I φ̈)        a₀ = D (q̈ - θ̇² (q - c)) + 2 θ̇ ∂(D q̇)/∂θ
 *
 * Q by virtual work: press w down -w J_y; push P toward -x: -P J_x; floor up with f on a foot that rides: f (x_f - X_C).
 * Solved by Gauss's collocation, six points, order 12: all lie inside the step, so a force may jump at a break.
 */
import { distance, dot, minus, plus, times, type Point } from '../../src/geometry/point.js';
import type { MassProperties } from '../../src/mass.js';

/** Standard gravity, 3rd CGPM 1901, typed in again so that the code's own is tested too. */
const g = 9.80665;

/** Leans from..to on an arc, or on a corner with radius 0; a chain follows the leans upward, without flats. */
export interface RunnerArc {
  readonly centre: Point;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
}

/** All in the chair's frame, as functions of time. */
export interface MovingMass {
  readonly mass: number;
  readonly inertia: number;
  readonly place: (time: number) => Point;
  readonly velocity: (time: number) => Point;
  readonly acceleration: (time: number) => Point;
  readonly turnRate: (time: number) => number;
  readonly turnAcceleration: (time: number) => number;
}

/** A force at a point of the chair that may wander in its frame. */
export interface Press {
  readonly force: (time: number) => number;
  readonly at: (time: number) => Point;
}

export interface MovingLoad {
  readonly arcs: readonly RunnerArc[];
  readonly masses: readonly MovingMass[];
  /** Downward. */
  readonly presses?: readonly Press[];
  /** Toward -x. */
  readonly pushes?: readonly Press[];
  /** The floor's upward force on a sitter who rides, at a floor place of `floorPlace`. */
  readonly foot?: { readonly force: (time: number) => number; readonly x: number };
  /** Every time at which a force, a velocity or a derivative is not smooth: a jump not named here may pass unseen. */
  readonly breaks?: readonly number[];
}

interface State {
  readonly time: number;
  readonly lean: number;
  readonly rate: number;
  /** Of the actuators inside and the forces outside, since the start. */
  readonly work: number;
}

export interface Sample extends State {
  readonly acceleration: number;
  readonly kinetic: number;
  /** Of gravity, over the floor. */
  readonly potential: number;
  /** Put in by the actuators inside: Σ m (a + g ŷ)·u + I (θ̈ + φ̈) φ̇, u the velocity in the chair. */
  readonly power: number;
  /** Put in by presses, pushes and the foot. */
  readonly outerPower: number;
  /** Floor on chair: upward N, along +x F. */
  readonly normal: number;
  readonly along: number;
}

/** An arc on the floor: its contact stands at X = k - ρ θ. */
interface LaidArc extends RunnerArc {
  readonly k: number;
}

const quarter = ({ x, y }: Point): Point => ({ x: -y, y: x });
const turn = ({ x, y }: Point, angle: number): Point => {
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return { x: x * cos - y * sin, y: x * sin + y * cos };
};
const total = <T>(list: readonly T[], term: (item: T, index: number) => number): number =>
  list.reduce((sum, item, index) => sum + term(item, index), 0);

/** X of the contact goes on through a joint; there both arcs must hold the same chair point to a nanometre. */
function layOnFloor(arcs: readonly RunnerArc[]): readonly LaidArc[] {
  const lowest = (arc: RunnerArc, lean: number): Point =>
    plus(arc.centre, turn({ x: 0, y: -arc.radius }, -lean));
  const laid: LaidArc[] = [];
  for (const arc of arcs) {
    const last = laid.at(-1);
    const gap = last && Math.abs(last.to - arc.from) + distance(lowest(last, last.to), lowest(arc, last.to));
    if (gap !== undefined && !(gap < 1e-9))
      throw new RangeError(`layOnFloor: a gap of ${gap} before ${arc.from}`);
    laid.push({
      ...arc,
      from: last?.to ?? arc.from,
      k: last ? last.k + (arc.radius - last.radius) * arc.from : 0,
    });
  }
  return laid;
}

/** Joints are passed within this, radians: the wrong radius for so short a way shows in no digit. */
const jointWidth = 1e-12;

function arcAt(laid: readonly LaidArc[], lean: number, sense: number): LaidArc {
  const ahead = lean + sense * jointWidth;
  const arc = laid.find(({ from, to }) => from <= ahead && ahead <= to);
  if (arc === undefined) throw new RangeError(`arcAt: no arc at lean ${lean} with sense ${sense}`);
  return arc;
}

/** P and J of a chair point. */
function carry({ centre, radius, k }: LaidArc, q: Point, lean: number): { place: Point; slope: Point } {
  const out = turn(minus(q, centre), lean);
  const place = plus({ x: k - radius * lean, y: radius }, out);
  return { place, slope: minus(quarter(out), { x: radius, y: 0 }) };
}

/** Where on the floor's axes a chair point is at a lean; X = 0 is where the first arc touches at θ = 0. */
export function floorPlace(arcs: readonly RunnerArc[], q: Point, lean: number): Point {
  return carry(arcAt(layOnFloor(arcs), lean, 0), q, lean).place;
}

/** One mass at one moment: P, J, D q̇ and a₀. */
function moveOn(arc: LaidArc, each: MovingMass, { time, lean, rate }: State) {
  const q = each.place(time);
  const relative = turn(each.velocity(time), lean);
  const inChair = minus(each.acceleration(time), times(minus(q, arc.centre), rate ** 2));
  const { place, slope } = carry(arc, q, lean);
  return {
    mass: each.mass,
    inertia: each.inertia,
    place,
    slope,
    relative,
    bias: plus(turn(inChair, lean), times(quarter(relative), 2 * rate)),
    turnRate: each.turnRate(time),
    turnAcceleration: each.turnAcceleration(time),
  };
}

/** Q of presses, pushes and the foot. */
function outerMoment(arc: LaidArc, { presses = [], pushes = [], foot }: MovingLoad, s: State): number {
  const along = (list: readonly Press[], axis: 'x' | 'y'): number =>
    total(list, ({ force, at }) => force(s.time) * carry(arc, at(s.time), s.lean).slope[axis]);
  const lever = foot ? foot.x - (arc.k - arc.radius * s.lean) : 0;
  return (foot?.force(s.time) ?? 0) * lever - along(presses, 'y') - along(pushes, 'x');
}

function sampleOn(arc: LaidArc, load: MovingLoad, state: State): Sample {
  const { lean, rate, time } = state;
  const outer = outerMoment(arc, load, state);
  const moving = load.masses.map((each) => moveOn(arc, each, state));
  const needed = total(
    moving,
    (b) => b.mass * (dot(b.slope, b.bias) + g * b.slope.y) + b.inertia * b.turnAcceleration,
  );
  const acceleration = (outer - needed) / total(moving, (b) => b.mass * dot(b.slope, b.slope) + b.inertia);
  const velocities = moving.map((b) => plus(times(b.slope, rate), b.relative));
  const borne = moving.map((b) =>
    times(plus(plus(times(b.slope, acceleration), b.bias), { x: 0, y: g }), b.mass),
  );
  const forces = (list: readonly Press[] = []): number => total(list, ({ force }) => force(time));
  return {
    time,
    lean,
    rate,
    work: state.work,
    acceleration,
    kinetic:
      total(
        moving,
        (b, i) => b.mass * dot(velocities[i]!, velocities[i]!) + b.inertia * (rate + b.turnRate) ** 2,
      ) / 2,
    potential: total(moving, (b) => b.mass * g * b.place.y),
    power: total(
      moving,
      (b, i) => dot(borne[i]!, b.relative) + b.inertia * (acceleration + b.turnAcceleration) * b.turnRate,
    ),
    outerPower: outer * rate,
    normal: total(borne, ({ y }) => y) + forces(load.presses) - (load.foot?.force(time) ?? 0),
    along: total(borne, ({ x }) => x) + forces(load.pushes),
  };
}

/** At rest the acceleration, alike on both sides of a joint there, says which way it will go. */
function arcAhead(laid: readonly LaidArc[], load: MovingLoad, state: State): LaidArc {
  if (state.rate !== 0) return arcAt(laid, state.lean, Math.sign(state.rate));
  const { acceleration } = sampleOn(arcAt(laid, state.lean, 0), load, state);
  return arcAt(laid, state.lean, Math.sign(acceleration));
}

/** Everything at one moment, whatever came before. */
export function lagrangianAt(load: MovingLoad, at: { time: number; lean: number; rate: number }): Sample {
  const state = { ...at, work: 0 };
  return sampleOn(arcAhead(layOnFloor(load.arcs), load, state), load, state);
}

/** The rate at which T + U grows by the actuators inside, from the forces on each mass. */
export const actuatorPower = (load: MovingLoad, at: { time: number; lean: number; rate: number }): number =>
  lagrangianAt(load, at).power;

/** Points cᵢ and weights bⱼ of Gauss on 0..1, and aᵢⱼ = ∫₀^cᵢ of Lagrange's polynomial j, by the same rule. */
function gaussTable(n: number): { nodes: number[]; weights: number[]; inner: number[][] } {
  const legendre = (x: number): [value: number, slope: number] => {
    let [last, value] = [1, x];
    for (let i = 2; i <= n; i++) [last, value] = [value, ((2 * i - 1) * x * value - (i - 1) * last) / i];
    return [value, (n * (last - x * value)) / (1 - x * x)];
  };
  const roots = Array.from({ length: n }, (_, i) => {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    for (let turns = 0; turns < 8; turns++) x -= legendre(x)[0] / legendre(x)[1];
    return x;
  });
  const nodes = roots.map((x) => (1 + x) / 2);
  const weights = roots.map((x) => 1 / ((1 - x * x) * legendre(x)[1] ** 2));
  const basis = (j: number, t: number): number =>
    nodes.reduce((product, c, k) => (k === j ? product : (product * (t - c)) / (nodes[j]! - c)), 1);
  const upTo = (c: number, j: number): number =>
    c * weights.reduce((sum, b, k) => sum + b * basis(j, c * nodes[k]!), 0);
  return { nodes, weights, inner: nodes.map((c) => nodes.map((_, j) => upTo(c, j))) };
}

const { nodes, weights, inner } = gaussTable(6);

/** One step on one arc; the stages by iteration from the start. One that does not settle differs from its halves. */
function gaussStep(arc: LaidArc, load: MovingLoad, start: State, h: number): State {
  let stages: Sample[] = nodes.map(() => sampleOn(arc, load, start));
  const mixed = (share: readonly number[], time: number): State => {
    let [lean, rate, work] = [0, 0, 0];
    stages.forEach((s, j) => {
      lean += share[j]! * s.rate;
      rate += share[j]! * s.acceleration;
      work += share[j]! * (s.power + s.outerPower);
    });
    return { time, lean: start.lean + h * lean, rate: start.rate + h * rate, work: start.work + h * work };
  };
  for (let sweep = 0, change = Infinity; sweep < 30 && !(change <= 1e-15); sweep++) {
    const next = nodes.map((c, i) => sampleOn(arc, load, mixed(inner[i]!, start.time + c * h)));
    const slopes = next.map(
      (s, i) => Math.abs(s.acceleration - stages[i]!.acceleration) + apart(s, stages[i]!),
    );
    change = h * Math.max(...slopes);
    stages = next;
  }
  return mixed(weights, start.time + h);
}

const apart = (a: State, b: State): number => Math.max(Math.abs(a.lean - b.lean), Math.abs(a.rate - b.rate));

/** Of a whole step against two halves: the halves are then better by 2¹², far under 1e-11 over a thousand steps. */
const stepError = 1e-12;
const longestStep = 0.1;

function march(laid: readonly LaidArc[], load: MovingLoad, from: State, until: number): State {
  if (!(until >= from.time)) throw new RangeError(`march: time ${until} is not after ${from.time}`);
  let [state, length] = [from, longestStep];
  while (until - state.time > 1e-14) {
    const start = state;
    const arc = arcAhead(laid, load, start);
    const h = Math.min(length, until - start.time);
    const half = gaussStep(arc, load, start, h / 2);
    const end = gaussStep(arc, load, half, h / 2);
    if (!(apart(gaussStep(arc, load, start, h), end) <= stepError)) {
      length = h / 2;
      if (length < 1e-9) throw new RangeError(`march: no step settles at time ${start.time}`);
      continue;
    }
    // Between joints and turning points the lean runs one way, so that no joint is passed twice in a step unseen.
    const over = (s: State): boolean => {
      const turned = Math.abs(start.rate) > 1e-7 && s.rate * start.rate < 0;
      return turned || s.lean < arc.from - jointWidth || s.lean > arc.to + jointWidth;
    };
    const met = over(half) ? h / 2 : over(end) ? h : null;
    state = met === null ? end : firstOver((part) => gaussStep(arc, load, start, part), met, over);
    length = Math.min(2 * length, longestStep);
  }
  return { ...state, time: until };
}

/** Halved to some 1e-14 s. */
function firstOver(step: (part: number) => State, met: number, over: (s: State) => boolean): State {
  let [no, yes] = [0, met];
  for (let i = 0; i < 44; i++) {
    const middle = (no + yes) / 2;
    if (over(step(middle))) yes = middle;
    else no = middle;
  }
  return step(yes);
}

/**
 * From time 0 to each of the times, ascending. At a break the forces are those the functions give for that very time.
 * @throws RangeError when the lean leaves the arcs or the times do not ascend.
 */
export function followLagrangian(
  load: MovingLoad,
  start: { lean: number; rate: number },
  instants: readonly number[],
): Sample[] {
  const laid = layOnFloor(load.arcs);
  let state: State = { time: 0, ...start, work: 0 };
  return instants.map((instant) => {
    const between = (load.breaks ?? []).filter((time) => time > state.time && time < instant);
    for (const stop of [...between.sort((a, b) => a - b), instant]) state = march(laid, load, state, stop);
    return sampleOn(arcAhead(laid, load, state), load, state);
  });
}

const nowhere: Point = { x: 0, y: 0 };

export const frozen = ({ mass, inertia, centre }: MassProperties): MovingMass => ({
  ...{ mass, inertia, place: () => centre, velocity: () => nowhere, acceleration: () => nowhere },
  ...{ turnRate: () => 0, turnAcceleration: () => 0 },
});

/** A body that turns about a chair point by an angle from where `body` says; r from the pivot: φ̇ ẑ×r, φ̈ ẑ×r - φ̇² r. */
export function turningAbout(
  pivot: Point,
  body: MassProperties,
  by: (time: number) => { readonly angle: number; readonly rate: number; readonly acceleration: number },
): MovingMass {
  const arm = (time: number): Point => turn(minus(body.centre, pivot), by(time).angle);
  return {
    ...{ mass: body.mass, inertia: body.inertia },
    place: (time) => plus(pivot, arm(time)),
    velocity: (time) => times(quarter(arm(time)), by(time).rate),
    acceleration: (time) =>
      minus(times(quarter(arm(time)), by(time).acceleration), times(arm(time), by(time).rate ** 2)),
    turnRate: (time) => by(time).rate,
    turnAcceleration: (time) => by(time).acceleration,
  };
}
