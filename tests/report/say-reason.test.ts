/** Reasons in a maker's words; the lengths in them checked on single arcs, where they have closed forms. */
import { describe, expect, it } from 'vitest';
import type { NoRest } from '../../src/measures/no-rest.js';
import { sayReason } from '../../src/report/say-reason.js';
import { checked, oneArc } from '../reading.js';

const reasonOf = (text: string): NoRest => checked(text).loads[0]!.record.noRest!;
/** The lump is all but the whole of the chair: G is at (-10, 400) mm within 0.1 mm. */
const tight = (radius: number) =>
  oneArc.replace('radius: 1000', `radius: ${radius}`).replace('nose: 400, tail: 500', 'nose: 300, tail: 300');

describe('a radius that is too small', () => {
  it('is told beside the height of G, and the least that would stand', () => {
    const reason = reasonOf(tight(390));
    expect(reason).toMatchObject({ cause: 'too-tight', radius: expect.closeTo(0.39, 12) as number });
    // Rests where tan θ = e/(R - h) before sin θ = reach/R: R² = reach² + (R reach/(R sin θ))²...
    const { leastRadius, height } = reason as Extract<NoRest, { cause: 'too-tight' }>;
    expect(height).toBeCloseTo(0.4, 3);
    // At the least radius G stands plumb over the very end: e/(R - h) = sin/cos of the end's slope.
    const slope = Math.asin(0.3 / leastRadius);
    expect((leastRadius - height) * Math.tan(slope)).toBeCloseTo(0.01, 3);
    expect(sayReason(reason, 'mm')).toMatch(
      /^the rockers are too tight: their radius, 390 mm, is not greater than the height of the centre of gravity, 400 mm, so it settles nowhere\. With the masses where they are, an arc of more than \d{3} mm would stand$/,
    );
  });

  it('rounds what must be exceeded up: an arc of the printed radius and a little stands', () => {
    const printed = Number(/more than (\d+) mm would/.exec(sayReason(reasonOf(tight(390)), 'mm'))![1]);
    expect(checked(tight(printed + 1)).loads[0]!.record.noRest).toBeNull();
    expect(checked(tight(printed - 3)).loads[0]!.record.noRest).not.toBeNull();
  });
});

describe('rolling off an end', () => {
  const ahead = (nose: number) =>
    oneArc.replace('at: [-10, 400]', 'at: [200, 400]').replace('nose: 400', `nose: ${nose}`);

  it('is told with how far the end would have to reach', () => {
    const reason = reasonOf(ahead(250));
    // Rest would be at tan θ = 0.2/0.6: its place is sin θ = 0.2/sqrt(0.4) = 0.316 m ahead.
    expect(reason).toMatchObject({
      cause: 'past-end',
      end: 'nose',
      reach: expect.closeTo(0.25, 9) as number,
    });
    expect((reason as { leastReach: number }).leastReach).toBeCloseTo(0.2 / Math.sqrt(0.4), 3);
    expect(sayReason(reason, 'mm')).toMatch(
      /^rolls forward past the nose of its rockers: .* still \d+ mm ahead of it\. On the same arc the nose would have to reach more than 31\d mm from where it touches as drawn, not 250 mm$/,
    );
    expect(checked(ahead(320)).loads[0]!.record.noRest).toBeNull();
  });

  it('back is told of the tail', () => {
    const behind = oneArc.replace('at: [-10, 400]', 'at: [-250, 400]').replace('tail: 500', 'tail: 200');
    expect(sayReason(reasonOf(behind), 'in')).toMatch(
      /^rolls back past the tail of its rockers: .* behind it\. .* the tail /,
    );
  });
});

it('of what stands on a corner is that it does not rock', () => {
  const peg = oneArc.replace(
    / {2}- \{ name: rocker.*\n/,
    "  - { name: peg, mass: 1 g, outline: { path: 'M 0 0 L 300 200 L -300 200 Z' } }\n",
  );
  expect(sayReason(reasonOf(peg), 'mm')).toMatch(/^stands on a corner .* it does not rock$/);
});

it('that is a sentence already stays as it is', () => {
  expect(sayReason('the design has no seat line', 'mm')).toBe('the design has no seat line');
});

it('says when no radius would help: G beyond the end', () => {
  const reason: NoRest = { cause: 'too-tight', radius: 0.3, height: 0.5, leastRadius: Infinity };
  expect(sayReason(reason, 'mm')).toMatch(
    /No radius would stand: the centre of gravity is beyond the end of the rockers$/,
  );
});
