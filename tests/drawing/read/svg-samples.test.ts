/**
 * Drawings by others, beside what a reader and an integrator apart from this project gave for them (`reference.csv`). They
 * are no part of this project: a folder beside it, or TRUEROLL_DRAWINGS.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { env } from 'node:process';
import { expect, it } from 'vitest';
import { signedArea } from '../../../src/geometry/area-moments.js';
import { boxOf, drawn, outlines } from './svg-drawn.js';

const folder = env['TRUEROLL_DRAWINGS'] ?? '../shared/drawings';
const table = join(folder, 'reference.csv');
const there = folder !== '' && existsSync(table);
if (!there) console.log('SKIPPED: no drawings beside the project, and TRUEROLL_DRAWINGS names none');

/** Cells in quotes hold commas, and none holds a quote. */
const cells = (row: string): string[] =>
  [...row.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map(([, a, b]) => a ?? b ?? '');

const [head = '', ...rows] = there ? readFileSync(table, 'utf8').trim().split(/\r?\n/) : [];
const names = cells(head);
const samples = rows
  .map((row) => new Map(cells(row).map((cell, i) => [names[i]!, cell])))
  .filter((row) => row.get('file')!.startsWith('svg-') && row.get('subset') === '');

/** All within a millionth, of the size of the drawing where they are places. */
it.skipIf(!there)('agrees with the reference on every sample', () => {
  expect(samples.length).toBeGreaterThan(0);
  for (const row of samples) {
    const wanted = (name: string): number => Number(row.get(name));
    const read = drawn(readFileSync(join(folder, row.get('file')!), 'utf8'));
    const loops = outlines(read);
    expect([row.get('file'), loops.length]).toEqual([row.get('file'), wanted('n_closed')]);
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
    if (/mm|in/.test(row.get('unit_declared')!))
      expect((read.unit! * 1000) / wanted('mm_per_unit')).toBeCloseTo(1, 6);
    else expect(read.unit).toBeNull();
  }
});
