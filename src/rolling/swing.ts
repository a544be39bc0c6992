/**
 * A free swing: let go at a lean, rolled through the rest to its turning point on the other side and back, no loss
 * but at flats. Kinetic energy is kept as a height, e = (kinetic energy)/(m g).
 */
import type { MassProperties } from '../mass.js';
import { indexAt } from '../geometry/profile.js';
import type { RunningSurface } from '../geometry/running-surface.js';
import { maximum } from '../numeric/maximum.js';
import { missing, isMissing, type Missing, type OrMissing } from '../numeric/missing.js';
import { flatImpact, type FlatImpact } from './flat-impact.js';
import { flatLength } from './flat-length.js';
import { floorForceAt } from './floor-force.js';
import { heightOn, slopeOn, stretchAt, type Landscape } from './landscape.js';
import { energyAt, passOver, timeOver, turnBefore, wholeSwing, type Pass } from './rolling-time.js';

export interface Swing {
  /** Lean at which it is let go, radians. */
  readonly release: number;
  /** From release to the next turning point on the same side, seconds. */
  readonly period: number;
  /** Lean of the turning point on the other side, and of the next one on the side of release, radians. */
  readonly turns: readonly [number, number];
  /** What was rolled over, in order. */
  readonly parts: readonly SwingPart[];
  readonly impacts: readonly FlatImpact[];
}

export interface SwingPart {
  readonly pass: Pass;
  /** Lean where it leaves the stretch or turns back. */
  readonly to: number;
}

type HalfSwing = Omit<Swing, 'release' | 'period' | 'turns'> & {
  readonly time: number;
  readonly turn: number;
};

/**
 * @param rest lean of the rest that it swings about, radians
 * @param release lean at which it is let go, radians
 */
export function freeSwing(
  landscape: Landscape,
  surface: RunningSurface,
  { mass, inertia }: MassProperties,
  rest: number,
  release: number,
): OrMissing<Swing> {
  if (release === rest) return missing('let go at rest');
  const roll = (from: number): OrMissing<HalfSwing> =>
    halfSwing(landscape, surface, inertia / mass, from, from > rest ? -1 : 1);
  const there = beyondEnd(surface, release) ?? roll(release);
  if (isMissing(there)) return there;
  if ((there.turn - rest) * (release - rest) >= 0) return missing('turns back before it reaches its rest');
  const back = there.impacts.length === 0 ? { ...there, turn: release } : roll(there.turn);
  if (isMissing(back)) return back;
  return {
    release,
    period: there.time + back.time,
    turns: [there.turn, back.turn],
    parts: back.impacts.length === 0 ? there.parts : [...there.parts, ...back.parts],
    impacts: [...there.impacts, ...back.impacts],
  };
}

function beyondEnd({ nose, tail }: RunningSurface, lean: number): Missing | null {
  if (lean > tail.lean) return passes('tail');
  return lean < nose.lean ? passes('nose') : null;
}

/** Of a motion that goes on past a lean. */
function pastEnd({ nose, tail }: RunningSurface, lean: number, sense: 1 | -1): Missing | null {
  if (sense > 0) return lean >= tail.lean ? passes('tail') : null;
  return lean <= nose.lean ? passes('nose') : null;
}

const passes = (end: 'nose' | 'tail'): Missing => missing(`the swing passes the ${end} end of the rockers`);

/** From a standstill at `release` to the next turning point. */
function halfSwing(
  landscape: Landscape,
  surface: RunningSurface,
  gyration2: number,
  release: number,
  sense: 1 | -1,
): OrMissing<HalfSwing> {
  const parts: SwingPart[] = [];
  const impacts: FlatImpact[] = [];
  let [index, from, energy, time] = [startIndex(landscape, release, sense), release, 0, 0];
  if (slopeOn(stretchAt(landscape, index), release) * sense >= 0)
    return missing('let go past the point of no return');
  // No swing goes round twice: rather a fault than a loop without end.
  while (parts.length <= 2 * landscape.stretches.length) {
    const pass = passOver(stretchAt(landscape, index), gyration2, from, energy);
    const end = sense > 0 ? pass.stretch.to : pass.stretch.from;
    const turn = turnBefore(pass, end);
    parts.push({ pass, to: turn ?? end });
    time +=
      parts.length === 1 && turn !== null
        ? halfAlone(pass, turn)
        : timeOver(pass, turn ?? end, turn !== null);
    if (turn !== null) return beyondEnd(surface, turn) ?? { time, turn, parts, impacts };
    const past = pastEnd(surface, end, sense);
    if (past !== null) return past;
    energy = Math.max(energyAt(pass, end), 0);
    const next = stretchAt(landscape, index + sense);
    const flat = sense > 0 ? pass.stretch.flatAfter : next.flatAfter;
    if (flat > 0) {
      const [left, met] = [slopeOn(pass.stretch, end), slopeOn(next, end)];
      const impact = flatImpact(gyration2, heightOn(pass.stretch, end), left, met);
      if (impact.speedRatio <= 0) return missing(`stops on a flat ${flatLength(flat)} long`);
      impacts.push(impact);
      energy *= impact.energyKept;
    }
    [index, from] = [index + sense, end];
  }
  throw new RangeError(`halfSwing: let go at ${release} it never turns back`);
}

/** The stretch that is rolled over first; at a joint the one on the side it rolls to. */
export function startIndex(landscape: Landscape, release: number, sense: 1 | -1): number {
  const index = indexAt(landscape.profile, release);
  return sense < 0 && release <= stretchAt(landscape, index).from ? index - 1 : index;
}

/** Half a swing that one stretch holds whole. */
const halfAlone = (pass: Pass, turn: number): number =>
  pass.stretch.kind === 'round'
    ? wholeSwing(pass.stretch, pass.gyration2, pass.entry) / 2
    : timeOver(pass, turn, true);

export interface SwingForces {
  /** Largest |F|/N, both one-sided values at joints, and the grip that flats ask for. */
  readonly frictionDemand: number;
  /** Least N over weight; not positive: it leaves the floor. */
  readonly leastFloorForce: number;
}

/** What a swing asks of the floor. */
export function swingForces({ parts, impacts }: Swing): SwingForces {
  let frictionDemand = 0;
  let leastFloorForce = Infinity;
  for (const { grip } of impacts) frictionDemand = Math.max(frictionDemand, grip);
  for (const { pass, to } of parts) {
    const lightness = (lean: number): number => -floorForceAt(pass, lean).normal;
    const demand = (lean: number): number => {
      const { along, normal } = floorForceAt(pass, lean);
      return Math.abs(along) / normal;
    };
    leastFloorForce = Math.min(leastFloorForce, -maximum(lightness, pass.entry, to, samples));
    if (leastFloorForce > 0)
      frictionDemand = Math.max(frictionDemand, maximum(demand, pass.entry, to, samples));
  }
  return { frictionDemand, leastFloorForce };
}

/** Both have their one hill on a stretch at an end or well inside it. */
const samples = 4;
