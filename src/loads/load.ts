/** A load is data: what rides on the chair, and how far it is let swing. */
import type { MassProperties } from '../mass.js';
import type { LoadId } from '../names.js';
import type { Person } from './people.js';

export interface Load {
  readonly id: LoadId;
  /** Name of the sitter; null for loads without one. */
  readonly sitter: string | null;
  readonly person: Person | null;
  /** Of all that rolls, in the chair's frame as drawn. */
  readonly body: MassProperties;
  /** Mass of what rides, kg. */
  readonly riders: number;
  /** How far back of its rest it is let go for the free swing, radians. */
  readonly swing: number;
}

/** The standard swing, 6° (the contract's figure; an assumption of this project: a gentle rock). */
export const standardSwing = (6 * Math.PI) / 180;
