/** The shape of a running surface: its flats, its corners, and the changes of radius that are felt as a bump. */
import { radiusOn, type HullElement } from './hull-element.js';
import { fullTurn } from './lean.js';
import { elementOf, indexAt, lengthOn, type Profile } from './profile.js';
import type { RunningSurface } from './running-surface.js';

/** A short run of the surface of nearly one radius: an arc, a corner (radius 0), or a slice of a curve or of a mean. */
interface Run {
  readonly radius: number;
  /** Turn of the surface on it, radians. */
  readonly turn: number;
  readonly length: number;
  /** Length of the flat between it and the next run, metres. */
  readonly flatAfter: number;
}

export interface SurfaceShape {
  /** Longest flat, metres; 0 without one. */
  readonly flatLongest: number;
  /** Turn of the sharpest corner that is rolled over, radians; 0 without one. */
  readonly sharpestCorner: number;
  /** Largest relative change of radius that is undone again within 50 mm. */
  readonly radiusJump: number;
}

export function surfaceShape(profile: Profile, surface: RunningSurface): SurfaceShape {
  const runs = runsOf(profile, surface);
  const corners = runs.filter(({ radius }) => radius === 0);
  return {
    flatLongest: Math.max(0, ...runs.map(({ flatAfter }) => flatAfter)),
    sharpestCorner: Math.max(0, ...corners.map(({ turn }) => turn)),
    radiusJump: radiusJump(runs),
  };
}

/** A turn below this is rounding, or at an end the corner where the surface ends: no run of its own, its flat goes on. */
const narrowest = 1e-9;

function runsOf(profile: Profile, { nose, tail }: RunningSurface): Run[] {
  const first = indexAt(profile, nose.lean + narrowest);
  const begun = lengthOn(profile, first, nose.lean);
  // A surface that begins on a flat begins with what is left of it.
  const found: Run[] = [{ radius: 0, turn: 0, length: 0, flatAfter: begun - nose.length }];
  for (let index = first; ; index++) {
    const { element, turns } = elementOf(profile, index);
    const turned = turns * fullTurn;
    const from = Math.max(element.from, nose.lean - turned);
    const to = Math.min(element.to, tail.lean - turned);
    if (to - from > narrowest) found.push(...runsOn(element, from, to));
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

function runsOn(element: HullElement, from: number, to: number): Run[] {
  if (element.kind === 'round') return [runOf(element.radius, to - from)];
  // The extremes of a curve's radius are at its ends, so those are looked at: half a slice each, whole ones between.
  const slice = (to - from) / slices;
  return Array.from({ length: slices + 1 }, (_, i) =>
    runOf(radiusOn(element, from + i * slice), i === 0 || i === slices ? slice / 2 : slice),
  );
}

const runOf = (radius: number, turn: number): Run => ({ radius, turn, length: radius * turn, flatAfter: 0 });

/** A change of radius that is undone farther off than this is the shape of the runner, not a bump (the contract's figure). */
const feltWithin = 0.05;

/**
 * For every arc k with arcs i before and j after it, i's end and j's beginning at most 50 mm apart, and both radii
 * on the same side of k's: the smaller of |R_k - R_i|/R_i and |R_k - R_j|/R_j. Flats and corners have measures of
 * their own; a bump is a change among the arcs.
 */
function radiusJump(runs: readonly Run[]): number {
  let place = 0;
  const arcs = runs
    .map(({ radius, length, flatAfter }) => {
      const from = place;
      const to = from + length;
      place = to + flatAfter;
      return { radius, from, to };
    })
    .filter(({ radius }) => radius > 0);
  let largest = 0;
  for (let i = 0; i + 2 < arcs.length; i++) {
    // Of all arcs between two, the flattest and the tightest stand out most.
    let [tightest, flattest] = [Infinity, 0];
    for (let j = i + 2; j < arcs.length && arcs[j]!.from - arcs[i]!.to <= feltWithin; j++) {
      tightest = Math.min(tightest, arcs[j - 1]!.radius);
      flattest = Math.max(flattest, arcs[j - 1]!.radius);
      for (const radius of [tightest, flattest])
        largest = Math.max(largest, undone(arcs[i]!.radius, radius, arcs[j]!.radius));
    }
  }
  return largest;
}

function undone(before: number, here: number, after: number): number {
  const [rise, fall] = [(here - before) / before, (here - after) / after];
  return rise * fall > 0 ? Math.min(Math.abs(rise), Math.abs(fall)) : 0;
}
