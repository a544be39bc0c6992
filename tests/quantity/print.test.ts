import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as print from '../../src/quantity/print.js';
import { read } from './scope.js';

const inch = 0.0254;

describe('inches', () => {
  it.each([
    [39.5, '39-1/2 in'],
    [0.375, '3/8 in'],
    [-0.0625, '-1/16 in'],
    [-1.75, '-1-3/4 in'],
    [0, '0 in'],
    [-0, '0 in'],
    [2, '2 in'],
    [0.01, '0 in'],
    [-0.01, '0 in'],
    [0.99, '1 in'],
    // Halves of a sixteenth go away from zero, on both sides.
    [1 / 32, '1/16 in'],
    [-1 / 32, '-1/16 in'],
    [5 / 32, '3/16 in'],
    [-5 / 32, '-3/16 in'],
  ])('%f in is %s', (inches, text) => {
    expect(print.formatInches(inches * inch)).toBe(text);
  });
  it('in thirty-seconds when asked', () => {
    expect(print.formatInches(inch / 32, 32)).toBe('1/32 in');
    expect(print.formatInches((1 + 2 / 32) * inch, 32)).toBe('1-1/16 in');
  });
  it('are read back as they were', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5000, max: 5000 }), fc.constantFrom<16 | 32>(16, 32), (count, under) => {
        const metres = (count * inch) / under;
        expect(read(print.formatInches(metres, under))).toBeCloseTo(metres, 13);
      }),
    );
  });
  it('are within half a sixteenth, and the same on both sides of zero', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5, noNaN: true }), (metres) => {
        const text = print.formatInches(metres);
        expect(Math.abs(read(text) - metres)).toBeLessThanOrEqual(inch / 32 + 1e-10);
        expect(print.formatInches(-metres)).toBe(text === '0 in' ? text : `-${text}`);
      }),
    );
  });
});

describe('the others', () => {
  it.each([
    [print.formatFeetAndInches(66.5 * inch), `5' 6-1/2"`],
    [print.formatFeetAndInches(60 * inch), `5' 0"`],
    [print.formatFeetAndInches(71.9 * inch), `6' 0"`],
    [print.formatMillimetres(0.9046), '905 mm'],
    [print.formatMillimetres(-0.0004), '0 mm'],
    [print.formatMillimetres(0.00125, 1), '1.3 mm'],
    [print.formatLength(0.9144, 'in'), '36 in'],
    [print.formatLength(0.9144, 'mm'), '914 mm'],
    [print.formatLength(0.9144, 'cm'), '91.4 cm'],
    [print.formatLength(0.9144, 'm'), '0.914 m'],
    [print.formatLength(1, 'ft'), '3.28 ft'],
    [print.formatDegrees((6.5 * Math.PI) / 180), '6.5°'],
    [print.formatDegrees((6.2 * Math.PI) / 180), '6°'],
    [print.formatDegrees((6.25 * Math.PI) / 180), '6.5°'],
    [print.formatDegrees((-6.25 * Math.PI) / 180), '-6.5°'],
    [print.formatDegrees(-0.001), '0°'],
    [print.formatSeconds(2.0849), '2.08 s'],
    [print.formatSeconds(2.1), '2.1 s'],
    [print.formatKilograms(42.45), '42.5 kg'],
    [print.formatKilograms(9), '9 kg'],
    [print.formatPounds(0.45359237 * 93.5), '93.5 lb'],
    [print.formatNewtons(89.6), '90 N'],
    [print.formatPoundsForce(90), '20 lbf'],
    [print.formatJoules(12.46), '12.5 J'],
    [print.formatNumber(0.254), '0.25'],
    [print.formatNumber(-1.005, 2), '-1.01'],
  ])('%s is %s', (printed, text) => {
    expect(printed).toBe(text);
  });

  it.each([NaN, Infinity, -Infinity])('refuse %f', (value) => {
    const printers = Object.values(print).filter((printer) => printer !== print.formatLength);
    for (const printer of printers as ((value: number) => string)[]) {
      expect(() => printer(value)).toThrow(RangeError);
    }
    expect(() => print.formatLength(value, 'mm')).toThrow(RangeError);
    expect(() => print.formatLength(value, 'in')).toThrow(RangeError);
  });
});
