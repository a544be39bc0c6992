import type { Flaw } from '../geometry/flaw.js';

/** A flaw of the drawing and the path in the design file to what has it. */
export interface DrawingFault {
  readonly path: readonly (string | number)[];
  readonly flaw: Flaw;
}
