/**
 * Ellipse arcs and cubics cut where they bend to the other side, where their curvature is extreme and where they run
 * level or plumb: between two cuts the tangent turns one way only, by at most 90°, and the curvature only grows or falls.
 *
 * Such a cut carries the hull for the directions d of its outward normals, where p'(t)·d = 0: closed form for both,
 *
 *     ellipse arc   tan t = (B·d)/(A·d)
 *     cubic         a quadratic equation in t
 */
import { integrate } from '../numeric/integrate.js';
import { rootBetween, signChanges } from '../numeric/root.js';
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

/** The cuts that turn, and the places where it is cut: those are points of the hull like any other. */
export function convexCurves(curve: EllipseArc | Cubic): { curves: ConvexCurve[]; places: Point[] } {
  const form = curve.kind === 'cubic' ? powersOf(curve) : curve;
  const cuts = form.kind === 'powers' ? cubicCuts(form) : ellipseCuts(form);
  const bent = cuts.slice(1).flatMap((end, i) => bentPart(form, cuts[i]!, end) ?? []);
  const trimmed = bent.flatMap(({ start, end }) => [start, end]).filter((cut) => !cuts.includes(cut));
  return {
    curves: bent.flatMap(({ start, end }) => carrying(form, start, end) ?? []),
    places: [...cuts.slice(1, -1), ...trimmed].map((cut) => placeAt(form, cut)),
  };
}

/**
 * Metres. Towards a flex, or an end without curvature, a radius grows beyond all bounds: no motion can be followed over it. What
 * is flatter than this is left to the flat between its ends: of a runner some tenths of a millimetre, off by 1e-11 m.
 */
const flattest = 1000;

/** Between two cuts, where its curvature only grows or falls: the part that is not as good as straight; null: none is. */
function bentPart(form: CurveForm, start: number, end: number): { start: number; end: number } | null {
  const bendsMore = (t: number): number => flattest - curvatureRadius(form, t);
  const [first, last] = [bendsMore(start), bendsMore(end)].map((more) => more >= 0);
  if (first && last) return { start, end };
  if (!first && !last) return null;
  const cut = rootBetween((t) => Math.max(-flattest, bendsMore(t)), start, end);
  return first ? { start, end: cut } : { start: cut, end };
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

/** A cubic has at most 5 extremes of curvature. Two nearer together than a step are missed, and do no harm to the hull. */
const steps = 64;

function cubicCuts(cubic: Powers): number[] {
  const { c1, c2, c3 } = cubic;
  // d/dt of (p' × p'')/|p'|³ has the sign of (p' × p''')(p'·p') - 3 (p' × p'')(p'·p'').
  const change = (t: number): number => {
    const [v, a] = [velocity(cubic, t), acceleration(cubic, t)];
    return cross(v, times(c3, 6)) * dot(v, v) - 3 * cross(v, a) * dot(v, a);
  };
  const inner = [
    // p' × p'' = 2 (c1 × c2 + 3 c1 × c3 t + 3 c2 × c3 t²)
    ...quadraticRoots(3 * cross(c2, c3), 3 * cross(c1, c3), cross(c1, c2)),
    ...quadraticRoots(3 * c3.x, 2 * c2.x, c1.x),
    ...quadraticRoots(3 * c3.y, 2 * c2.y, c1.y),
    ...signChanges(change, 0, 1, steps),
  ];
  return [0, ...inner.filter((t) => t > 0 && t < 1).sort((p, q) => p - q), 1];
}

/** Real roots of a t² + b t + c, without cancellation; infinite ones among them. */
function quadraticRoots(a: number, b: number, c: number): [number, number] | [] {
  const discriminant = b * b - 4 * a * c;
  if (discriminant < 0) return [];
  const root = Math.sqrt(discriminant);
  const q = -(b < 0 ? b - root : b + root) / 2;
  return [q / a, c / q];
}

/**
 * p', or where it vanishes (a control point on its end) the way that p'' takes it, of travel from smaller t to larger.
 * `inside`: another parameter of the piece.
 */
function tangentAt(form: CurveForm, t: number, inside: number): Point {
  const v = velocity(form, t);
  const a = acceleration(form, t);
  if (dot(v, v) > vanishing * dot(a, a)) return v;
  return times(a, Math.sign(inside - t));
}

/** A speed this small against the acceleration (squares) is rounding of zero. */
const vanishing = 1e-24;

/**
 * Leans of the outward normals: -angle(p') where it bends to the left, half a turn on where it bends to the right.
 * Between two cuts the tangent stays in one quarter, so it turns the short way from its first direction to its last.
 */
function carrying(form: CurveForm, start: number, end: number): ConvexCurve | null {
  const [first, last] = [tangentAt(form, start, end), tangentAt(form, end, start)];
  const turn = Math.atan2(cross(first, last), dot(first, last));
  if (Math.abs(turn) < straight || Math.abs(turn) > Math.PI - straight) return null;
  const facing = -Math.atan2(first.y, first.x) + (turn > 0 ? 0 : Math.PI);
  const from = turn > 0 ? facing - turn : facing;
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

/**
 * The root of p'·d = 0 on [start, end]; of two the one nearer to it. Both lie on it where p' itself vanishes at an end:
 * the lower place is the contact.
 */
function cubicParameter(cubic: Powers, down: Point, start: number, end: number): number {
  const { c1, c2, c3 } = cubic;
  const [a, b, c] = [3 * dot(c3, down), 2 * dot(c2, down), dot(c1, down)];
  // Rounding may leave a double root without a real one: then it is its middle.
  const roots = quadraticRoots(a, b, c);
  if (roots.length === 0) return clamped(-b / (2 * a), start, end);
  const [one, two] = roots;
  const outside = (t: number): number => (Number.isFinite(t) ? Math.max(start - t, t - end, 0) : Infinity);
  const [beyondOne, beyondTwo] = [outside(one), outside(two)];
  if (beyondOne === 0 && beyondTwo === 0)
    return dot(placeAt(cubic, one), down) > dot(placeAt(cubic, two), down) ? one : two;
  return clamped(beyondOne < beyondTwo ? one : two, start, end);
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
