import { describe, expect, it } from 'vitest';
import type { Kind, MeasureKey } from '../../src/names.js';
import { printedStep } from '../../src/quantity/printed-step.js';
import { lengthUnits } from '../../src/quantity/units.js';
import { sayValue } from '../../src/report/measure-words.js';

/** A measure of each kind that is printed. */
const measureOf = {
  length: 'sweptBackM',
  angle: 'tipBackDeg',
  time: 'periodS',
  force: 'tipBackPushN',
  energy: 'tipBackEnergyJ',
  mass: 'tailLoadBorneKg',
  number: 'frictionDemand',
} as const satisfies Partial<Record<Kind, MeasureKey>>;

const cases = (Object.keys(measureOf) as (keyof typeof measureOf)[]).flatMap((kind) =>
  lengthUnits.map((units) => [kind, units] as const),
);

describe('the printed step', () => {
  it.each(cases)('of %s in a design in %s is that of what is printed', (kind, units) => {
    const step = printedStep(kind, units);
    const say = (steps: number): string => sayValue(measureOf[kind], steps * step, units);
    for (const steps of [0, 1, 2, 7, 40]) {
      expect(say(steps + 0.49)).toBe(say(steps));
      expect(say(steps + 0.51)).toBe(say(steps + 1));
      expect(say(steps + 1)).not.toBe(say(steps));
    }
  });

  it('of what is not printed is asked in vain', () => {
    expect(() => printedStep('density', 'in')).toThrow(RangeError);
  });
});
