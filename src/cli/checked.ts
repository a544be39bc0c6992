/** What was read, or what is wrong with it: the one shape in which the command line has it. */
import type { Checked, Issue } from '../design/issue.js';

export const refused = (issue: Issue): Checked<never> => ({ ok: false, issues: [issue] });

export const issuesOf = (checked: Checked<unknown>): readonly Issue[] => (checked.ok ? [] : checked.issues);
