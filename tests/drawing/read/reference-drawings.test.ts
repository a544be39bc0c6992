/** DXF drawings from elsewhere, against what was worked out of them elsewhere. */
import { describe, expect, it } from 'vitest';
import { readDrawing } from '../../../src/drawing/read/read-drawing.js';
import { drawnOutlines } from '../../../src/drawing/read/outlines.js';
import { loopMoments } from '../../../src/geometry/area-moments.js';
import { areDrawingsThere, drawingBytes, referenceRows } from './reference-table.js';

const wholeDrawing = {
  ...{
    layer: null,
    id: null,
    unit: 1,
    origin: { x: 0, y: 0 },
    turn: 0,
    mirror: false,
    join: null,
    smooth: null,
  },
};

function outlinesIn(file: string) {
  const read = readDrawing(drawingBytes(file));
  if (!read.ok) throw new RangeError(JSON.stringify(read.flaws));
  const found = drawnOutlines(read.drawn, wholeDrawing);
  if (!found.ok) throw new RangeError(JSON.stringify(found.flaws));
  return { curves: read.drawn.curves.length, unit: read.drawn.unit, ...found };
}

/** Holes taken out: area, centroid, polar moment about it. */
function net({ loops }: ReturnType<typeof outlinesIn>) {
  const parts = loops.map(({ boundary, hole }) => ({ sign: hole ? -1 : 1, ...loopMoments(boundary) }));
  const area = parts.reduce((sum, { sign, area: own }) => sum + sign * own, 0);
  const mean = (of: (part: (typeof parts)[0]) => number) =>
    parts.reduce((sum, part) => sum + part.sign * part.area * of(part), 0) / area;
  const [x, y] = [mean(({ centroid }) => centroid.x), mean(({ centroid }) => centroid.y)];
  const polar = parts.reduce(
    (sum, { sign, area: own, polar: about, centroid }) =>
      sum + sign * (about + own * ((centroid.x - x) ** 2 + (centroid.y - y) ** 2)),
    0,
  );
  return { area, x, y, polar };
}

describe.runIf(areDrawingsThere)('a drawing from elsewhere', () => {
  it.each(referenceRows('.dxf').map((row) => [row.file, row] as const))(
    '%s has the reference’s outlines',
    (file, { number: wanted }) => {
      const found = outlinesIn(file);
      const { area, x, y, polar } = net(found);
      expect([found.curves, found.loops.length]).toEqual([wanted('n_curves'), wanted('n_closed')]);
      expect(found.leftOpen).toBe(wanted('n_open_chains'));
      const extent = Math.hypot(
        wanted('closed_xmax') - wanted('closed_xmin'),
        wanted('closed_ymax') - wanted('closed_ymin'),
      );
      expect(Math.abs(area / wanted('net_area') - 1)).toBeLessThan(1e-6);
      expect(Math.abs(polar / wanted('polar_moment') - 1)).toBeLessThan(1e-6);
      expect(Math.hypot(x - wanted('cx'), y - wanted('cy')) / extent).toBeLessThan(1e-6);
    },
  );

  it.each([
    ['cadquery-rational_spline.dxf', '5 knots'],
    ['trimesh-uc.r12b.dxf', 'a binary one'],
  ])('%s is refused: %s', (file, found) => {
    const read = readDrawing(drawingBytes(file));
    expect(read).toMatchObject({ ok: false, flaws: [{ found }] });
  });

  it('that does not close is refused with the place and the size of it', () => {
    const read = readDrawing(drawingBytes('trimesh-broken_loop.dxf'));
    if (!read.ok) throw new RangeError('refused');
    const found = drawnOutlines(read.drawn, { ...wholeDrawing, unit: 1e-3 });
    expect(found).toMatchObject({
      ok: false,
      flaws: [{ found: expect.stringContaining('an overrun of 0.1 mm') as string }],
    });
  });

  it('seen from behind, in blocks, of loose lines: all outlines close', () => {
    for (const [file, loops] of [
      ['dxf-issue42.dxf', 15],
      ['trimesh-1002_tray_bottom.dxf', 24],
      ['trimesh-cycloidal.dxf', 1],
    ] as const) {
      const found = outlinesIn(file);
      expect([found.loops.length, found.leftOpen]).toEqual([loops, 0]);
    }
  });
});
