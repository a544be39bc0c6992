/** A running surface in short runs, from its nose end to its tail end: arcs, corners, slices of curves, and the flats between. */
import { contactOn, radiusOn, type HullElement } from './hull-element.js';
import { fullTurn } from './lean.js';
import { distance } from './point.js';
import { elementOf, indexAt, lengthOn, type Profile } from './profile.js';
import type { RunningSurface } from './running-surface.js';

/** A short run of the surface of nearly one radius: an arc, a corner (radius 0), or a slice of a curve or of a mean. */
export interface Run {
  readonly radius: number;
  /** Turn of the surface on it, radians. */
  readonly turn: number;
  readonly length: number;
  /** Lean at its end towards the tail, radians. */
  readonly until: number;
  /** Length of the flat between it and the next run, metres. */
  readonly flatAfter: number;
}

/** A turn below this is rounding, or at an end the corner where the surface ends: no run of its own, its flat goes on. */
const narrowest = 1e-9;

export function runsOf(profile: Profile, { nose, tail }: RunningSurface): Run[] {
  const first = indexAt(profile, nose.lean + narrowest);
  const begun = lengthOn(profile, first, nose.lean);
  // A surface that begins on a flat begins with what is left of it.
  const found: Run[] = [{ ...runOf(0, 0, nose.lean), flatAfter: begun - nose.length }];
  for (let index = first; ; index++) {
    const { element, turns } = elementOf(profile, index);
    const turned = turns * fullTurn;
    const from = Math.max(element.from, nose.lean - turned);
    const to = Math.min(element.to, tail.lean - turned);
    if (to - from > narrowest) found.push(...runsOn(element, from, to, turned));
    const last = found.pop()!;
    const place = lengthOn(profile, index, Math.max(from, to) + turned);
    const flat = profile.flatAfter[index - turns * profile.elements.length]!;
    const flatAfter = Math.max(0, Math.min(flat, tail.length - place));
    found.push({ ...last, flatAfter: last.flatAfter + flatAfter });
    if (element.to + turned >= tail.lean) return found;
  }
}

/** Slices of a curve are told apart finer than the 50 mm within which a bump is felt. */
const slices = 32;

function runsOn(element: HullElement, from: number, to: number, turned: number): Run[] {
  if (element.kind === 'round') return [runOf(element.radius, to - from, to + turned)];
  // The extremes of a curve's radius are at its ends, so those are looked at: half a slice each, whole ones between.
  const slice = (to - from) / slices;
  return Array.from({ length: slices + 1 }, (_, i) => {
    const begun = Math.max(from, from + (i - 1 / 2) * slice);
    const until = Math.min(to, from + (i + 1 / 2) * slice);
    const run = runOf(radiusOn(element, from + i * slice), until - begun, until + turned);
    // Its radius there times its turn would be off where the radius changes fast: as long as an arc over its ends.
    const chord = distance(contactOn(element, begun), contactOn(element, until));
    return { ...run, length: (chord * run.turn) / (2 * Math.sin(run.turn / 2)) };
  });
}

const runOf = (radius: number, turn: number, until: number): Run => ({
  radius,
  turn,
  until,
  length: radius * turn,
  flatAfter: 0,
});
