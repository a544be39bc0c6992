/** A free body against closed forms and the energy integral: it must find the period and the rest by itself. */
import { describe, expect, it } from 'vitest';
import { freeSwingSeen } from '../../src/contact/free-swing.js';
import { stepFor } from '../../src/contact/second-opinion.js';
import { periodAt } from '../oracles/round-runner.js';
import { bodyNames, courseOf, degree, roundBody, type BodyName } from './round-bodies.js';

/** Period within 0.1 % at 8°, 0.3 % at 2°; rest within 0.002° by the middle of swings: half of that was measured. */
const cases = bodyNames.flatMap((name) => [
  { name, swing: 2, within: 3e-3 },
  { name, swing: 8, within: 1e-3 },
  { name, swing: 15, within: 1e-3 },
]);

function seen(name: BodyName, swing: number, off = 0) {
  const round = roundBody(name);
  const { centre, inertia, mass } = round.body;
  // Turned about the arc’s centre: the rest lies at `off`.
  const hang = round.radius - centre.y;
  const turned = { x: -hang * Math.sin(off), y: round.radius - hang * Math.cos(off) };
  const runner = { ...round, body: { mass, inertia, centre: turned } };
  const period = periodAt(round, swing * degree);
  const release = { lean: off + swing * degree, other: off - swing * degree, period };
  const found = freeSwingSeen(courseOf(runner, 40 * degree), release, stepFor(period, round.body.centre.y));
  if (found === null) throw new RangeError(`no swing of ${name}`);
  return { ...found, period: found.period / period - 1 };
}

describe('a body let go in a contact engine', () => {
  it.each(cases)('$name swings $swing° with the period of the energy integral', ({ name, swing, within }) => {
    const { period, middle } = seen(name, swing);
    expect(Math.abs(period)).toBeLessThan(within);
    expect(Math.abs(middle) / degree).toBeLessThan(0.002);
  });

  it.each(bodyNames)('%s settles where G hangs plumb below the centre, wherever that is', (name) => {
    for (const off of [-0.061, 0.0849]) {
      expect(Math.abs(seen(name, 5, off).middle - off) / degree).toBeLessThan(0.002);
    }
  });

  it('takes longer the wider it swings', () => {
    const wide = (swing: number) =>
      (1 + seen('person', swing).period) * periodAt(roundBody('person'), swing * degree);
    // 2.2 % more at 15° than at 2°: one whose period did not grow would be held against the wrong one.
    expect(wide(15) / wide(2)).toBeCloseTo(1.0217, 3);
  });
});
