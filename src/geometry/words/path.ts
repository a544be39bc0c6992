/** `path`: SVG path data read in the chair's frame, y up and nothing flipped; every subpath is one closed loop. */
import { built, millimetres, type Built, type Flaw } from '../flaw.js';
import { endOf, startOf, type Loop } from '../piece.js';
import { distance, samePlace } from '../point.js';
import { pathPieces, type Subpath } from './path-pieces.js';

export interface PathWord {
  readonly data: string;
  /** Metres in one unit of the data. */
  readonly unit: number;
}

export function path({ data, unit }: PathWord): Built<{ boundaries: readonly Loop[] }> {
  const drawn = pathPieces(data, unit);
  if (!drawn.ok) return drawn;
  const { subpaths } = drawn;
  return built(
    { unit },
    () => (subpaths.length === 0 ? [nothingDrawn] : subpaths.flatMap(openEnds)),
    () => ({ boundaries: subpaths.map(({ pieces }) => pieces) }),
  );
}

const nothingDrawn: Flaw = { expected: 'path data that draws an outline', found: 'nothing drawn' };

/** A subpath that comes back to its start by itself is as good as closed. */
function openEnds({ pieces, closed, at }: Subpath): Flaw[] {
  const gap = distance(endOf(pieces.at(-1)!), startOf(pieces[0]!));
  if (closed || gap <= samePlace) return [];
  const found = `a gap of ${millimetres(gap)} between its end and its start`;
  return [{ expected: 'every subpath closed', found, hint: 'end it with Z', at }];
}
