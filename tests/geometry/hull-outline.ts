/** The outline that a profile of corners and arcs stands for: its arcs and flats in order of lean (clockwise). */
import type { Loop, Piece } from '../../src/geometry/piece.js';
import { contactOn } from '../../src/geometry/hull-element.js';
import type { Profile } from '../../src/geometry/profile.js';

export function hullOutline({ elements, flatAfter }: Profile): Loop {
  return elements.flatMap((element, i): Piece[] => {
    if (element.kind !== 'round') throw new RangeError(`hullOutline: a ${element.kind}`);
    const { centre, radius, from, to } = element;
    const next = elements[(i + 1) % elements.length]!;
    const arc: Piece = { kind: 'arc', centre, radius, start: -Math.PI / 2 - from, sweep: from - to };
    const flat: Piece = { kind: 'line', from: contactOn(element, to), to: contactOn(next, next.from) };
    return [...(radius > 0 ? [arc] : []), ...(flatAfter[i]! > 0 ? [flat] : [])];
  });
}
