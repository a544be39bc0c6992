import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cross, distance, minus } from '../../src/geometry/point.js';
import { seatedPose } from '../../src/sitter/seated-pose.js';
import { above, aheadOf, meetingOf, type SupportLines } from '../../src/sitter/support-lines.js';
import { chairs, linesOf, present } from './people-seated.js';

const man = { body: 'male', stature: 1.75, mass: 77 } as const;

const sound: SupportLines = {
  seat: { rear: { x: 0, y: 0.4 }, front: { x: 0.45, y: 0.42 } },
  back: { foot: { x: 0, y: 0.45 }, top: { x: -0.2, y: 1.1 } },
  arms: { rear: { x: 0, y: 0.62 }, front: { x: 0.4, y: 0.64 } },
};

describe('where seat and back meet', () => {
  // By hand: y = 0.4 + x / 10 and x = -(y - 0.4) / 4 meet at the origin of both, drawn from elsewhere on them.
  it('lies on both, wherever their ends are', () => {
    const seat = { rear: { x: 0.1, y: 0.41 }, front: { x: 0.5, y: 0.45 } };
    const back = { foot: { x: -0.05, y: 0.6 }, top: { x: -0.15, y: 1 } };
    const meeting = present(meetingOf(seat, back));
    expect(meeting.x).toBeCloseTo(0, 12);
    expect(meeting.y).toBeCloseTo(0.4, 12);
  });

  it('is the corner they are drawn from', () => {
    fc.assert(
      fc.property(chairs, (chair) => {
        const { seat, back } = linesOf(chair);
        expect(distance(present(meetingOf(seat, back)), chair.corner)).toBeLessThan(1e-12);
      }),
    );
  });

  it('is nowhere when they are parallel', () => {
    const reason = { missing: 'the seat line and the back line are parallel' };
    expect(meetingOf(sound.seat, { foot: { x: 0, y: 1 }, top: { x: 0.45, y: 1.02 } })).toEqual(reason);
    expect(meetingOf(sound.seat, { foot: sound.back.foot, top: sound.back.foot })).toEqual(reason);
  });
});

describe('lines moved', () => {
  it('keep their direction and lie the distance away, on the sitter’s side', () => {
    fc.assert(
      fc.property(chairs, fc.double({ min: 0, max: 0.5, noNaN: true }), (chair, away) => {
        const { seat, back } = linesOf(chair);
        const raised = above(seat, away);
        const alongSeat = minus(seat.front, seat.rear);
        expect(cross(alongSeat, minus(raised.rear, seat.rear)) / 0.45).toBeCloseTo(away, 12);
        expect(cross(alongSeat, minus(raised.front, raised.rear))).toBeCloseTo(0, 12);
        const forward = aheadOf(back, away);
        const alongBack = minus(back.top, back.foot);
        expect(cross(alongBack, minus(forward.foot, back.foot)) / 0.7).toBeCloseTo(-away, 12);
        expect(cross(alongBack, minus(forward.top, forward.foot))).toBeCloseTo(0, 12);
      }),
    );
  });
});

describe('lines the wrong way round', () => {
  it.each<[string, SupportLines]>([
    ['seat line', { ...sound, seat: { front: sound.seat.rear, rear: sound.seat.front } }],
    ['seat line', { ...sound, seat: { front: sound.seat.rear, rear: sound.seat.rear } }],
    ['back line', { ...sound, back: { foot: sound.back.top, top: sound.back.foot } }],
    ['arms line', { ...sound, arms: { front: sound.arms!.rear, rear: sound.arms!.front } }],
    ['back line', { ...sound, back: { foot: sound.back.foot, top: { x: 0, y: Number.NaN } } }],
  ])('seat nobody: %s', (which, lines) => {
    expect(seatedPose(man, lines)).toEqual({ missing: expect.stringContaining(which) as string });
  });

  it('are told from sound ones', () => {
    expect(seatedPose(man, sound)).toHaveProperty('joints');
    expect(seatedPose(man, { ...sound, arms: null })).toHaveProperty('joints');
  });
});
