/** What a word builds, or its flaws, where a test expects the one or the other. */
import type { Built, Flaw } from '../../../src/geometry/flaw.js';

export function sound<T>(made: Built<T>): T {
  if (!made.ok) throw new Error(`expected no flaw, found ${JSON.stringify(made.flaws)}`);
  return made;
}

export function flawsOf(made: Built<unknown>): readonly Flaw[] {
  if (made.ok) throw new Error('expected a flaw, found none');
  return made.flaws;
}

/** `expected …, found …`, one line a flaw. */
export const said = (made: Built<unknown>): string =>
  flawsOf(made)
    .map(({ expected, found }) => `expected ${expected}, found ${found}`)
    .join('\n');
