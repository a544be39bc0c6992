/** A child steps on the tails of the empty chair: a weight put at once on the rear end of the rockers' bottom edge. */
import type { MassProperties } from '../mass.js';
import { g } from '../rolling/gravity.js';
import type { DeadLoad } from '../rolling/dead-loads.js';
import type { Script } from '../rolling/script.js';

/** kg (assumption of this project; ordinary rocking chairs bear 10 to 15 kg there). */
export const tailsDefaults = { mass: 15 } as const;

export interface ChildOnTheTails {
  readonly kind: 'child-on-the-tails';
  readonly chair: MassProperties;
  readonly load: DeadLoad;
}

export const childOnTheTails = (
  chair: MassProperties,
  tail: DeadLoad['place'],
  mass: number,
): ChildOnTheTails => ({ kind: 'child-on-the-tails', chair, load: { place: tail, force: mass * g } });

export const tailsScript = ({ chair, load: { place, force } }: ChildOnTheTails): Script => ({
  fixed: chair,
  moving: [],
  presses: [{ place: () => place, force: () => force }],
  pushes: [],
  foot: null,
  breaks: [],
  end: 0,
});
