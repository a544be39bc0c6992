/** A design from its text, checked; a mistake in it is a fault of the test. */
import { checkDesign, type CheckResult } from '../src/check-design.js';
import { describeIssue } from '../src/design/issue.js';
import { reportJson } from '../src/report/json.js';
import type { ReportObject } from '../src/report/schema.js';

export function checked(text: string): CheckResult {
  const answer = checkDesign(text, 'design.yaml');
  if (!answer.ok) throw new Error(answer.issues.map(describeIssue).join('\n'));
  return answer.value;
}

export const reported = (text: string): ReportObject => reportJson(checked(text));

/** Its mistakes, one a line. */
export function mistakesIn(text: string): string[] {
  const answer = checkDesign(text, 'design.yaml');
  return answer.ok ? [] : answer.issues.map(describeIssue);
}

/**
 * One arc of 1 m about (0, 1) on two light rockers, and a lump that brings the whole to 10 kg at (-0.01, 0.4): every
 * measure of it is a closed form.
 */
export const oneArc = `
trueroll: 1
units: mm
spacing: 500
parts:
  - { name: rocker, count: 2, mass: 1 g, outline: { rocker: { radius: 1000, depth: 50, nose: 400, tail: 500 } } }
extras: [ { name: lump, mass: 9.998 kg, at: [-10, 400], inertia: 1.4 kg m² } ]
seat: { front: [300, 380], rear: [-150, 350] }
back: { foot: [-150, 350], top: [-350, 1000] }
`;

export const sitters = `sitters:
  - { name: short, body: female, stature: 1.55 m, mass: 50 kg }
  - { name: tall, body: male, stature: 1.9 m, mass: 100 kg }
`;
