/**
 * Every curve of drawings that ezdxf wrote, and of drawings from elsewhere, against ezdxf’s own evaluation of it: ends, length,
 * and where it closes area, centroid and polar moment, within 1e-6.
 */
import { describe, expect, it } from 'vitest';
import { readDrawing } from '../../../src/drawing/read/read-drawing.js';
import type { DrawnCurve } from '../../../src/drawing/read/drawn.js';
import { loopMoments } from '../../../src/geometry/area-moments.js';
import { endOf, pointOn, startOf, type Piece } from '../../../src/geometry/piece.js';
import { distance, type Point } from '../../../src/geometry/point.js';
import { once } from '../../../src/kept.js';
import { isEzdxfAsked, judgedCurves, writtenByEzdxf, type JudgedCurve } from '../../oracles/ezdxf.js';
import { areDrawingsThere, drawingBytes, referenceRows } from './reference-table.js';

function curvesIn(bytes: Uint8Array): readonly DrawnCurve[] {
  const read = readDrawing(bytes);
  if (!read.ok) throw new RangeError(JSON.stringify(read.flaws));
  return read.drawn.curves;
}

/** Of polygons through ever more places, taken to the limit. */
function lengthOf(pieces: readonly Piece[]): number {
  const at = (steps: number): number =>
    pieces.reduce((sum, piece) => {
      for (let i = 0; i < steps; i++)
        sum += distance(pointOn(piece, i / steps), pointOn(piece, (i + 1) / steps));
      return sum;
    }, 0);
  const [one, two] = [at(128), at(256)];
  return two + (two - one) / 3;
}

interface Measured {
  readonly length: number;
  readonly ends: readonly [Point, Point];
  /** Of what closes. */
  readonly moments: () => ReturnType<typeof loopMoments>;
}

const measured = ({ pieces }: DrawnCurve): Measured => ({
  length: lengthOf(pieces),
  ends: [startOf(pieces[0]!), endOf(pieces.at(-1)!)],
  moments: once(() => loopMoments(pieces)),
});

/** The largest difference, of lengths as a share of its length, of areas and moments of the power of it. */
function difference(ours: Measured, judged: JudgedCurve): number {
  const size = judged.length;
  const length = Math.abs(ours.length - size) / size;
  const closed = distance(...ours.ends) < 1e-9 * size;
  if (closed !== judged.closed || length > 1e-3) return Infinity;
  return Math.max(length, closed ? offMoments(ours, judged) : offEnds(ours, judged));
}

/** Whichever way it runs. */
function offEnds({ ends: [from, to] }: Measured, { ends: [start, end], length }: JudgedCurve): number {
  const apart = (place: Point, [x, y]: readonly [number, number]): number =>
    Math.hypot(place.x - x, place.y - y);
  const [along, back] = [apart(from, start) + apart(to, end), apart(from, end) + apart(to, start)];
  return Math.min(along, back) / length;
}

function offMoments({ moments: momentsOf }: Measured, { length, area, first, polar }: JudgedCurve): number {
  const moments = momentsOf();
  const offArea = Math.abs(moments.area - Math.abs(area)) / length ** 2;
  // An eight has little area or none, and so its centroid anywhere.
  if (Math.abs(area) < 1e-3 * length ** 2) return offArea;
  const [x, y] = [first[0] / area, first[1] / area];
  // Of one that crosses itself parts may count negative: only the size is told.
  const about = Math.abs(Math.sign(area) * polar - Math.abs(area) * (x * x + y * y));
  return Math.max(
    offArea,
    Math.hypot(moments.centroid.x - x, moments.centroid.y - y) / length,
    Math.abs(moments.polar - about) / length ** 4,
  );
}

/** Each curve of ezdxf’s has one of ours, and no other; the entities of an array come in an order of their own. */
function expectAllSame(bytes: Uint8Array, text: string): number {
  const left = curvesIn(bytes).map(measured);
  const judged = judgedCurves(text);
  expect(left).toHaveLength(judged.length);
  for (const curve of judged) {
    const offs = left.map((ours) => difference(ours, curve));
    const least = Math.min(...offs);
    expect(least, curve.type).toBeLessThan(1e-6);
    left.splice(offs.indexOf(least), 1);
  }
  return judged.length;
}

describe.runIf(isEzdxfAsked)('as ezdxf reads it', () => {
  it.each([1, 2])('every entity that it writes, in blocks too: drawing %i', (seed) => {
    const text = writtenByEzdxf(seed);
    expect(expectAllSame(new TextEncoder().encode(text), text)).toBeGreaterThan(150);
  });

  it.runIf(areDrawingsThere).each(referenceRows('.dxf').map(({ file }) => file))(
    '%s, from elsewhere',
    (file) => {
      const bytes = drawingBytes(file);
      expectAllSame(bytes, bytes.toString('utf8'));
    },
  );
});
