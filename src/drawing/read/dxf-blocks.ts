/** Puts blocks in where they are asked for. */
import { mappedPiece, shifting, thenMapped, unchanged, type Affine } from '../../geometry/affine.js';
import type { Piece } from '../../geometry/piece.js';
import type { Point } from '../../geometry/point.js';
import { shown } from './dxf-groups.js';
import type { DrawnCurve } from './drawn.js';
import type { Tally } from './tally.js';
import { Unreadable } from './unreadable.js';
import { withinReach } from './within-reach.js';

export type Item = CurveItem | BlockItem;

interface CurveItem {
  readonly kind: 'curve';
  readonly pieces: readonly Piece[];
  readonly closed: boolean;
  readonly layer: string;
  readonly line: number;
}

interface BlockItem {
  readonly kind: 'block';
  readonly block: string;
  readonly map: Affine;
  readonly layer: string;
  readonly line: number;
}

export interface Block {
  readonly base: Point;
  readonly items: Item[];
}

/** Of blocks in blocks. */
const deepest = 32;
/** Curves: more would not fit in memory. */
const most = 2_000_000;

/** DXF has no ids. */
const none: readonly string[] = [];

/** What lies on layer 0 of a block lies on the layer that the block is put on. */
const ofItsPlace = '0';

/** @param off layers that are frozen or switched off */
export function placedCurves(
  entities: readonly Item[],
  blocks: ReadonlyMap<string, Block>,
  off: ReadonlySet<string>,
  leftOut: Tally,
): DrawnCurve[] {
  const curves: DrawnCurve[] = [];
  const within = new Set<string>();
  const layersOf = new Map<string, readonly string[]>();
  const onLayer = (layer: string): readonly string[] => {
    const layers = layersOf.get(layer) ?? [layer];
    layersOf.set(layer, layers);
    return layers;
  };

  function put(items: readonly Item[], map: Affine, on: string | null): void {
    for (const item of items) {
      const layer = on !== null && item.layer === ofItsPlace ? on : item.layer;
      if (off.has(layer))
        leftOut.add(
          item.kind === 'block' ? 'INSERT' : 'curves',
          `on layer ${layer}, which is off`,
          item.line,
        );
      else if (item.kind === 'curve') putCurve(item, map, layer);
      else putBlock(item, map, layer);
    }
  }

  function putCurve({ pieces, closed, line }: CurveItem, map: Affine, layer: string): void {
    if (curves.length >= most)
      throw new Unreadable({ line, expected: `${most} curves at most, blocks put in`, found: 'more' });
    const mapped = map === unchanged ? pieces : pieces.map((piece) => mappedPiece(piece, map));
    // Blocks scaled up in blocks scaled up may go anywhere.
    if (!mapped.every(withinReach))
      throw new Unreadable({ line, expected: 'places within a billion units', found: 'one farther off' });
    curves.push({ pieces: mapped, closed, layers: onLayer(layer), labels: none, ids: none, line });
  }

  function putBlock({ block: name, map: own, line }: BlockItem, map: Affine, layer: string): void {
    const block = blocks.get(name);
    if (block === undefined)
      throw new Unreadable({ line, expected: 'the name of a block of this file', found: shown(name) });
    if (within.has(name) || within.size >= deepest)
      throw new Unreadable({ line, expected: 'blocks that do not hold themselves', found: shown(name) });
    within.add(name);
    const { x, y } = block.base;
    put(block.items, thenMapped(thenMapped(shifting(-x, -y), own), map), layer);
    within.delete(name);
  }

  put(entities, unchanged, null);
  return curves;
}
