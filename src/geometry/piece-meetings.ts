/**
 * Where lines and arcs meet, in closed form, and the place on one that is nearest to a point. Where two pieces run
 * along each other or touch, the ends of the one that lie on the other stand for all they share.
 */
import type { Simple } from './chords.js';
import { fullTurn, withinTurn } from './lean.js';
import { endOf, pointOn, startOf, type Arc, type Line } from './piece.js';
import { cross, distance, dot, minus, plus, times, type Point } from './point.js';

/** Places within `reach` of both. */
export function meetings(a: Simple, b: Simple, reach: number): Point[] {
  const candidates = [...carrierMeetings(a, b), startOf(a), endOf(a), startOf(b), endOf(b)];
  return candidates.filter((place) => distanceTo(a, place) <= reach && distanceTo(b, place) <= reach);
}

export const distanceTo = (piece: Simple, point: Point): number =>
  distance(point, pointOn(piece, nearestOn(piece, point)));

/** The place of a piece nearest to a point, from 0 at its start to 1 at its end. */
export function nearestOn(piece: Simple, point: Point): number {
  if (piece.kind === 'line') {
    const along = minus(piece.to, piece.from);
    const u = dot(minus(point, piece.from), along) / dot(along, along);
    return Math.min(1, Math.max(0, u));
  }
  const out = minus(point, piece.centre);
  const turned = (Math.atan2(out.y, out.x) - piece.start) * Math.sign(piece.sweep);
  const angle = withinTurn(turned, 0);
  const most = Math.abs(piece.sweep);
  if (angle <= most) return angle / most;
  return angle - most < fullTurn - angle ? 1 : 0;
}

function carrierMeetings(a: Simple, b: Simple): Point[] {
  if (a.kind === 'line') return b.kind === 'line' ? linesMeet(a, b) : lineMeetsCircle(a, b);
  return b.kind === 'line' ? lineMeetsCircle(b, a) : circlesMeet(a, b);
}

/** a + s A = b + t B:  s = (b - a) × B / A × B. */
function linesMeet(a: Line, b: Line): Point[] {
  const [alongA, alongB] = [minus(a.to, a.from), minus(b.to, b.from)];
  const s = cross(minus(b.from, a.from), alongB) / cross(alongA, alongB);
  return Number.isFinite(s) ? [plus(a.from, times(alongA, s))] : [];
}

/** The foot of the centre on the line, and half the chord to both sides of it. */
function lineMeetsCircle(line: Line, { centre, radius }: Arc): Point[] {
  const along = times(minus(line.to, line.from), 1 / distance(line.from, line.to));
  const foot = plus(line.from, times(along, dot(minus(centre, line.from), along)));
  return bothSides(foot, along, radius ** 2 - distance(foot, centre) ** 2);
}

/** The common chord lies a = (d² + R₁² - R₂²) / 2d from the first centre. */
function circlesMeet(first: Arc, second: Arc): Point[] {
  const apart = minus(second.centre, first.centre);
  const d = Math.hypot(apart.x, apart.y);
  if (d === 0) return [];
  const a = (d ** 2 + first.radius ** 2 - second.radius ** 2) / (2 * d);
  const foot = plus(first.centre, times(apart, a / d));
  return bothSides(foot, { x: -apart.y / d, y: apart.x / d }, first.radius ** 2 - a ** 2);
}

/** Below zero they may still touch but for rounding: then the foot stands for the place. */
function bothSides(foot: Point, along: Point, halfChordSquared: number): Point[] {
  const half = Math.sqrt(Math.max(0, halfChordSquared));
  return [plus(foot, times(along, half)), minus(foot, times(along, half))];
}
