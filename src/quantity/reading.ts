/** What comes of reading a text: a value, or the mistake that stands in it. */

export interface Mistake {
  /** Where in the source text, from 0. */
  readonly at: number;
  readonly expected: string;
  readonly found: string;
  readonly hint?: string;
}

export type Reading<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly mistake: Mistake };

/** Carries a mistake out of nested reading; never leaves this room. A class so that a bug is not taken for it. */
class Refusal extends Error {
  readonly mistake: Mistake;
  constructor(mistake: Mistake) {
    super(mistake.expected);
    this.mistake = mistake;
  }
}

export function refuse(at: number, expected: string, found: string, hint?: string): never {
  throw new Refusal(hint === undefined ? { at, expected, found } : { at, expected, found, hint });
}

export function readingOf<T>(read: () => T): Reading<T> {
  try {
    return { ok: true, value: read() };
  } catch (problem) {
    if (problem instanceof Refusal) return { ok: false, mistake: problem.mistake };
    throw problem;
  }
}

/** What `read` refuses, told at its place in a longer text. */
export function readingFrom<T>(offset: number, reading: Reading<T>): T {
  if (reading.ok) return reading.value;
  const { at, expected, found, hint } = reading.mistake;
  return refuse(at + offset, expected, found, hint);
}
