/**
 * Rockers unlike on both sides: the profile of the plane half-way between them, whose height over the floor is the
 * mean of both sides' heights.
 *
 *     S = (S₁ + S₂)/2      p = (p₁ + p₂)/2      ρ = (ρ₁ + ρ₂)/2        each for the same θ
 *
 * It is the Minkowski mean of both hulls: of two arcs the arc about the middle of their centres with their mean radius
 * (a corner is an arc of radius 0), of flats alike in direction the flat of their mean length, of a flat on one side
 * only a flat half as long. To first order in the tilt (S₁ - S₂)/w from side to side.
 */
import type { ConvexCurve } from './convex-curve.js';
import { radiusOn, type HullCarrier, type HullElement } from './hull-element.js';
import { fullTurn, withinTurn } from './lean.js';
import { midpoint, type Point } from './point.js';
import { elementAt, profileFrom, type Profile } from './profile.js';

/**
 * Each element belongs to the body that touches on the left: there is one running surface, so one side has to name it,
 * and equal sides keep their names. Where the right rocker ends is the right profile's own affair (`meanSurface`).
 */
export function meanProfile(left: Profile, right: Profile): Profile {
  const cuts = commonStarts(left, right);
  const end = left.elements.at(-1)!.to;
  const elements = cuts.flatMap((from, i) => {
    const to = cuts[i + 1] ?? end;
    const middle = (from + to) / 2;
    return split({ ...meanOf(elementAt(left, middle), elementAt(right, middle)), from, to });
  });
  return profileFrom(elements);
}

/**
 * Starts closer than this, radians, are one: flats of both sides in one direction differ by the rounding of a meeting
 * (1e-15), and a stretch left out moves S by less than 1e-12 m.
 */
const sliver = 1e-12;

/** The leans at which an element of either side begins, over the turn from the first of the left. */
function commonStarts(left: Profile, right: Profile): number[] {
  const first = left.starts[0]!;
  const own = Array.from(left.starts);
  const far = (lean: number): boolean =>
    own.every((start) => Math.abs(lean - start) > sliver) && lean < first + fullTurn - sliver;
  const others = Array.from(right.starts, (start) => withinTurn(start, first)).filter(far);
  return [...own, ...others].sort((a, b) => a - b);
}

function meanOf(left: HullElement, right: HullElement): HullCarrier {
  const { owner } = left;
  if (left.kind === 'round' && right.kind === 'round')
    return {
      kind: 'round',
      centre: midpoint(left.centre, right.centre),
      radius: (left.radius + right.radius) / 2,
      owner,
    };
  if (left.kind === 'curve' && right.kind === 'curve' && sameCurve(left.curve, right.curve))
    return { kind: 'curve', curve: left.curve, owner };
  return { kind: 'mean', left, right, owner };
}

/** Two cuts of the same curve drawn twice. */
function sameCurve(a: ConvexCurve, b: ConvexCurve): boolean {
  if (a === b) return true;
  const [one, two] = [placesOf(a), placesOf(b)];
  return (
    a.start === b.start &&
    a.end === b.end &&
    a.form.kind === b.form.kind &&
    one.every(({ x, y }, i) => x === two[i]!.x && y === two[i]!.y)
  );
}

const placesOf = ({ form }: ConvexCurve): Point[] =>
  form.kind === 'powers' ? [form.c0, form.c1, form.c2, form.c3] : [form.centre, form.axisA, form.axisB];

/** A curve's radius only grows or only falls; the mean of one that grows and one that falls has an extreme or a few. */
const steps = 16;

/** A mean cut near its extremes of radius, so that between cuts it grows or falls like any other curve. */
function split(element: HullElement): HullElement[] {
  if (element.kind !== 'mean') return [element];
  const { from, to } = element;
  const leans = Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);
  const radii = leans.map((lean) => radiusOn(element, lean));
  const rises = (i: number): number => radii[i + 1]! - radii[i]!;
  const cuts = leans.slice(1, -1).filter((_, i) => rises(i) * rises(i + 1) < 0);
  return [from, ...cuts].map((cut, i) => ({ ...element, from: cut, to: cuts[i] ?? to }));
}
