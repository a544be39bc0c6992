/** SVG drawings from elsewhere, against what was worked out of them elsewhere. */
import { describe, expect, it } from 'vitest';
import { signedArea } from '../../../src/geometry/area-moments.js';
import { areDrawingsThere, drawingBytes, referenceRows } from './reference-table.js';
import { boxOf, drawn, outlines } from './svg-drawn.js';

/** All within a millionth, of the size of the drawing where they are places. */
describe.runIf(areDrawingsThere)('a drawing from elsewhere', () => {
  it.each(referenceRows('.svg').map((row) => [row.file, row] as const))(
    '%s is as the reference has it',
    (file, row) => {
      const wanted = row.number;
      const read = drawn(drawingBytes(file).toString('utf8'));
      const loops = outlines(read);
      expect(loops).toHaveLength(wanted('n_closed'));
      const box = boxOf(loops.flat());
      const size = Math.hypot(box[2] - box[0], box[3] - box[1]);
      ['closed_xmin', 'closed_ymin', 'closed_xmax', 'closed_ymax'].forEach((name, i) => {
        expect(Math.abs(box[i]! - wanted(name)) / size).toBeLessThan(1e-6);
      });
      const areas = loops.map((loop) => Math.abs(signedArea(loop))).toSorted((a, b) => b - a);
      // Each sample is one outline, with or without holes.
      expect(areas[0]! / wanted('outer_area')).toBeCloseTo(1, 6);
      const net = areas[0]! - areas.slice(1).reduce((sum, area) => sum + area, 0);
      expect(net / wanted('net_area')).toBeCloseTo(1, 6);
      if (/mm|in/.test(row.text('unit_declared')))
        expect((read.unit! * 1000) / wanted('mm_per_unit')).toBeCloseTo(1, 6);
      else expect(read.unit).toBeNull();
    },
  );
});
