/** Reading designs in tests. */
import { describeIssue, type Checked } from '../../src/design/issue.js';
import type { DesignInSI } from '../../src/design/design.js';
import { readDesign, type Design } from '../../src/design/read-design.js';
import { resolveDesign } from '../../src/design/resolve.js';

export function valueOf<T>(checked: Checked<T>): T {
  if (checked.ok) return checked.value;
  throw new Error(checked.issues.map(describeIssue).join('\n'));
}

export const read = (text: string, file = 'chair.yaml'): Design => valueOf(readDesign(text, file));
export const resolved = (text: string): DesignInSI => valueOf(resolveDesign(read(text)));

/** What is told of a text, one line a mistake. */
export function mistakesIn(text: string, file = 'chair.yaml'): string[] {
  const checked = readDesign(text, file);
  return checked.ok ? [] : checked.issues.map(describeIssue);
}

/** A whole design of six lines. */
export const disc = `trueroll: 1
units: in
parts:
  - name: disc
    mass: 1 kg
    outline: { circle: { centre: [0, 5], radius: 5 } }
`;
