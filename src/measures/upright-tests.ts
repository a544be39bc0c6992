/**
 * The loads of the published stability tests of upright chairs, put on the free rocking chair: where it rolls to, and how
 * much rocker is left there. Those tests are not meant for rocking chairs and hold a chair's feet by stops: this is no
 * such test and shows conformity with nothing.
 */
import type { Chair } from '../chair/chair.js';
import { minus, plus, times, type Point } from '../geometry/point.js';
import { lengthAt } from '../geometry/profile.js';
import { isMissing } from '../numeric/missing.js';
import { floorPlace } from '../rolling/floor-place.js';
import { pushedRest } from '../rolling/pushed-rest.js';
import { directionOf, meetingOf } from '../sitter/support-lines.js';

export interface UprightTest {
  readonly of: 'back' | 'forward';
  /** Down on the seat, and level: newton. */
  readonly down: number;
  readonly level: number;
  /** What of it was read, and what is from memory. */
  readonly source: string;
  /** Running surface left on that side, metres, 0 past its end; null: it comes to no rest. */
  readonly rockerLeft: number | null;
}

/** Newton and metres. */
const down = 600;
const aheadOfMeeting = 0.175;
const overSeat = 0.3;
const behindEdge = 0.06;
const outward = 20;

/** EN 1022, from memory: 0.2857 (1000 - h) N, h the height of the loaded seat in mm, and 80 N from 720 mm on. */
const levelForce = (height: number): number => (height < 0.72 ? 0.2857 * (1000 - 1000 * height) : 80);

/** @param rest lean of the empty chair; nothing without seat and back lines, or where they do not meet */
export function uprightTests(chair: Chair, rest: number): UprightTest[] {
  const { seat, back, profile, surface } = chair;
  if (seat === null || back === null) return [];
  const meeting = meetingOf(seat, back);
  if (isMissing(meeting)) return [];
  const along = directionOf(seat.rear, seat.front);
  const up = directionOf(back.foot, back.top);
  const left = (of: UprightTest['of'], seatAt: Point, level: number, pushAt: Point): number | null => {
    const force = of === 'back' ? level : -level;
    const lean = pushedRest(
      profile,
      chair.body,
      [{ place: seatAt, force: down }],
      { place: pushAt, force },
      rest,
    );
    if (lean === null) return null;
    const here = lengthAt(profile, lean);
    return Math.max(0, of === 'back' ? surface.tail.length - here : here - surface.nose.length);
  };
  const onSeat = plus(meeting, times(along, aheadOfMeeting));
  const top = Math.min(overSeat, Math.hypot(back.top.x - meeting.x, back.top.y - meeting.y));
  const level = levelForce(floorPlace(profile, onSeat, rest).y);
  const edge = minus(seat.front, times(along, behindEdge));
  return [
    {
      of: 'back',
      down,
      level,
      source: 'ISO 7174-1: 600 N at 175 mm, read; the level force by EN 1022, from memory',
      rockerLeft: left('back', onSeat, level, plus(meeting, times(up, top))),
    },
    {
      of: 'forward',
      down,
      level: outward,
      source: 'EN 1022: 600 N at 60 mm and 20 N, read second-hand',
      rockerLeft: left('forward', edge, outward, edge),
    },
  ];
}
