/** What a run through a script asks of the floor, and how lightly the chair stands at its lightest. */
import { oneStep, type OdePoint, type State } from '../numeric/ode.js';
import { g } from './gravity.js';
import { floorReaction, rateFrom, type FloorReaction } from './moving-masses.js';
import { rateAlong } from './roll-leg.js';
import { rollingMass } from './script.js';
import { footIn, pointOf, sumsOn, type Course, type Leg, type Place } from './scripted-place.js';
import type { ScriptedRun } from './scripted-roll.js';

export interface RunForces {
  /** Largest |F|/N, both one-sided values at joints, and the grip that flats ask for; infinite where it leaves the floor. */
  readonly frictionDemand: number;
  /** Least N over the weight of what rolls; 0: it leaves the floor. */
  readonly leastFloorForce: number;
}

/** Looked at so often between two points of a leg: steps are tenths of a second at most, forces have fewer hills. */
const between = 4;
/** A hill whose top, as three samples have it, is lower than the highest by more than this share of the spread is none. */
const near = 0.02;

export function runForces(course: Course, run: ScriptedRun): RunForces {
  const weight = rollingMass(course.script) * g;
  const demand: Read = ({ normal, along }) => Math.abs(along) / normal;
  const lightness: Read = ({ normal }) => -normal / weight;
  const felt = run.legs.map((leg) => feltAlong(course, leg));
  const atEnd = reactionAt(course, run.end, pointOf(run.end));
  const largest = (read: Read): number => {
    const all = felt.map((legs) => legs.map(({ time, reaction }) => ({ time, value: read(reaction) })));
    return largestOf(course, run.legs, all, read, read(atEnd));
  };
  return {
    frictionDemand: run.leavesFloor ? Infinity : Math.max(run.grip, largest(demand)),
    leastFloorForce: run.leavesFloor ? 0 : -largest(lightness),
  };
}

type Read = (reaction: FloorReaction) => number;

/** The floor's reaction at a point of the leg that begins at a place. */
export function reactionAt(course: Course, from: Place, { time, state }: OdePoint): FloorReaction {
  const sums = sumsOn(course, from.index, state[0]!, time);
  const foot = footIn(course, from);
  if (from.stands) return floorReaction(sums, 0, state[2]!, foot, 0);
  return floorReaction(sums, rateFrom(sums, state[1]!), state[2]!, foot);
}

interface Felt {
  readonly time: number;
  readonly reaction: FloorReaction;
}

/** At the points of a leg exactly, between them near enough to find hills by. */
function feltAlong(course: Course, leg: Leg): Felt[] {
  const at = (point: OdePoint): Felt => ({ time: point.time, reaction: reactionAt(course, leg.from, point) });
  if (leg.from.stands) return leg.points.map(at);
  const rate = rateAlong(course, leg.from.index, footIn(course, leg.from));
  const slopes = leg.points.map(({ time, state }) => rate(time, state));
  return leg.points.flatMap((point, k) => {
    const next = leg.points[k + 1];
    if (next === undefined) return [at(point)];
    return [at(point), ...interpolated(point, slopes[k]!, next, slopes[k + 1]!).map(at)];
  });
}

/** States between two, by the cubic that has their values and their slopes (Hermite). */
function interpolated(a: OdePoint, slopeA: State, b: OdePoint, slopeB: State): OdePoint[] {
  const h = b.time - a.time;
  return Array.from({ length: between - 1 }, (_, i) => {
    const s = (i + 1) / between;
    const state = a.state.map((value, k) => {
      const [rise, atA, atB] = [b.state[k]! - value, h * slopeA[k]!, h * slopeB[k]!];
      return value + s * (atA + s * (3 * rise - 2 * atA - atB + s * (atA + atB - 2 * rise)));
    });
    return { time: a.time + s * h, state };
  });
}

interface Sample {
  readonly time: number;
  readonly value: number;
}

/** Samples find the hills, and those that may be the highest are climbed. */
function largestOf(
  course: Course,
  legs: readonly Leg[],
  samples: readonly (readonly Sample[])[],
  read: Read,
  atEnd: number,
): number {
  const values = samples.flatMap((leg) => leg.map(({ value }) => value));
  const highest = Math.max(atEnd, ...values);
  const floor = highest - near * (highest - Math.min(atEnd, ...values));
  const climbs = legs.flatMap((leg, i) =>
    leg.from.stands ? [] : topsAmong(samples[i]!, floor).map((top) => climbed(course, leg, top, read)),
  );
  return Math.max(highest, ...climbs);
}

interface Top {
  readonly time: number;
  /** How far the samples beside it are, seconds. */
  readonly reach: number;
}

/** Where the parabola through a sample and its neighbours has its top, as high as a floor. */
function topsAmong(samples: readonly Sample[], floor: number): Top[] {
  return samples.slice(1, -1).flatMap((here, i) => {
    const [before, after] = [samples[i]!, samples[i + 2]!];
    if (!(here.value >= before.value && here.value >= after.value)) return [];
    const reach = Math.max(here.time - before.time, after.time - here.time);
    const bend = before.value - 2 * here.value + after.value;
    const off = bend < 0 ? (before.value - after.value) / (2 * bend) : 0;
    const height = here.value - (bend * off * off) / 2;
    return height >= floor ? [{ time: here.time + off * reach, reach }] : [];
  });
}

/** The first parabola is off by its reach squared; twice as narrow by a sixteenth each brings the top to 1e-12. */
const rounds = 2;
const narrower = 1 / 16;

function climbed(course: Course, leg: Leg, top: Top, read: Read): number {
  const rate = rateAlong(course, leg.from.index, footIn(course, leg.from));
  const [first, end] = [leg.points[0]!.time, leg.points.at(-1)!.time];
  const within = (time: number, margin: number): number =>
    Math.min(Math.max(time, first + margin), end - margin);
  const at = (time: number): number => {
    const before = leg.points.findLast((point) => point.time <= time) ?? leg.points[0]!;
    const point = time === before.time ? before : oneStep(rate, before, time - before.time).to;
    return read(reactionAt(course, leg.from, point));
  };
  let [time, best] = [top.time, -Infinity];
  let reach = Math.min(top.reach, (end - first) / 2);
  for (let round = 0; round < rounds; round++) {
    reach *= narrower;
    const centre = within(time, reach);
    const [left, here, right] = [at(centre - reach), at(centre), at(centre + reach)];
    const bend = left - 2 * here + right;
    const off = bend < 0 ? (left - right) / (2 * bend) : Math.sign(right - left);
    best = Math.max(best, left, here, right);
    time = centre + reach * Math.min(Math.max(off, -1 / narrower), 1 / narrower);
  }
  return Math.max(best, at(within(time, 0)));
}
