/** What a maker is told beside the measures: sitting an inch aside, rocking by itself, and why a chair does not stand. */
import { describe, expect, it } from 'vitest';
import { rocksByItself } from '../../src/measures/dying-away.js';
import { seatSlopeShifted, shift } from '../../src/measures/sitting-shifted.js';
import { turnAgainst } from '../oracles/dying-rock.js';
import { checked, oneArc, sitters } from '../reading.js';

const recordOf = (text: string, id = 'empty', sitter: string | null = null) =>
  checked(text).loads.find(({ record: { load } }) => load.id === id && load.sitter === sitter)!.record;
const onFloor = (rolling: string): string => `${oneArc}floor: { friction: 0.4, rolling: ${rolling} }\n`;

describe('sitting an inch forward or back', () => {
  it.each([-shift, 0, shift])(
    'by %d m: the arc’s centre goes plumb over G, moved by the sitter’s share',
    (by) => {
      const record = recordOf(`${oneArc}${sitters}`, 'seated', 'tall');
      const { body, riders } = record.load;
      const [cos, sin] = [0.45, 0.03].map((side) => side / Math.hypot(0.45, 0.03)) as [number, number];
      const share = riders / (riders + 10);
      const [x, y] = [body.centre.x + by * share * cos, body.centre.y + by * share * sin];
      const wanted = Math.atan2(30, 450) + Math.atan2(-x, 1 - y);
      expect(seatSlopeShifted(record, by)).toBeCloseTo(wanted, 12);
    },
  );

  it('is an inch', () => {
    expect(shift).toBe(0.0254);
  });

  it('has no slope without a seat, nor where it rolls off', () => {
    expect(seatSlopeShifted(recordOf(oneArc.replace(/^seat:.*\n/m, '')), shift)).toEqual({
      missing: 'the design has no seat line',
    });
    expect(seatSlopeShifted(recordOf(`${oneArc}${sitters}`, 'seated', 'tall'), 0.6)).toMatchObject({
      missing: expect.any(String) as string,
    });
  });
});

describe('rocking by itself', () => {
  /** Rocks by the exact motion, one half swing after the other; of the last, the share of it that is above 1°. */
  function rocksOfMotion(resistance: number): number {
    const { body } = recordOf(oneArc).load;
    const hang = Math.hypot(body.centre.x, 1 - body.centre.y);
    const rock = { radius: 1, hang, gyration2: body.inertia / body.mass, resistance };
    const least = Math.PI / 180;
    let [at, half] = [(6 * Math.PI) / 180, 0];
    for (;;) {
      const next = turnAgainst(rock, at);
      if (Math.abs(next) < least)
        return (half + (Math.abs(at) - least) / (Math.abs(at) - Math.abs(next))) / 2;
      [at, half] = [next, half + 1];
    }
  }

  it.each([1, 2])('on a floor of %d mm, within three hundredths of the motion followed', (millimetres) => {
    const wanted = rocksOfMotion(millimetres / 1000);
    const rocks = rocksByItself(recordOf(onFloor(`${millimetres} mm`))) as number;
    // It says of itself that it leaves out what the swing's size does: a few hundredths at 6°.
    expect(Math.abs(rocks / wanted - 1)).toBeLessThan(0.03);
  });

  it('halves on a floor twice as soft, and does not end on one without resistance', () => {
    const [one, two] = ['1 mm', '2 mm'].map((arm) => rocksByItself(recordOf(onFloor(arm)))) as [
      number,
      number,
    ];
    expect(one / two).toBeCloseTo(2, 12);
    expect(rocksByItself(recordOf(onFloor('0 mm')))).toBe(Infinity);
  });

  it('is none for a swing below the least that counts', () => {
    expect(rocksByItself(recordOf(`${oneArc}loads: { empty: { swing: 0.5 deg } }\n`))).toBe(0);
  });
});

describe('why it does not stand, and what would', () => {
  const ahead = oneArc.replace('at: [-10, 400]', 'at: [300, 400]');

  it('too short a nose: the reach that it asks for is the least that stands', () => {
    const { noRest } = recordOf(ahead);
    // The lump alone, nearly: sin θ = 300/hypot(300, 600).
    expect(noRest).toMatchObject({ cause: 'past-end', end: 'nose', reach: expect.closeTo(0.4, 9) as number });
    const { leastReach } = noRest as { leastReach: number };
    expect(leastReach).toBeCloseTo(300 / Math.hypot(300, 600), 3);
    const nose = (mm: number): string => ahead.replace('nose: 400', `nose: ${mm}`);
    expect(recordOf(nose(1000 * leastReach + 1)).noRest).toBeNull();
    expect(recordOf(nose(1000 * leastReach - 1)).noRest).not.toBeNull();
  });

  it('too tight: the radius that it asks for is the least that stands', () => {
    const tight = (mm: number): string =>
      oneArc.replace('radius: 1000', `radius: ${mm}`).replace('nose: 400, tail: 500', 'nose: 300, tail: 300');
    const { noRest } = recordOf(tight(390));
    expect(noRest).toMatchObject({ cause: 'too-tight', radius: expect.closeTo(0.39, 12) as number });
    const { leastRadius } = noRest as { leastRadius: number };
    expect(recordOf(tight(1000 * leastRadius + 1)).noRest).toBeNull();
    expect(recordOf(tight(1000 * leastRadius - 1)).noRest).not.toBeNull();
  });
});
