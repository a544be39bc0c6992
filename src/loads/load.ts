/** A load is data: what rides on the chair, how far it is let swing, what moves and presses when. */
import type { MassProperties } from '../mass.js';
import type { LoadId } from '../names.js';
import type { ChildOnTheTails } from './child-on-the-tails.js';
import type { GettingUp } from './getting-up.js';
import type { LeaningBackHard } from './leaning-back-hard.js';
import type { Person } from './people.js';

/** What moves and presses in a moving load. */
export type MovingScript = LeaningBackHard | GettingUp | ChildOnTheTails;

export interface Load {
  readonly id: LoadId;
  /** Name of the sitter; null for loads without one. */
  readonly sitter: string | null;
  readonly person: Person | null;
  /** Of all that rolls, in the chair's frame as drawn; of a moving load at its start. */
  readonly body: MassProperties;
  /** What stands still at the rest that this load is counted from: itself, but of a moving load. */
  readonly settled: MassProperties;
  /** Mass of what rides, kg. */
  readonly riders: number;
  /** How far back of its rest it is let go for the free swing, radians. */
  readonly swing: number;
  /** null: nothing moves. */
  readonly script: MovingScript | null;
}

/** The standard swing, 6° (the contract's figure; an assumption of this project: a gentle rock). */
export const standardSwing = (6 * Math.PI) / 180;
