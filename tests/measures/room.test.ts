/** Room behind the chair, by brute force: every outline walked point by point, each point rolled explicitly on one arc. */
import { describe, expect, it } from 'vitest';
import { pointOn } from '../../src/geometry/piece.js';
import type { Point } from '../../src/geometry/point.js';
import { isMissing } from '../../src/numeric/missing.js';
import { checked, oneArc, sitters } from '../reading.js';

const degree = Math.PI / 180;
const post =
  '  - { name: post, mass: 1 g, outline: { bar: { from: [-180, 100], to: [-600, 1050], width: 40 } } }\n';
const knob = '  - { name: knob, mass: 1 g, outline: { circle: { centre: [-640, 700], radius: 30 } } }\n';
const text = `${oneArc.replace('extras:', `${post}${knob}extras:`)}room: { wall: 300 mm }\n${sitters}`;

/** Rolled on an arc of 1 m about (0, 1): X_C' = -ρ takes its centre back by θ. */
const rolledX = ({ x, y }: Point, lean: number): number =>
  -lean + x * Math.cos(lean) - (y - 1) * Math.sin(lean);

function sweptBy(design: string, sitter: string, swing: number): { swept: number; brute: number } {
  const { chair, loads } = checked(design);
  const of = (id: string, name: string | null) =>
    loads.find(({ record }) => record.load.id === id && record.load.sitter === name)!;
  const points = chair.parts.flatMap(({ outline }) =>
    outline.flatMap(({ boundary }) =>
      boundary.flatMap((piece) => Array.from({ length: 2001 }, (_, i) => pointOn(piece, i / 2000))),
    ),
  );
  const restOf = ({ centre }: { centre: Point }): number => Math.atan2(-centre.x, 1 - centre.y);
  const rearmost = (lean: number): number => Math.min(...points.map((q) => rolledX(q, lean)));
  const rest = restOf(of('seated', sitter).record.load.body);
  const leans = Array.from({ length: 25 }, (_, i) => rest + swing * (1 - i / 12));
  const brute = rearmost(restOf(chair.body)) - Math.min(...leans.map(rearmost));
  const value = of('seated', sitter).measured.get('sweptBackM')!;
  return { swept: isMissing(value) ? NaN : value, brute: Math.max(0, brute) };
}

describe('how far a seated chair goes behind the empty one', () => {
  it.each([
    ['short', '', 6],
    ['tall', '', 6],
    ['tall', 'loads: { seated: { swing: 2 deg } }\n', 2],
    ['short', 'loads: { seated: { swing: 11 deg } }\n', 11],
  ])('%s, %s', (sitter, loads, swing) => {
    const { swept, brute } = sweptBy(`${text}${loads}`, sitter, swing * degree);
    expect(brute).toBeGreaterThan(0);
    // Points stand 0.1 mm apart round the knob: off its rearmost by less than 1e-7.
    expect(Math.abs(swept - brute)).toBeLessThan(1e-6);
  });

  it('is never less than nothing: a sitter who brings the chair far forward', () => {
    const forward = text.replace('extras:', 'extras:\n  - { name: lead, mass: 40 kg, at: [-350, 500] }\n ');
    const heavy = forward.replace(/extras:\n(.*)\n {2}\[ (.*) \]/, 'extras:\n$1\n  - $2');
    const { swept, brute } = sweptBy(`${heavy}loads: { seated: { swing: 0.5 deg } }\n`, 'tall', 0.5 * degree);
    expect([swept, brute]).toEqual([0, 0]);
  });
});

describe('the way to the wall', () => {
  const measured = (design: string) =>
    checked(design).loads.find(({ record }) => record.load.id === 'seated')!.measured;

  it('is what is left of the room', () => {
    const of = measured(text);
    const [swept, clear] = [of.get('sweptBackM'), of.get('wallClearanceM')];
    expect(clear).toBeCloseTo(0.3 - (swept as number), 15);
  });

  it('is missing without a room, and where the swing has no value', () => {
    expect(measured(text.replace(/^room:.*\n/m, '')).get('wallClearanceM')).toEqual({
      missing: 'the design does not say how much room is behind the chair (`room.wall`)',
      beside: true,
    });
    const far = measured(`${text}loads: { seated: { swing: 40 deg } }\n`);
    for (const key of ['sweptBackM', 'wallClearanceM', 'periodAtSwingS', 'frictionDemand'] as const)
      expect(far.get(key)).toEqual({ missing: 'the swing passes the tail end of the rockers' });
    expect(far.get('swingDeg')).toBeCloseTo(40 * degree, 15);
  });

  it('is counted from the empty chair, though that load is off', () => {
    expect(measured(`${text}loads: { empty: off }\n`)).toEqual(measured(text));
  });

  it('is missing where the empty chair does not come to rest', () => {
    // A lump that balances the sitter, far ahead: alone it takes the chair over its nose.
    const alone = text
      .replace('mass: 9.998 kg, at: [-10, 400]', 'mass: 40 kg, at: [420, 400]')
      .replace('front: [300, 380], rear: [-150, 350]', 'front: [60, 380], rear: [-390, 350]')
      .replace('foot: [-150, 350], top: [-350, 1000]', 'foot: [-390, 350], top: [-590, 1000]');
    const { loads } = checked(alone);
    const seated = loads.filter(({ record }) => record.load.id === 'seated' && record.noRest === null);
    expect(loads[0]!.record.noRest).toMatchObject({ cause: 'past-end', end: 'nose' });
    expect(seated.length).toBeGreaterThan(0);
    for (const { measured: of } of seated)
      expect(of.get('sweptBackM')).toEqual({
        missing: 'the empty chair does not come to rest on its rockers',
      });
  });
});
