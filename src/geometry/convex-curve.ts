/**
 * Ellipse arcs and cubics cut where they bend to the other side, where their curvature is extreme and at quarter turns:
 * on each cut the tangent turns one way only, by at most 90°, and the curvature only grows or only falls.
 *
 * Such a cut carries the hull for the directions d of its outward normals, where p'(t)·d = 0: closed form for both,
 *
 *     ellipse arc   tan t = (B·d)/(A·d)
 *     cubic         a quadratic equation in t
 */
import { integrate } from '../numeric/integrate.js';
import { signChanges } from '../numeric/root.js';
import { fullTurn } from './lean.js';
import type { Cubic, EllipseArc } from './piece.js';
import { cross, dot, minus, plus, times, type Point } from './point.js';

export interface ConvexCurve {
  readonly form: CurveForm;
  /** Range of its parameter: an ellipse arc's angle t, a cubic's t from 0 to 1. */
  readonly start: number;
  readonly end: number;
  /** Leans over which it carries, from < to. */
  readonly from: number;
  readonly to: number;
}

/** An ellipse arc as drawn, or the coefficients of p = c0 + c1 t + c2 t² + c3 t³ of a cubic. */
type CurveForm =
  | EllipseArc
  | {
      readonly kind: 'powers';
      readonly c0: Point;
      readonly c1: Point;
      readonly c2: Point;
      readonly c3: Point;
    };
type Powers = Extract<CurveForm, { kind: 'powers' }>;

export function convexCurves(curve: EllipseArc | Cubic): ConvexCurve[] {
  const form = curve.kind === 'cubic' ? powersOf(curve) : curve;
  const cuts = form.kind === 'powers' ? cubicCuts(form) : ellipseCuts(form);
  const pieces = cuts.slice(1).map((end, i) => carrying(form, cuts[i]!, end));
  return pieces.filter((piece) => piece !== null);
}

function powersOf({ from, control1, control2, to }: Cubic): Powers {
  return {
    kind: 'powers',
    c0: from,
    c1: times(minus(control1, from), 3),
    c2: times(plus(minus(control2, times(control1, 2)), from), 3),
    c3: plus(minus(to, from), times(minus(control1, control2), 3)),
  };
}

export function placeAt(form: CurveForm, t: number): Point {
  if (form.kind === 'powers') {
    const { c0, c1, c2, c3 } = form;
    return {
      x: c0.x + t * (c1.x + t * (c2.x + t * c3.x)),
      y: c0.y + t * (c1.y + t * (c2.y + t * c3.y)),
    };
  }
  const { centre, axisA, axisB } = form;
  const [cos, sin] = [Math.cos(t), Math.sin(t)];
  return { x: centre.x + axisA.x * cos + axisB.x * sin, y: centre.y + axisA.y * cos + axisB.y * sin };
}

/** p(b) - p(a), without cancellation for parameters near each other. */
export function wayBetween(form: CurveForm, a: number, b: number): Point {
  const step = b - a;
  if (form.kind === 'powers') {
    const { c1, c2, c3 } = form;
    const [first, second] = [a + b, a * a + a * b + b * b];
    return {
      x: step * (c1.x + first * c2.x + second * c3.x),
      y: step * (c1.y + first * c2.y + second * c3.y),
    };
  }
  const { axisA, axisB } = form;
  const chord = 2 * Math.sin(step / 2);
  const middle = (a + b) / 2;
  const [cos, sin] = [chord * Math.cos(middle), chord * Math.sin(middle)];
  return { x: axisB.x * cos - axisA.x * sin, y: axisB.y * cos - axisA.y * sin };
}

/** p' */
function velocity(form: CurveForm, t: number): Point {
  if (form.kind === 'powers') {
    const { c1, c2, c3 } = form;
    return { x: c1.x + t * (2 * c2.x + t * 3 * c3.x), y: c1.y + t * (2 * c2.y + t * 3 * c3.y) };
  }
  const { axisA, axisB } = form;
  const [cos, sin] = [Math.cos(t), Math.sin(t)];
  return { x: axisB.x * cos - axisA.x * sin, y: axisB.y * cos - axisA.y * sin };
}

/** p'' */
function acceleration(form: CurveForm, t: number): Point {
  if (form.kind === 'powers') {
    const { c2, c3 } = form;
    return { x: 2 * c2.x + 6 * t * c3.x, y: 2 * c2.y + 6 * t * c3.y };
  }
  return minus(form.centre, placeAt(form, t));
}

/** Quarter turns of the parameter are where an ellipse's curvature is extreme. */
function ellipseCuts({ start, sweep }: EllipseArc): number[] {
  const [low, high] = [Math.min(start, start + sweep), Math.max(start, start + sweep)];
  const quarter = Math.PI / 2;
  const inner: number[] = [];
  for (let k = Math.ceil(low / quarter); k * quarter < high; k++)
    if (k * quarter > low) inner.push(k * quarter);
  return [low, ...inner, high];
}

/** A cubic has at most 2 inflections and 5 extremes of curvature; 64 steps tell them apart. */
const steps = 64;

function cubicCuts(cubic: Powers): number[] {
  const { c3 } = cubic;
  const bend = (t: number): number => cross(velocity(cubic, t), acceleration(cubic, t));
  // d/dt of (p' × p'')/|p'|³ has the sign of (p' × p''')(p'·p') - 3 (p' × p'')(p'·p'').
  const change = (t: number): number => {
    const v = velocity(cubic, t);
    return cross(v, times(c3, 6)) * dot(v, v) - 3 * bend(t) * dot(v, acceleration(cubic, t));
  };
  const inner = [...signChanges(bend, 0, 1, steps), ...signChanges(change, 0, 1, steps)];
  return quartered(cubic, [0, ...inner.sort((a, b) => a - b), 1]);
}

/** Cuts added until no piece turns by more than 90°. */
function quartered(cubic: Powers, cuts: readonly number[]): number[] {
  return cuts.flatMap((cut, i) => {
    const next = cuts[i + 1];
    if (next === undefined) return [cut];
    const count = Math.ceil(Math.abs(turning(cubic, cut, next)) / (Math.PI / 2));
    return Array.from(
      { length: Math.max(count, 1) },
      (_, k) => cut + ((next - cut) * k) / Math.max(count, 1),
    );
  });
}

/** Turn of the tangent between two parameters of one bend, added up over steps of less than half a turn. */
function turning(form: CurveForm, start: number, end: number): number {
  const parts = 8;
  let turn = 0;
  let before = tangentAt(form, start, end);
  for (let i = 1; i <= parts; i++) {
    const here = tangentAt(form, start + ((end - start) * i) / parts, i === parts ? start : end);
    turn += Math.atan2(cross(before, here), dot(before, here));
    before = here;
  }
  return turn;
}

/** p', or where it vanishes (a control point on its end) the direction of p'' towards the inside. */
function tangentAt(form: CurveForm, t: number, inside: number): Point {
  const v = velocity(form, t);
  const a = acceleration(form, t);
  if (dot(v, v) > vanishing * dot(a, a)) return v;
  return times(a, Math.sign(inside - t));
}

/** A speed this small against the acceleration (squares) is rounding of zero. */
const vanishing = 1e-24;

/** Leans of the outward normals: -angle(p') where it bends to the left, half a turn on where it bends to the right. */
function carrying(form: CurveForm, start: number, end: number): ConvexCurve | null {
  const turn = turning(form, start, end);
  if (Math.abs(turn) < straight) return null;
  const tangent = tangentAt(form, start, end);
  const first = -Math.atan2(tangent.y, tangent.x) + (turn > 0 ? 0 : Math.PI);
  const from = turn > 0 ? first - turn : first;
  return { form, start, end, from, to: from + Math.abs(turn) };
}

/** What turns by less than this is a line; its ends carry the hull. */
const straight = 1e-9;

/** t where the normal faces down at this lean. */
export function parameterAt({ form, start, end }: ConvexCurve, lean: number): number {
  const down = { x: -Math.sin(lean), y: -Math.cos(lean) };
  if (form.kind === 'powers') return cubicParameter(form, down, start, end);
  const t = Math.atan2(dot(form.axisB, down), dot(form.axisA, down));
  const middle = (start + end) / 2;
  return clamped(t + fullTurn * Math.round((middle - t) / fullTurn), start, end);
}

/** The root of p'·d = 0 on [start, end]; of two the one nearer to it. */
function cubicParameter({ c1, c2, c3 }: Powers, down: Point, start: number, end: number): number {
  const [a, half, c] = [3 * dot(c3, down), dot(c2, down), dot(c1, down)];
  const root = Math.sqrt(Math.max(half * half - a * c, 0));
  const q = half < 0 ? root - half : -(half + root);
  const [one, two] = [q / a, c / q];
  const outside = (t: number): number => (Number.isFinite(t) ? Math.max(start - t, t - end, 0) : Infinity);
  return clamped(outside(one) < outside(two) ? one : two, start, end);
}

const clamped = (t: number, low: number, high: number): number => Math.min(Math.max(t, low), high);

/** ρ = |p'|³ / |p' × p''|, metres; 0 at a cusp. */
export function curvatureRadius(form: CurveForm, t: number): number {
  const v = velocity(form, t);
  const speed2 = dot(v, v);
  return speed2 === 0 ? 0 : (speed2 * Math.sqrt(speed2)) / Math.abs(cross(v, acceleration(form, t)));
}

/** Length between the places at two leans, metres: ∫ |p'| dt, even where ρ has no bound (a flex at an end). */
export function lengthOver(curve: ConvexCurve, from: number, to: number): number {
  const speed = (t: number): number => {
    const v = velocity(curve.form, t);
    return Math.sqrt(dot(v, v));
  };
  const length = Math.abs(integrate(speed, parameterAt(curve, from), parameterAt(curve, to)));
  return to < from ? -length : length;
}
