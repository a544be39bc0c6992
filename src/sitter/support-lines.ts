/** What holds the sitter up, as lines in the chair's frame as drawn: seat and back pressed down, top of the arms. */
import { cross, dot, minus, plus, times, type Point } from '../geometry/point.js';
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';

export interface SeatLine {
  readonly front: Point;
  readonly rear: Point;
}

export interface BackLine {
  readonly foot: Point;
  readonly top: Point;
}

export interface ArmsLine {
  readonly rear: Point;
  readonly front: Point;
}

export interface SupportLines {
  readonly seat: SeatLine;
  readonly back: BackLine;
  /** null: the chair has none. */
  readonly arms: ArmsLine | null;
}

/** The unit arrow from one place to another. */
export function directionOf(from: Point, to: Point): Point {
  const along = minus(to, from);
  return times(along, 1 / Math.hypot(along.x, along.y));
}

/** The unit arrow a quarter turn to the left of it: above a line that runs forward. */
export const leftOf = ({ x, y }: Point): Point => ({ x: -y, y: x });

/** The unit arrow a quarter turn to the right of it: ahead of a line that runs up. */
export const rightOf = ({ x, y }: Point): Point => ({ x: y, y: -x });

/** Two lines within 1e-9 rad of each other meet nowhere: their directions are rounded at 1e-16, no chair comes near. */
const parallel = 1e-9;

/** Where the seat line and the back line meet, both drawn out as far as it takes. */
export function meetingOf(seat: SeatLine, back: BackLine): OrMissing<Point> {
  const forward = directionOf(seat.rear, seat.front);
  const up = directionOf(back.foot, back.top);
  const sine = cross(forward, up);
  if (!(Math.abs(sine) > parallel)) return missing('the seat line and the back line are parallel');
  return plus(seat.rear, times(forward, cross(minus(back.foot, seat.rear), up) / sine));
}

/** How far ahead of the rear of the seat line that is, along it, metres; missing where they are parallel. */
export function meetingAlong(seat: SeatLine, back: BackLine): OrMissing<number> {
  const meeting = meetingOf(seat, back);
  if (isMissing(meeting)) return meeting;
  return dot(minus(meeting, seat.rear), directionOf(seat.rear, seat.front));
}

/**
 * Farther behind the rear of the seat line than this, metres, nobody leans on a back while sitting on the seat, nor where
 * the back line meets the seat line ahead of its front (judgement of this project: half a metre is a deep seat).
 */
export const behindSeat = 0.5;

/** The seat line a distance above itself. */
export function above({ front, rear }: SeatLine, height: number): SeatLine {
  const up = times(leftOf(directionOf(rear, front)), height);
  return { front: plus(front, up), rear: plus(rear, up) };
}

/** The back line a distance ahead of itself. */
export function aheadOf({ foot, top }: BackLine, distance: number): BackLine {
  const ahead = times(rightOf(directionOf(foot, top)), distance);
  return { foot: plus(foot, ahead), top: plus(top, ahead) };
}

/** What stands the wrong way round, so that nobody can sit there; null: nothing. */
export function whyNobodySits({ seat, back, arms }: SupportLines): string | null {
  if (!(seat.front.x > seat.rear.x)) return 'the front of the seat line is not ahead of its rear';
  if (!(back.top.y > back.foot.y)) return 'the top of the back line is not above its foot';
  if (arms && !(arms.front.x > arms.rear.x)) return 'the front of the arms line is not ahead of its rear';
  return null;
}
