/** An issue found after reading, at its place in the file. */
import type { Issue } from './issue.js';
import { issueOf, type Words } from './places.js';
import type { Path } from './plain-data.js';
import type { Design } from './read-design.js';

/**
 * Where the file has no such path: at the deepest thing on the way to it. An index is passed over where an outline
 * or a radius stands without its list. `at`: where in the text of the value, from 0.
 */
export function issueAt(design: Design, path: Path, words: Words & { readonly at?: number }): Issue {
  return issueOf(design.places, { path, ...words });
}
