import { describe, expect, it } from 'vitest';
import {
  blockRate,
  blockSpeedRatio,
  halfDiscPeriod,
  halfHoopPeriod,
  hemispherePeriod,
  pointMassPeriod,
  quarterPeriodOfBlock,
} from './textbook-periods.js';

// Examples worked with g = 9.80665 m/s² in a table of textbook forms, as printed there: to a unit of the last digit.
describe('textbook periods', () => {
  it.each([
    ['half disc, 1 m', halfDiscPeriod(1), 2.48527, 6],
    ['half disc, 0.1 m', halfDiscPeriod(0.1), 0.785911, 6],
    ['half hoop, 0.1 m', halfHoopPeriod(0.1), 0.67792, 5],
    ['hemisphere, 0.1 m', hemispherePeriod(0.1), 0.83534, 5],
    ['point mass half way out', pointMassPeriod(1, 0.5), 1.418746, 6],
    ['point mass a quarter out', pointMassPeriod(1, 0.25), 3.009614, 6],
    ['point mass three quarters out', pointMassPeriod(1, 0.75), 0.5792, 6],
    ['block, p', blockRate(0.6), 3.5012, 4],
    ['block, half way to its crest', 4 * quarterPeriodOfBlock(0.6, 0.5), 1.5046, 4],
    ['block, energy kept at an impact', blockSpeedRatio(0.25) ** 2, 0.8248, 4],
  ])('%s', (_, value, printed, digits) => {
    expect(Math.abs(value - printed)).toBeLessThan(10 ** -digits);
  });
});
