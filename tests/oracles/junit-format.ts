/**
 * What may stand in a JUnit report: names of elements and attributes, which must be there, what holds what. Facts of two
 * published schemas, in our own words: `junit-10.xsd` of the xUnit plugin of Jenkins (MIT licence), which CI servers read
 * by, whole; of `JUnit.xsd` for the JUnit task of Apache Ant (Windy Road Technology, Apache License 2.0), which is
 * stricter, all but the time stamp, the host name, the package and the output streams that it asks for.
 */
import type { Node } from './xml.js';

interface Form {
  readonly required: readonly string[];
  readonly optional: readonly string[];
  readonly holds: readonly string[];
  /** Whether words may stand in it. */
  readonly text: boolean;
}

const outcome: Form = { required: ['type'], optional: ['message'], holds: [], text: true };
const outcomes = ['failure', 'error', 'skipped'];

const forms: Readonly<Record<string, Form>> = {
  testsuites: {
    required: [],
    optional: ['name', 'time', 'tests', 'failures', 'errors'],
    holds: ['testsuite'],
    text: false,
  },
  testsuite: {
    required: ['name', 'tests', 'failures', 'errors', 'time', 'id'],
    optional: ['group', 'skipped', 'timestamp', 'hostname', 'package', 'file', 'log', 'url'],
    holds: ['properties', 'testcase', 'system-out', 'system-err'],
    text: false,
  },
  properties: { required: [], optional: [], holds: ['property'], text: false },
  property: { required: ['name', 'value'], optional: [], holds: [], text: false },
  testcase: { required: ['name', 'classname', 'time'], optional: ['group'], holds: outcomes, text: false },
  failure: outcome,
  error: outcome,
  skipped: outcome,
};

/** Seconds, as both schemas take them. */
const seconds = /^\d{0,3}(\.\d*)?$/;
const count = /^\d+$/;

/** What is wrong with a report, in words. */
export function junitProblems(root: Node): string[] {
  const start = ['testsuites', 'testsuite'].includes(root.name) ? [] : [`<${root.name}> is no report`];
  return [...start, ...problemsOf(root)];
}

function problemsOf(node: Node): string[] {
  const form = forms[node.name];
  if (!form) return [`<${node.name}> is unknown`];
  return [
    ...attributeProblems(node, form),
    ...node.children
      .filter(({ name }) => !form.holds.includes(name))
      .map(({ name }) => `<${name}> in <${node.name}>`),
    ...(form.text || node.text.trim() === '' ? [] : [`words in <${node.name}>: ${node.text.trim()}`]),
    ...(node.name === 'testsuite' ? suiteProblems(node) : []),
    ...(node.name === 'testcase' && node.children.length > 1 ? ['a case with several outcomes'] : []),
    ...node.children.flatMap(problemsOf),
  ];
}

function attributeProblems({ name, attributes }: Node, { required, optional }: Form): string[] {
  const given = Object.keys(attributes);
  const known = [...required, ...optional];
  return [
    ...required.filter((key) => !given.includes(key)).map((key) => `<${name}> without ${key}`),
    ...given.filter((key) => !known.includes(key)).map((key) => `<${name}> with ${key}`),
    ...given.filter((key) => isMalformed(key, attributes[key]!)).map((key) => `${key}="${attributes[key]!}"`),
  ];
}

function isMalformed(key: string, value: string): boolean {
  if (key === 'time') return !seconds.test(value);
  return ['tests', 'failures', 'errors', 'skipped', 'id'].includes(key) && !count.test(value);
}

/** Properties first, and once; the counts are those of what stands there. */
function suiteProblems({ attributes, children }: Node): string[] {
  const cases = children.filter(({ name }) => name === 'testcase');
  const counted = {
    tests: cases.length,
    failures: cases.filter((one) => one.children[0]?.name === 'failure').length,
    errors: cases.filter((one) => one.children[0]?.name === 'error').length,
  };
  return [
    ...(children.findLastIndex(({ name }) => name === 'properties') > 0 ? ['properties behind a case'] : []),
    ...Object.entries(counted)
      .filter(([key, value]) => Number(attributes[key]) !== value)
      .map(([key, value]) => `${key} is ${attributes[key] ?? 'nothing'}, there are ${value}`),
  ];
}
