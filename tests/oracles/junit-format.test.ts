import { describe, expect, it } from 'vitest';
import { junitProblems } from './junit-format.js';
import { readXml } from './xml.js';

const suite = (inner: string, counts = 'tests="1" failures="0" errors="0"'): string =>
  `<testsuites><testsuite name="s" package="p" id="0" timestamp="1970-01-01T00:00:00" hostname="h" ${counts} time="0">${inner}</testsuite></testsuites>`;
const testcase = (inner = ''): string => `<testcase name="n" classname="c" time="0.01">${inner}</testcase>`;
const problems = (document: string): string[] => junitProblems(readXml(document));

describe('the JUnit format', () => {
  it('lets a report stand', () => {
    expect(problems(suite(testcase()))).toEqual([]);
    expect(
      problems(
        suite(testcase('<failure type="t" message="m">words</failure>'), 'tests="1" failures="1" errors="0"'),
      ),
    ).toEqual([]);
  });

  it.each([
    ['another root', '<report/>'],
    ['a wrong count', suite(testcase(), 'tests="2" failures="0" errors="0"')],
    ['a count that is no number', suite(testcase(), 'tests="one" failures="0" errors="0"')],
    ['a failure not counted', suite(testcase('<failure type="t"/>'))],
    ['two outcomes', suite(testcase('<failure type="t"/><error type="t"/>'))],
    ['an outcome without its type', suite(testcase('<failure/>'), 'tests="1" failures="1" errors="0"')],
    ['a case without a class', suite('<testcase name="n" time="0"/>')],
    ['an attribute of no schema', suite('<testcase name="n" classname="c" time="0" file="f"/>')],
    ['an element of no schema', suite(`<note/>${testcase()}`)],
    ['words between cases', suite(`words${testcase()}`)],
    ['properties behind a case', suite(`${testcase()}<properties/>`)],
    ['a time in words', suite('<testcase name="n" classname="c" time="1 s"/>')],
  ])('stops %s', (_, document) => {
    expect(problems(document)).not.toEqual([]);
  });
});
