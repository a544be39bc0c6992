import { describe, expect, it } from 'vitest';
import {
  deviationOf,
  drawnError,
  shopErrors,
  takenAsExact,
  tradeError,
  valuesOff,
} from '../../src/explore/shop-errors.js';
import { evenPoints } from '../../src/numeric/owen-scramble.js';
import { spreadOf } from '../../src/numeric/spread.js';
import { disc, read, resolved } from '../design/read.js';

const sizes = `dimensions: { half: radius / 2, radius: 40 in, rungs: 3, tilt: 5 deg, tail: 20 in, gap: half + 1 in }\n`;
const errorsOf = (errors = '') => {
  const text = `${disc}${sizes}${errors}`;
  return shopErrors(read(text), resolved(text));
};
const inch = 0.0254;

describe('the shop’s errors', () => {
  it('are the trade’s for lengths that are written as such, in the order of the file, marked', () => {
    expect(
      errorsOf().map(({ variable, spread, size, assumed }) => [variable.name, spread, size, assumed]),
    ).toEqual([
      ['radius', 'even', tradeError, true],
      ['tail', 'even', tradeError, true],
    ]);
    expect(tradeError).toBeCloseTo(inch / 32, 15);
  });

  it('are those of the design where it says so, of what is made of others too', () => {
    const said = errorsOf('errors: { tail: { normal: 1/16 in }, half: 1 mm, tilt: 0.5 deg, rungs: 0.5 }\n');
    expect(said.map(({ variable, spread, size, assumed }) => [variable.name, spread, size, assumed])).toEqual(
      [
        ['half', 'even', expect.closeTo(0.001, 12), false],
        ['radius', 'even', tradeError, true],
        ['rungs', 'even', 0.5, false],
        ['tilt', 'even', expect.closeTo(Math.PI / 360, 12), false],
        ['tail', 'normal', expect.closeTo(inch / 16, 12), false],
      ],
    );
  });

  it('are of alterations too where the design says so, about what it alters already', () => {
    const text = `${disc}${sizes}alterations: { back-rest: 1/2 in }\nerrors: { back-rest: 1/8 in, radius: 1/16 in }\n`;
    const errors = shopErrors(read(text), resolved(text));
    expect(errors.map(({ variable, size }) => [variable.name, size])).toEqual([
      ['radius', expect.closeTo(inch / 16, 12)],
      ['tail', tradeError],
      ['back-rest', expect.closeTo(inch / 8, 12)],
    ]);
    const [, , rest] = valuesOff(read(text), errors)([0, 0, 0.001]);
    expect(rest).toBeCloseTo(inch / 2 + 0.001, 12);
  });

  it('leave out what is no length, and say so', () => {
    const text = `${disc}${sizes}`;
    expect(takenAsExact(read(text), errorsOf()).map(({ name }) => name)).toEqual(['rungs', 'tilt']);
  });

  it('of what is made of others come on top of what those make', () => {
    const text = `${disc}${sizes}errors: { half: 1 mm }\n`;
    const errors = shopErrors(read(text), resolved(text));
    const [half, radius, tail] = valuesOff(read(text), errors)([0.001, 0.01, -0.002]);
    expect(radius).toBeCloseTo(40 * inch + 0.01, 12);
    expect(half).toBeCloseTo((40 * inch + 0.01) / 2 + 0.001, 12);
    expect(tail).toBeCloseTo(20 * inch - 0.002, 12);
  });

  it.each([
    ['even', 1 / Math.sqrt(3)],
    ['normal', 1],
  ] as const)('drawn %s have the deviation that they are said to have', (spread, deviation) => {
    const error = { spread, size: 0.002 };
    const drawn = spreadOf(evenPoints(4096, 1, 3).map(([u]) => drawnError(error, u!)))!;
    expect(deviationOf(error)).toBeCloseTo(0.002 * deviation, 15);
    // Even points: far closer than chance, which would leave a hundredth.
    expect(drawn.deviation / deviationOf(error)).toBeCloseTo(1, 2);
    expect(Math.abs(drawn.mean)).toBeLessThan(1e-5);
  });
});
