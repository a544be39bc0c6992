import { describe, expect, it } from 'vitest';
import { sayEffect, sayFinely, saySize } from '../../src/report/fine-words.js';
import { sayShare } from '../../src/report/tolerance-words.js';

const inch = 0.0254;
const degree = Math.PI / 180;

describe('small changes in words', () => {
  it('are finer than a maker reads a chair', () => {
    expect(sayFinely('seatSlopeDeg', 7.44 * degree, 'in')).toBe('7.4°');
    expect(sayFinely('rockerLeftBackM', 4.16 * inch, 'in')).toBe('4-5/32 in');
    expect(sayFinely('rockerLeftBackM', 0.10456, 'cm')).toBe('104.6 mm');
    expect(sayFinely('periodS', 2.0304, 'in')).toBe('2.03 s');
    expect(sayFinely('frictionDemand', 0.0567, 'in')).toBe('0.057');
    expect(sayFinely('tailLoadBorneKg', 10.94, 'in')).toBe('10.9 kg');
  });

  it('have a sign, and none where nothing is left to see', () => {
    expect(sayEffect('seatSlopeDeg', 0.14 * degree, 'in')).toBe('+0.14°');
    expect(sayEffect('seatSlopeDeg', -0.004 * degree, 'in')).toBe('0');
    expect(sayEffect('periodS', -0.0026, 'in')).toBe('-0.003 s');
    expect(sayEffect('kneeHollowGapM', -inch / 64, 'in')).toBe('-1/64 in');
    expect(sayEffect('kneeHollowGapM', 0.00101, 'mm')).toBe('+1 mm');
    expect(sayEffect('edgeLoadBorneN', 3.2, 'mm')).toBe('+3 N');
  });

  it('of a size are as its maker would set it', () => {
    expect(saySize('length', inch / 32, 'in')).toBe('1/32 in');
    expect(saySize('length', 0.001, 'in')).toBe('0.0394 in');
    expect(saySize('length', inch / 32, 'mm')).toBe('0.8 mm');
    expect(saySize('length', 0.00025, 'mm')).toBe('0.25 mm');
    expect(saySize('angle', degree / 2, 'in')).toBe('0.5°');
    expect(saySize('mass', 0.2, 'in')).toBe('0.2 kg');
    expect(saySize('number', 0.5, 'in')).toBe('0.5');
  });

  it('of shares are in a hundred, with what they may well be', () => {
    expect(sayShare({ share: 0, low: 0, high: 0.0148 })).toBe('0 (to 1.5)');
    expect(sayShare({ share: 0.023, low: 0.008, high: 0.067 })).toBe('2.3 (0.8 to 6.7)');
    expect(sayShare({ share: 0.176, low: 0.134, high: 0.227 })).toBe('18 (13 to 23)');
  });
});
