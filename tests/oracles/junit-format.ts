/**
 * What may stand in a JUnit report, where no validator is at hand: names of elements and attributes, which must be there,
 * what holds what. Facts of the published schemas in our own words; with xmllint the reports are validated against the
 * schemas themselves (`junit.test.ts`). Also that the counts are those of what stands there, which no schema can ask.
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
const stream: Form = { required: [], optional: [], holds: [], text: true };

const forms: Readonly<Record<string, Form>> = {
  testsuites: {
    required: [],
    optional: [],
    holds: ['testsuite'],
    text: false,
  },
  testsuite: {
    required: ['name', 'package', 'id', 'timestamp', 'hostname', 'tests', 'failures', 'errors', 'time'],
    optional: [],
    holds: ['properties', 'testcase', 'system-out', 'system-err'],
    text: false,
  },
  properties: { required: [], optional: [], holds: ['property'], text: false },
  property: { required: ['name', 'value'], optional: [], holds: [], text: false },
  testcase: {
    required: ['name', 'classname', 'time'],
    optional: [],
    holds: ['failure', 'error'],
    text: false,
  },
  failure: outcome,
  error: outcome,
  'system-out': stream,
  'system-err': stream,
};

/** Seconds. */
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
  return ['tests', 'failures', 'errors', 'id'].includes(key) && !count.test(value);
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
