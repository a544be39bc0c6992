/**
 * Drawings that nobody here drew, with areas and moments worked out elsewhere (ezdxf 0.18.1, svgelements 1.7.2, polygons
 * refined and extrapolated). They are not part of this project: a folder beside it, or TRUEROLL_DRAWINGS.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';

const folder = process.env['TRUEROLL_DRAWINGS'] ?? '../shared/drawings';

export const areDrawingsThere = existsSync(join(folder, 'reference.csv'));
if (!areDrawingsThere) console.log(`SKIPPED: no drawings in ${folder}`);

export const drawingBytes = (file: string): Buffer => readFileSync(join(folder, file));

export interface ReferenceRow {
  readonly file: string;
  readonly text: (name: string) => string;
  readonly number: (name: string) => number;
}

/** Cells in quotes hold commas, and none holds a quote. */
const cells = (row: string): string[] =>
  [...row.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');

/** Of whole drawings with closed outlines, by the ending of their names; none where the folder is missing. */
export function referenceRows(ending: string): ReferenceRow[] {
  if (!areDrawingsThere) return [];
  const [head = '', ...rows] = drawingBytes('reference.csv').toString('utf8').trim().split(/\r?\n/);
  const names = cells(head);
  return rows
    .map((row) => new Map(cells(row).map((cell, i) => [names[i]!, cell])))
    .map((row) => ({
      file: row.get('file')!,
      text: (name: string) => row.get(name)!,
      number: (name: string) => Number(row.get(name)),
    }))
    .filter(
      ({ file, text, number }) => file.endsWith(ending) && text('subset') === '' && number('n_closed') > 0,
    );
}
