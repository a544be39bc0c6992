/** Getting up and a child on the tails as scripts: weights, places and times by hand. */
import { describe, expect, it } from 'vitest';
import { tailsScript, type ChildOnTheTails } from '../../src/loads/child-on-the-tails.js';
import { gettingUpScript, type GettingUp } from '../../src/loads/getting-up.js';
import { combineMasses } from '../../src/mass.js';
import { riding } from '../../src/sitter/riding.js';
import { standardGravity as g } from '../oracles/round-runner.js';
import { checked, oneArc, sitters } from '../reading.js';

/** Arms 0.4 m long at a slope of 3 in 4, by which 0.15 m is 0.12 along and 0.09 up. */
const armed = `${oneArc}arms: { front: [220, 740], rear: [-100, 500] }\n${sitters}child: { mass: 9 kg }\n`;

const recordOf = (text: string, id: string, sitter: string | null) =>
  checked(text).loads.find(({ record: { load } }) => load.id === id && load.sitter === sitter)!.record;
function upOf(text: string, id = 'getting-up', sitter = 'tall'): GettingUp {
  const { script } = recordOf(text, id, sitter).load;
  if (script?.kind !== 'getting-up') throw new RangeError(`upOf: nobody gets up in ${id}`);
  return script;
}

const up = upOf(armed);
const script = gettingUpScript(up);
const [sitting, hands] = script.presses;
const [push] = script.pushes;
const times = Array.from({ length: 261 }, (_, i) => i / 200);
/** σ, written out again. */
const step = (u: number): number => {
  const v = Math.min(1, Math.max(0, u));
  return 10 * v ** 3 - 15 * v ** 4 + 6 * v ** 5;
};

describe('the weight of who gets up', () => {
  it('is of all that rode, a child in arms too, and is gone after 1.2 s', () => {
    const { load, chair } = recordOf(armed, 'seated', 'tall');
    const rode = riding(load.person!.pose, { feet: 'floor', child: null });
    expect(up.weight).toBeCloseTo(combineMasses(rode).mass * g, 9);
    expect(up.chair).toEqual(chair.body);
    expect(script.fixed).toEqual(chair.body);
    expect(sitting!.force(0)).toBe(up.weight);
    expect(sitting!.force(0.6)).toBeCloseTo(up.weight / 2, 10);
    expect([1.2, 3].map((time) => sitting!.force(time))).toEqual([0, 0]);
    for (const time of times) expect(sitting!.force(time)).toBeCloseTo(up.weight * (1 - step(time / 1.2)), 9);
    const held = upOf(armed, 'getting-up-with-a-child');
    expect(held.weight - up.weight).toBeCloseTo(9 * g, 9);
    expect([held.bodyWeight, up.bodyWeight]).toEqual([up.bodyWeight, 100 * g]);
  });

  it('goes from the centre of what rode to 0.10 m behind the front of the seat', () => {
    const { load } = recordOf(armed, 'seated', 'tall');
    const rode = combineMasses(riding(load.person!.pose, { feet: 'floor', child: null })).centre;
    expect(sitting!.place(0)).toEqual(rode);
    // The seat line rises 30 in 450.
    const long = Math.hypot(0.45, 0.03);
    const leaves = { x: 0.3 - (0.1 * 0.45) / long, y: 0.38 - (0.1 * 0.03) / long };
    for (const time of [0.6, 1, 4]) {
      expect(sitting!.place(time).x).toBeCloseTo(leaves.x, 12);
      expect(sitting!.place(time).y).toBeCloseTo(leaves.y, 12);
    }
    expect(sitting!.place(0.3).x).toBeCloseTo((rode.x + leaves.x) / 2, 12);
    expect(sitting!.place(0.15).y).toBeCloseTo(rode.y + (leaves.y - rode.y) * step(0.25), 12);
  });
});

describe('the hands', () => {
  it('press 0.15 m behind the front of the arms, along them', () => {
    expect(hands!.place(0.8).x).toBeCloseTo(0.22 - 0.12, 13);
    expect(hands!.place(0.8).y).toBeCloseTo(0.74 - 0.09, 13);
  });

  it('press a hump of half body weight for both from 0.4 to 1.2 s, at most W', () => {
    const hump = (time: number): number => {
      const u = Math.min(1, Math.max(0, (time - 0.4) / 0.8));
      return 2 * 0.25 * 100 * g * 16 * u ** 2 * (1 - u) ** 2;
    };
    const capped = times.filter((time) => hump(time) > sitting!.force(time) + 1);
    expect(capped.length).toBeGreaterThan(10);
    for (const time of times) {
      expect(hands!.force(time)).toBeCloseTo(Math.min(hump(time), sitting!.force(time)), 8);
      expect(hands!.force(time)).toBeLessThanOrEqual(sitting!.force(time));
    }
    expect([0, 0.4, 1.2, 2].map((time) => hands!.force(time))).toEqual([0, 0, 0, 0]);
  });

  it('are nowhere without arms', () => {
    expect(gettingUpScript(upOf(`${oneArc}${sitters}`)).presses).toHaveLength(1);
  });
});

describe('the push on the seat', () => {
  it('is a tenth of body weight at its front, up in 0.2 s, gone with the weight', () => {
    expect(push!.place).toEqual({ x: 0.3, y: 0.38 });
    for (const time of times)
      expect(push!.force(time)).toBeCloseTo(10 * g * step(time / 0.2) * (1 - step(time / 1.2)), 10);
    expect([push!.force(0), push!.force(1.2)]).toEqual([0, 0]);
  });
});

describe('breaks', () => {
  /** Every kink of the third derivative or below: one-sided second differences that differ. */
  const kinks = (of: GettingUp): number[] => {
    const { presses, breaks } = gettingUpScript(of);
    const h = 1e-4;
    const force = (time: number): number => presses[1]!.force(time);
    const slope = (time: number, side: number): number =>
      (force(time + 2 * side * h) - force(time + side * h)) / (side * h);
    return breaks.filter((time) => Math.abs(slope(time, 1) - slope(time, -1)) > 20);
  };

  it('hold every time at which a law changes, in order', () => {
    const { breaks, end } = script;
    for (const time of [0.2, 0.4, 0.6, 1.2])
      expect(breaks.some((at) => Math.abs(at - time) < 1e-12)).toBe(true);
    expect(breaks).toEqual(breaks.toSorted((a, b) => a - b));
    expect(end).toBe(1.2);
  });

  it('hold where the hands reach W: a kink of their press, to its second', () => {
    const [kink] = kinks(up);
    expect(kink).toBeGreaterThan(0.6);
    const u = (kink! - 0.4) / 0.8;
    expect(50 * g * 16 * (u * (1 - u)) ** 2).toBeCloseTo(up.weight * (1 - step(kink! / 1.2)), 8);
    // Nowhere else does the press jump in slope: by looking.
    const h = 1e-4;
    for (let time = 0.002; time < 1.3; time += 0.0007) {
      const bend = hands!.force(time + h) - 2 * hands!.force(time) + hands!.force(time - h);
      if (Math.abs(bend) / h > 20) expect(Math.abs(time - kink!)).toBeLessThan(2 * h);
    }
  });

  it('move with the times that a design sets', () => {
    const slow = gettingUpScript(
      upOf(armed.replace('child:', 'loads: { getting-up: { leaveTime: 2 s, slideTime: 0.9 s } }\nchild:')),
    );
    expect(slow.end).toBe(2);
    for (const time of [0.2, 0.4, 0.9, 1.2, 2])
      expect(slow.breaks.some((at) => Math.abs(at - time) < 1e-12)).toBe(true);
    expect(slow.presses[0]!.force(1)).toBeCloseTo(up.weight / 2, 9);
    // Hands are over at 1.2 s all the same; the weight bears them now.
    expect(slow.presses[1]!.force(0.8)).toBeCloseTo(50 * g, 9);
  });

  it('hold the end of a weight that is gone before the hands begin', () => {
    const fast = gettingUpScript(
      upOf(armed.replace('child:', 'loads: { getting-up: { leaveTime: 0.3 s } }\nchild:')),
    );
    expect(times.every((time) => fast.presses[1]!.force(time) === 0)).toBe(true);
    expect(fast.breaks).toContain(0.3);
  });
});

describe('a child on the tails', () => {
  const tailsOf = (loads = ''): ChildOnTheTails => {
    const { script: tails } = recordOf(`${oneArc}${loads}`, 'child-on-the-tails', null).load;
    if (tails?.kind !== 'child-on-the-tails') throw new RangeError('tailsOf: nobody steps on the tails');
    return tails;
  };

  // The arc of 1 m about (0, 1) ends 0.5 m behind the touch.
  it('is 15 kg on the rear end of the bottom edge, from the first moment and for ever', () => {
    const { presses, moving, pushes, foot, fixed } = tailsScript(tailsOf());
    expect([moving, pushes, foot]).toEqual([[], [], null]);
    expect(fixed.mass).toBeCloseTo(10, 12);
    for (const time of [0, 1, 4]) {
      expect(presses[0]!.force(time)).toBeCloseTo(15 * g, 10);
      expect(presses[0]!.place(time).x).toBeCloseTo(-0.5, 9);
      expect(presses[0]!.place(time).y).toBeCloseTo(1 - Math.sqrt(0.75), 9);
    }
  });

  it('or as heavy as the design says', () => {
    expect(tailsOf('loads: { child-on-the-tails: { mass: 20 kg } }\n').load.force).toBeCloseTo(20 * g, 10);
  });
});
