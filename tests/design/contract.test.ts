/** The example of the format, as it is printed for makers. */
import { expect, it } from 'vitest';
import { resolved } from './read.js';

const inch = 0.0254;

it('is read as it stands', () => {
  const design = resolved(`trueroll: 1                       # format version
name: Porch rocker, white ash
kind: porch                       # adult (default), nursing, child, porch: chooses the default limits
units: in                         # what a bare length means: in, mm, cm, m, ft
dimensions: { radius: 39 in, tail: 20 in, noseLength: 22 in }    # named values
floor: bare boards                # the default; or { friction: 0.4, rolling: 1.5 mm }
room: { wall: 14 in }             # free space behind the rearmost point of the empty chair at rest
spacing: 20 in                    # rockers, centre line to centre line
sitters:
  - { name: shortest, body: female, stature: 5' 0", mass: 105 lb }   # the chair is made for the first
  - { name: tallest, body: male, stature: 5' 10", mass: 110 kg }
child: { body: girl, age: 9 months }                             # or { mass: 9 kg }
parts:
  - { name: rocker, count: 2, wood: white ash, across: 1-1/4 in, outline: { rocker: { radius: radius, depth: 2-1/4 in, nose: noseLength, tail: tail, at: -4 in } } }
  - { name: front leg, count: 2, wood: white ash, across: 1-3/4, outline: { bar: { from: [9, 2.6], to: [9, 24], width: 1-3/4 } } }
  - { name: woven seat, mass: 0.9 kg, outline: { path: "M -8 14.3 L 9.8 16.2 L 9.8 16.6 L -8 14.7 Z" } }
extras: [ { name: bolts and inserts, mass: 0.35 kg, at: [0, 12] } ]
seat: { front: [9.8, 16.4], rear: [-8, 14.5] }     # where the body touches, pressed down
back: { foot: [-8.5, 15], top: [-15, 42] }
arms: { rear: [-9, 25], front: [10, 26] }          # the top, where the forearm lies
loads: { leaning-back-hard: { shove: 0.25 } }      # changes to the standard loads
limits: { period: 1.8 s .. 2.6 s, empty: { seatSlope: -2 deg .. 8 deg }, wallClearance: off }
`);
  expect(design.name).toBe('Porch rocker, white ash');
  expect(design.sitters).toMatchObject([
    { name: 'shortest', stature: expect.closeTo(60 * inch, 12) as number },
    { name: 'tallest', stature: expect.closeTo(70 * inch, 12) as number, mass: 110 },
  ]);
  const [rocker, leg] = design.parts;
  // White ash: specific gravity 0.60 at 12 %, times 1.12.
  expect(rocker).toMatchObject({ count: 2, density: expect.closeTo(672, 9) as number });
  expect(rocker!.outline).toMatchObject([{ arcs: [{ radius: expect.closeTo(39 * inch, 12) as number }] }]);
  expect(leg!.across).toBeCloseTo(1.75 * inch, 12);
  expect(design.loads['leaning-back-hard']).toEqual({ shove: 0.25 });
  expect(design.limits.map(({ measure, load }) => [measure, load])).toEqual([
    ['periodS', null],
    ['wallClearanceM', null],
    ['seatSlopeDeg', 'empty'],
  ]);
});
