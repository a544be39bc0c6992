/**
 * The running surface of the mean profile: it ends where the first of both sides' running surfaces ends. Its ends
 * cannot be read off the mean profile itself, where the corner at one rocker's end is rounded by the other's arc.
 */
import { fullTurn } from './lean.js';
import { indexAt, lengthAt, lengthOn, type Profile } from './profile.js';
import type { RunningSurface, SurfaceEnd } from './running-surface.js';

export interface Side {
  readonly profile: Profile;
  readonly surface: RunningSurface;
}

/** Places count along the mean profile, whose lengths from the contact at θ = 0 are the means of both sides'. */
export function meanSurface(mean: Profile, left: Side, right: Side): RunningSurface {
  const end = (name: 'nose' | 'tail', sense: 1 | -1): SurfaceEnd => {
    const leans = [left, right].map(({ surface }) => surface[name].lean * sense);
    const lean = sense * Math.min(...leans);
    const run = (runTo(left, name, lean, sense) + runTo(right, name, lean, sense)) / 2;
    return { lean, length: lengthAt(mean, 0) + run };
  };
  return { owner: left.surface.owner, nose: end('nose', -1), tail: end('tail', 1) };
}

/** Metres along one side from its contact at θ = 0 to its end, or to a lean before that; a flat there not counted. */
function runTo({ profile, surface }: Side, name: 'nose' | 'tail', lean: number, sense: 1 | -1): number {
  const end = surface[name];
  const level = lengthAt(profile, 0);
  if (end.lean === lean) return end.length - level;
  return lengthOn(profile, indexBefore(profile, lean, sense), lean) - level;
}

/** The element that the contact is on when it comes to a lean from θ = 0. */
function indexBefore(profile: Profile, lean: number, sense: 1 | -1): number {
  const index = indexAt(profile, lean);
  const turns = Math.floor(index / profile.starts.length);
  const begins = profile.starts[index - turns * profile.starts.length]! + turns * fullTurn;
  return sense > 0 && lean <= begins ? index - 1 : index;
}
