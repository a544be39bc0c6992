/**
 * Where an INSERT puts its block: scaled, turned, moved, in rows and columns that go with the turn but not with the
 * scale.
 */
import { mappedPoint, scaling, shifting, thenMapped, turning, unchanged } from '../../geometry/affine.js';
import { behind, liesOf } from './dxf-curves.js';
import type { Item } from './dxf-blocks.js';
import type { Group } from './dxf-groups.js';
import { placeOf, textOf, valueOf } from './dxf-values.js';
import { Unreadable } from './unreadable.js';

/** Rows times columns: more would be a slip of the pen. */
const most = 10_000;

export function insertsOf(group: Group, layer: string): Item[] {
  const block = textOf(group, 2);
  const { line } = group;
  if (block === undefined) throw new Unreadable({ line, expected: 'INSERT with a group 2', found: 'none' });
  const at = placeOf(group, 10);
  const [columns, rows] = [countOf(group, 70), countOf(group, 71)];
  if (columns * rows > most)
    throw new Unreadable({ line, expected: `INSERT of ${most} at most`, found: `${columns * rows}` });
  const [x, y] = [scaleOf(group, 41), scaleOf(group, 42)];
  const turn = turning((valueOf(group, 50, 0) * Math.PI) / 180);
  const shaped = thenMapped(scaling(x, y), turn);
  const seen = liesOf(group) === 'seen from behind' ? behind : unchanged;
  return Array.from({ length: columns * rows }, (_, i): Item => {
    const across = (i % columns) * valueOf(group, 44, 0);
    const up = Math.floor(i / columns) * valueOf(group, 45, 0);
    const cell = mappedPoint({ x: across, y: up }, turn);
    const shifted = thenMapped(shaped, shifting(at.x + cell.x, at.y + cell.y));
    return { kind: 'block', block, map: thenMapped(shifted, seen), layer, line };
  });
}

function scaleOf(group: Group, code: number): number {
  const scale = valueOf(group, code, 1);
  if (scale !== 0) return scale;
  throw new Unreadable({ line: group.line, expected: 'INSERT with a scale that is not 0', found: '0' });
}

const countOf = (group: Group, code: number): number => Math.max(1, Math.trunc(valueOf(group, code, 1)));
