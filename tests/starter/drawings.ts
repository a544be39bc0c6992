/** Small drawings of chairs, and what a maker writes into the blanks of a design begun from one. */
import { readDrawing } from '../../src/drawing/read/read-drawing.js';
import type { Drawn } from '../../src/drawing/read/drawn.js';
import { fromDrawing, type FromDrawing, type FromDrawingRequest } from '../../src/starter/from-drawing.js';
import { dxf, polyline, type Tags } from '../drawing/read/dxf-text.js';

export const inInches: { header: Tags } = { header: [9, '$INSUNITS', 70, 1] };
export const inMillimetres: { header: Tags } = { header: [9, '$INSUNITS', 70, 4] };

/** The same on another layer: tags begin with 0, what it is, 8 and the layer. */
export const onLayer = (layer: string, tags: Tags): Tags => tags.with(3, layer);

export const box = (layer: string, left: number, foot: number, width: number, height: number): Tags =>
  onLayer(
    layer,
    polyline([
      [left, foot],
      [left + width, foot],
      [left + width, foot + height],
      [left, foot + height],
    ]),
  );

export function drawnIn(text: string): Drawn {
  const read = readDrawing(new TextEncoder().encode(text));
  if (!read.ok) throw new Error(JSON.stringify(read.flaws));
  return read.drawn;
}

export function found(text: string, asked: Partial<FromDrawingRequest> = {}): FromDrawing {
  const made = fromDrawing({ drawn: drawnIn(text), units: null, mirror: false, ...asked });
  if (!made.ok) throw new Error(JSON.stringify(made.flaws));
  return made.value;
}

/**
 * A rocker of radius 36 in and depth 2 in that touches at x = 4 in, whose lowest place is at y = 0.75 in; legs, posts, a
 * seat and the three lines; a rung that does not close; a note.
 */
export function porch(sections = inInches): string {
  const [radius, half, lift] = [36, 0.6, 0.75];
  const at = (r: number, lean: number): [number, number] => [
    4 + r * Math.sin(lean),
    lift + radius - r * Math.cos(lean),
  ];
  const bulge = Math.tan(half / 2);
  const rocker = polyline([
    [...at(radius, -half), bulge],
    [...at(radius, half), 0],
    [...at(radius - 2, half), -bulge],
    [...at(radius - 2, -half), 0],
  ]);
  const straight = (layer: string, x: number, y: number, x1: number, y1: number): Tags => [
    ...[0, 'LINE', 8, layer, 10, x, 20, y + lift, 11, x1, 21, y1 + lift],
  ];
  return dxf(
    [
      onLayer('Rocker', rocker),
      box('front leg', 13.5, 3.5 + lift, 1.75, 18),
      box('back post', -1.5, 2.5 + lift, 1.25, 36),
      box('seat panel', 0, 12 + lift, 15.5, 0.75),
      straight('SEAT', 0, 12.75, 15.5, 13.25),
      straight('back line', -9.75, 38.5, 0, 12.75),
      straight('Arms', -1, 21, 16, 22.5),
      straight('rung', 0, 5, 10, 5),
      straight('rung', 10, 5, 10, 6),
      [0, 'TEXT', 8, 'notes', 10, 0, 20, 0, 1, 'ash'],
    ],
    sections,
  );
}

const answers: Readonly<Record<string, string>> = {
  kind: 'porch',
  spacing: '20 in',
  sitters: 'standard',
  count: '2',
  wood: 'white ash',
  across: '1-1/4 in',
  seat: '{ front: [15.5 in, 13.25 in], rear: [0 in, 12.75 in] }',
  back: '{ foot: [0 in, 12.75 in], top: [-9.75 in, 38.5 in] }',
};

/** Every blank filled in; the arms, which a chair may lack, taken out. */
export const filledIn = (text: string): string =>
  text
    .replaceAll(/^( *)(\w+): # wanted: .*$/gm, (line, indent: string, key: string) =>
      key in answers ? `${indent}${key}: ${answers[key]!}` : line,
    )
    .replaceAll(/^arms: # wanted.*\n/gm, '');
