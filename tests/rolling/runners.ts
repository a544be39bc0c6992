/**
 * Runners built from what a pencil draws, nose to tail: arcs, flats, corners. With the outline comes what it is made
 * of, so that tests need not ask the code under test.
 */
import type { Loop, Piece } from '../../src/geometry/piece.js';
import { minus, plus, times, type Point } from '../../src/geometry/point.js';
import { downAt } from '../oracles/brute-support.js';
import type { Track } from '../oracles/rolling-motion.js';

export type Step =
  | { readonly radius: number; readonly turn: number }
  | { readonly flat: number }
  /** A corner of so much turn. */
  | { readonly corner: number };

export interface Runner {
  readonly outline: Loop;
  /** In order of lean; between two whose contacts differ lies a flat. The square ends are the first and the last. */
  readonly tracks: readonly Track[];
  /** The ends of the bottom edge. */
  readonly ends: { readonly nose: Point; readonly tail: Point };
}

interface Drawn {
  readonly pieces: readonly Piece[];
  readonly tracks: readonly Track[];
  readonly at: Point;
  readonly lean: number;
}

const back = (lean: number): Point => ({ x: -Math.cos(lean), y: Math.sin(lean) });

/**
 * @param nose lean at which the contact is at the nose end, radians (negative when θ = 0 is on the runner)
 * @param from place of the nose end
 * @param deep how far it goes on square to both ends, closed by a straight top edge
 */
export function runner(
  steps: readonly Step[],
  nose: number,
  from: Point = { x: 0, y: 0 },
  deep = 0.05,
): Runner {
  const start: Drawn = { pieces: [], tracks: [], at: from, lean: nose };
  const drawn = steps.reduce(draw, start);
  const { at: tail, lean } = drawn;
  const [noseTop, tailTop] = [plus(from, times(downAt(nose), -deep)), plus(tail, times(downAt(lean), -deep))];
  return {
    outline: [
      ...drawn.pieces,
      { kind: 'line', from: tail, to: tailTop },
      { kind: 'line', from: tailTop, to: noseTop },
      { kind: 'line', from: noseTop, to: from },
    ],
    tracks: [
      { from: nose - Math.PI / 2, to: nose, centre: from, radius: 0 },
      ...drawn.tracks,
      { from: lean, to: lean + Math.PI / 2, centre: tail, radius: 0 },
    ],
    ends: { nose: from, tail },
  };
}

function draw({ pieces, tracks, at, lean }: Drawn, step: Step): Drawn {
  if ('corner' in step) {
    const to = lean + step.corner;
    return { pieces, tracks: [...tracks, { from: lean, to, centre: at, radius: 0 }], at, lean: to };
  }
  if ('flat' in step) {
    const to = plus(at, times(back(lean), step.flat));
    return { pieces: [...pieces, { kind: 'line', from: at, to }], tracks, at: to, lean };
  }
  const { radius, turn } = step;
  const centre = minus(at, times(downAt(lean), radius));
  const to = lean + turn;
  return {
    pieces: [...pieces, { kind: 'arc', centre, radius, start: -Math.PI / 2 - lean, sweep: -turn }],
    tracks: [...tracks, { from: lean, to, centre, radius }],
    at: plus(centre, times(downAt(to), radius)),
    lean: to,
  };
}

/** A runner's one arc about its centre. */
export const roundRunner = (centre: Point, radius: number, nose: number, tail: number): Runner =>
  runner([{ radius, turn: tail - nose }], nose, plus(centre, times(downAt(nose), radius)), radius / 20);

/** The point plumb above the contact at a lean by `height`, in the drawing's frame. */
export function plumbAbove(tracks: readonly Track[], lean: number, height: number): Point {
  const { centre, radius } = tracks.find(({ from, to }) => lean >= from && lean <= to)!;
  return plus(centre, times(downAt(lean), radius - height));
}
