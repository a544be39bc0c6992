/** Measures of the chair on one arc of 1 m: a mass aside of the middle, and what has no value and why. */
import { describe, expect, it } from 'vitest';
import type { MeasureKey } from '../../src/names.js';
import { checked, oneArc, sitters } from '../reading.js';

const radius = 1;
const swing = (6 * Math.PI) / 180;

interface Place {
  readonly x: number;
  readonly y: number;
}
const hangOf = ({ x, y }: Place): number => Math.hypot(x, radius - y);

const loadOf = (text: string, id: string, sitter: string | null = null) =>
  checked(text).loads.find(({ record: { load } }) => load.id === id && load.sitter === sitter)!;
const measure = (text: string, key: MeasureKey, id = 'empty', sitter: string | null = null) =>
  loadOf(text, id, sitter).measured.get(key);
const reason = (...of: Parameters<typeof measure>): string => (measure(...of) as { missing: string }).missing;

describe('sideways, with a mass aside of the middle', () => {
  const rocker = (mass: number, side: string): string =>
    `  - { name: ${side} rocker, mass: ${mass} kg, side: ${side}, outline: { rocker: { radius: 1000, depth: 50, nose: 400, tail: 500 } } }\n`;
  const text = (left: number, right: number): string =>
    oneArc.replace(/ {2}- \{ name: rocker.*\n/, rocker(left, 'left') + rocker(right, 'right')) + sitters;

  it.each([
    ['left', 3, 1],
    ['right', 1, 3],
    ['neither', 2, 2],
  ])('heavier on the %s: atan((w/2 - |z|)/H)', (_, left, right) => {
    const { record } = loadOf(text(left, right), 'empty');
    const { centre, mass } = record.load.body;
    const aside = (0.25 * (left - right)) / mass;
    const height = radius - hangOf(centre);
    expect(measure(text(left, right), 'tipSidewaysDeg')).toBeCloseTo(
      Math.atan2(0.25 - Math.abs(aside), height),
      12,
    );
  });

  it('a sitter in the middle brings the whole nearer to it', () => {
    const { record } = loadOf(text(3, 1), 'seated', 'tall');
    const { centre, mass } = record.load.body;
    const wanted = Math.atan2(0.25 - (0.25 * 2) / mass, radius - hangOf(centre));
    expect(measure(text(3, 1), 'tipSidewaysDeg', 'seated', 'tall')).toBeCloseTo(wanted, 12);
  });
});

describe('the swing of a load', () => {
  it('is its own, and reaches as much farther', () => {
    const text = `${oneArc}${sitters}loads: { seated: { swing: 12 deg } }\n`;
    expect(measure(text, 'swingDeg', 'seated', 'short')).toBeCloseTo(2 * swing, 12);
    expect(measure(text, 'swingDeg')).toBeCloseTo(swing, 12);
  });
});

describe('what has no value says why', () => {
  const without = (line: string, text = oneArc): string => text.replace(new RegExp(`^${line}:.*\n`, 'm'), '');

  it.each([
    ['seatSlopeDeg', 'seat', 'the design has no seat line'],
    ['backAngleDeg', 'back', 'the design has no back line'],
    ['tipBackPushN', 'back', 'the design has no back line'],
    ['tipForwardPushN', 'back', 'the design has no back line'],
  ] as const)('%s without %s', (key, line, why) => {
    expect(reason(without(line), key)).toBe(why);
  });

  it.each([
    ['armHeightGapM', 'the design has no arms line'],
    ['wallClearanceM', 'room.wall'],
  ] as const)('%s of a sitter', (key, why) => {
    expect(reason(`${oneArc}${sitters}`, key, 'seated', 'short')).toContain(why);
  });
});
