/** A moving load rolled through its script: what the measures of it are read from. */
import type { Chair } from '../chair/chair.js';
import { tailsScript, type ChildOnTheTails } from '../loads/child-on-the-tails.js';
import { gettingUpScript, type GettingUp } from '../loads/getting-up.js';
import { leaningScript, type LeaningBackHard } from '../loads/leaning-back-hard.js';
import type { MovingScript } from '../loads/load.js';
import { combineMasses, type MassProperties } from '../mass.js';
import type { Point } from '../geometry/point.js';
import { crestsBeside } from '../rolling/balance.js';
import { loadedCentre, stepPeak } from '../rolling/dead-loads.js';
import { floorPlace } from '../rolling/floor-place.js';
import { landscapeOf } from '../rolling/landscape.js';
import { restLean } from '../rolling/rest.js';
import { runForces, type RunForces } from '../rolling/run-forces.js';
import type { Course } from '../rolling/scripted-place.js';
import { rollThrough, turningLeans, type ScriptedRun } from '../rolling/scripted-roll.js';
import type { Sense } from '../rolling/tip.js';

type BothWays = Readonly<Record<Sense, number>>;

export interface Motion {
  readonly course: Course;
  readonly run: ScriptedRun;
  readonly forces: RunForces;
  /** null: it does not. */
  readonly goesOver: Sense | null;
  /** The greatest and the least lean of the run, radians. */
  readonly farthest: BothWays;
  /** The greatest lean once the sitter has left; null: nobody leaves. */
  readonly kick: number | null;
  /** Leans of the points of no return of the pose at the end. */
  readonly crests: BothWays;
}

/** When a run ends at the latest, seconds (the contract's figure). */
const longest = 4;
/** How long the chair is watched alone where somebody takes longer than that to get up: as long as after 1.2 s. */
const alone = 2.8;
/** A fall farther than this from rest is one, crest or none. */
const fallen = Math.PI / 2;

/**
 * @param start mass, centre and inertia of what rolls at the start
 * @param settled lean of the rest that it is counted from
 * @param emptyRest lean of the empty chair at rest; null: it has none
 * @returns null when the pose at the start has no rest
 */
export function moveLoad(
  chair: Chair,
  script: MovingScript,
  start: MassProperties,
  settled: number,
  emptyRest: number | null,
): Motion | null {
  switch (script.kind) {
    case 'leaning-back-hard': {
      const lean = restLean(chair.profile, chair.surface, start.centre);
      return lean === null ? null : motionOf(leaningCourse(chair, script, settled), lean, null);
    }
    case 'getting-up':
      return motionOf(gettingUpCourse(chair, script, settled, emptyRest), settled, script.settings.leaveTime);
    case 'child-on-the-tails':
      return steppedOn(chair, script, settled);
  }
}

function motionOf(course: Course, lean: number, leaveTime: number | null): Motion {
  const run = rollThrough(course, { lean, rate: 0 });
  const leans = turningLeans(run);
  const { back, forward } = course.guards.at(-1)!;
  return {
    course,
    run,
    forces: runForces(course, run),
    goesOver: run.goesOver,
    farthest: { back: Math.max(...leans), forward: Math.min(...leans) },
    kick: leaveTime === null ? null : Math.max(...turningLeans(run, leaveTime)),
    crests: { back, forward },
  };
}

/** The points of no return of a body about a lean, at most a quarter turn from it. */
function crestsOf({ profile }: Chair, centre: Point, lean: number): BothWays {
  const [back, forward] = crestsBeside(landscapeOf(profile, centre), lean);
  return { back: Math.min(back, lean + fallen), forward: Math.max(forward, lean - fallen) };
}

/** @param feetAhead how far ahead of plumb under the knee the feet stand, metres */
export function leaningCourse(chair: Chair, lean: LeaningBackHard, settled: number, feetAhead = 0): Course {
  const ankle = {
    x: floorPlace(chair.profile, lean.knee, settled).x + feetAhead,
    y: lean.ankleHeight,
  };
  const leaned = combineMasses([lean.fixed, lean.trunk]);
  return {
    profile: chair.profile,
    script: leaningScript(lean, ankle),
    guards: [{ from: 0, ...crestsOf(chair, leaned.centre, settled) }],
    until: longest,
    endsFalling: true,
  };
}

/** While the sitter still presses, passing a crest of the chair alone is no fall. */
export function gettingUpCourse(
  chair: Chair,
  up: GettingUp,
  settled: number,
  emptyRest: number | null,
): Course {
  return {
    profile: chair.profile,
    script: gettingUpScript(up),
    guards: [
      { from: 0, back: settled + fallen, forward: settled - fallen },
      { from: up.settings.leaveTime, ...crestsOf(chair, up.chair.centre, emptyRest ?? settled) },
    ],
    until: up.settings.leaveTime < longest ? longest : up.settings.leaveTime + alone,
    endsFalling: false,
  };
}

/** The peak in closed form; the run to it says what it asks of the floor. */
function steppedOn(chair: Chair, { chair: body, load, ...rest }: ChildOnTheTails, settled: number): Motion {
  const { profile } = chair;
  const peak = stepPeak({ profile, body, rest: settled }, load, 'back');
  const crests = crestsOf(chair, loadedCentre(body, [load]), settled);
  const course: Course = {
    profile,
    script: tailsScript({ chair: body, load, ...rest }),
    guards: [{ from: 0, ...crests }],
    until: longest,
    endsFalling: true,
  };
  const rolled = motionOf(course, settled, null);
  return typeof peak === 'string'
    ? { ...rolled, goesOver: peak }
    : { ...rolled, goesOver: null, farthest: { back: peak.peak, forward: settled } };
}
