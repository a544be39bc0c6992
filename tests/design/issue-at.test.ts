/** Where things found after reading are told. */
import { describe, expect, it } from 'vitest';
import { issueAt } from '../../src/design/issue-at.js';
import { describeIssue } from '../../src/design/issue.js';
import type { Path } from '../../src/design/plain-data.js';
import { read } from './read.js';

const design = read(`trueroll: 1
units: in
parts:
  - name: disc
    mass: 1 kg
    outline: { circle: { centre: [0, 5], radius: 5 } }
  - name: two
    mass: 1 kg
    outline:
      - path: "M 0 0 L 1 0 L 1 1 Z"
      - { circle: { centre: [0, 5], radius: 5 }, hole: true }
`);

describe('the place of a path', () => {
  const place = (path: Path, at?: number) => {
    const words = { expected: 'one thing', found: 'another', hint: 'mend it' };
    return describeIssue(issueAt(design, path, at === undefined ? words : { ...words, at }));
  };
  const told = ': expected one thing, found another. Hint: mend it';

  it.each<[string, Path, string]>([
    ['a value', ['parts', 0, 'mass'], '5:11'],
    ['a block', ['parts', 0, 'outline', 'circle'], '6:24'],
    ['an outline without its list', ['parts', 0, 'outline', 0, 'circle', 'radius'], '6:50'],
    ['an outline of a list', ['parts', 1, 'outline', 1], '11:9'],
    ['a part', ['parts', 1], '7:5'],
    ['what is not there: the nearest around it', ['parts', 1, 'across'], '7:5'],
    ['a part that is not there', ['parts', 7, 'mass'], '4:3'],
    ['what has no key at all', ['seat', 'front'], '1:1'],
  ])('%s', (_, path, wanted) => {
    expect(place(path)).toBe(`chair.yaml:${wanted}${told}`);
  });

  it('counts inside a quoted text', () => {
    // Eight columns, `path: "`, then from the 4th character of the data on.
    expect(place(['parts', 1, 'outline', 0, 'path'], 4)).toBe(`chair.yaml:10:20${told}`);
  });
});
