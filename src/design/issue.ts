/** A mistake in a design file: data, not an exception. */
export interface Issue {
  readonly file: string;
  /** From 1; null when the file as a whole is at fault. */
  readonly line: number | null;
  readonly column: number | null;
  /** What was expected there. */
  readonly expected: string;
  /** What stands there. */
  readonly found: string;
  /** What to do about it: the nearest known word, how to write it. */
  readonly hint?: string;
}

export type Checked<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly issues: readonly Issue[] };

/** Of a file as a whole, or of what was given on a command line. */
export const issueOfWhole = (file: string, expected: string, found: string, hint?: string): Issue => ({
  file,
  line: null,
  column: null,
  expected,
  found,
  ...(hint !== undefined && { hint }),
});

/** One line a mistake: `file:line:column: expected …, found …. Hint: …`. */
export function describeIssue(issue: Issue): string {
  const place = issue.line === null ? issue.file : `${issue.file}:${issue.line}:${issue.column ?? 1}`;
  const hint = issue.hint === undefined ? '' : `. Hint: ${issue.hint}`;
  return `${place}: expected ${issue.expected}, found ${issue.found}${hint}`;
}

/** For sorting: what is of the file as a whole first. */
export const inFileOrder = (a: Issue, b: Issue): number =>
  (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0);
