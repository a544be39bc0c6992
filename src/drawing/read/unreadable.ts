/** Where reading a file stops. Thrown and caught within this folder: outside a flaw is data. */
import type { DrawingFlaw } from './drawn.js';

export class Unreadable extends Error {
  readonly flaw: DrawingFlaw;

  constructor(flaw: DrawingFlaw) {
    super(flaw.expected);
    this.flaw = flaw;
  }
}

export interface Refused {
  readonly ok: false;
  readonly flaws: readonly DrawingFlaw[];
}

/** What is read, or the flaw that reading stopped at. */
export function untilUnreadable<T>(read: () => T): T | Refused {
  try {
    return read();
  } catch (error) {
    if (error instanceof Unreadable) return { ok: false, flaws: [error.flaw] };
    throw error;
  }
}
