/** Parts, outlines and extras in SI. */
import type { Drawn } from '../drawing/read/drawn.js';
import type { Asked } from '../drawing/read/outlines.js';
import type { Point } from '../geometry/point.js';
import { metresPer } from '../quantity/units.js';
import type { ExtraInSI, OutlineInSI, PartInSI, RockerArcInSI } from './design.js';
import type { WrittenDesign, WrittenPart } from './schema.js';
import type { Value } from './value.js';

/** The SI number of a value, for the named values of the moment. */
export type InSI = (value: Value) => number;

type WrittenOutline = Exclude<WrittenPart['outline'], readonly unknown[]>;
type WrittenRadius = NonNullable<WrittenOutline['rocker']>['radius'];

export const orNull = (value: Value | null | undefined, si: InSI): number | null =>
  value ? si(value) : null;

export const pointInSI = ([x, y]: readonly [Value, Value], si: InSI): Point => ({ x: si(x), y: si(y) });

/** A line from one named end to the other. */
export function lineInSI<End extends string>(
  line: Readonly<Record<End, readonly [Value, Value]>>,
  ends: readonly [End, End],
  si: InSI,
): Record<End, Point> {
  return Object.fromEntries(ends.map((end) => [end, pointInSI(line[end], si)])) as Record<End, Point>;
}

/** All of a part but its outline. */
export function partInSI(part: Omit<WrittenPart, 'outline'>, si: InSI): Omit<PartInSI, 'outline'> {
  return {
    name: part.name,
    count: part.count ? si(part.count) : 1,
    across: orNull(part.across, si),
    wood: part.wood?.name ?? null,
    density: part.wood?.density ?? orNull(part.density, si),
    mass: orNull(part.mass ?? part.weight, si),
    side: part.side ?? null,
    runs: part.runs ? lineInSI(part.runs, ['from', 'to'], si) : null,
  };
}

export type Drawings = ReadonlyMap<string, Drawn>;

export const outlinesInSI = ({ outline }: WrittenPart, drawings: Drawings, si: InSI): OutlineInSI[] =>
  [outline].flat().map((each) => outlineInSI(each, drawings, si));

function outlineInSI(
  { hole = false, rocker, bar, circle, rectangle, path, drawing }: WrittenOutline,
  drawings: Drawings,
  si: InSI,
): OutlineInSI {
  if (rocker) {
    return {
      hole,
      word: 'rocker',
      arcs: arcsInSI(rocker.radius, si),
      depth: si(rocker.depth),
      nose: si(rocker.nose),
      tail: si(rocker.tail),
      at: rocker.at ? si(rocker.at) : 0,
      along: rocker.along ?? 'level',
    };
  }
  if (bar) return { hole, word: 'bar', ...lineInSI(bar, ['from', 'to'], si), width: si(bar.width) };
  if (circle)
    return { hole, word: 'circle', centre: pointInSI(circle.centre, si), radius: si(circle.radius) };
  if (rectangle) return { hole, word: 'rectangle', ...lineInSI(rectangle, ['from', 'to'], si) };
  if (path) return { hole, word: 'path', data: path.data, unit: si(path.unit) };
  const drawn = drawing && drawings.get(drawing.file);
  if (drawn) return { hole, word: 'drawing', file: drawing.file, drawn, asked: askedInSI(drawing, si) };
  throw new RangeError('outlineInSI: an outline without a form');
}

function askedInSI(drawing: NonNullable<WrittenOutline['drawing']>, si: InSI): Asked {
  const { layer = null, id = null, units, origin, turn, mirror = false, join, smooth } = drawing;
  return {
    ...{ layer, id, mirror },
    unit: units === undefined ? null : metresPer[units],
    origin: origin ? pointInSI(origin, si) : { x: 0, y: 0 },
    turn: turn ? si(turn) : 0,
    join: orNull(join, si),
    smooth: typeof smooth === 'object' ? si(smooth) : smooth === true ? usuallySmoothed : null,
  };
}

/** Metres, for `smooth: true`: as far as a band saw goes astray without being seen (common practice, no source). */
export const usuallySmoothed = 1e-4;

function arcsInSI(radius: WrittenRadius, si: InSI): RockerArcInSI[] {
  if (!Array.isArray(radius)) return [{ radius: si(radius), until: null }];
  return radius.map((arc) => ({ radius: si(arc.radius), until: orNull(arc.until, si) }));
}

export function extraInSI(extra: NonNullable<WrittenDesign['extras']>[number], si: InSI): ExtraInSI {
  const mass = extra.mass ?? extra.weight;
  if (!mass) throw new RangeError(`extraInSI: ${extra.name} without mass`);
  return {
    name: extra.name,
    mass: si(mass),
    at: pointInSI(extra.at, si),
    inertia: extra.inertia ? si(extra.inertia) : 0,
  };
}
