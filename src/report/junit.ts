/**
 * JUnit XML for CI: a suite a design, a case a limit, failed when it is not met and in error when it is unknown, so that
 * a job does not pass on it. Valid by the published schema of the Ant task, the strictest about, which wants a time stamp
 * and a host name: both stand still, so that two runs of the same design give the same bytes.
 */
import type { CheckResult } from '../check-design.js';
import type { JudgedLimit, Verdict } from '../checks/verdict.js';
import { limitWords, sayLimit } from './limit-words.js';
import { sayRemedy } from './remedy-words.js';
import type { ReportedDesign } from './reported-design.js';
import { secondLine } from './second-opinion-words.js';
import { tool } from './tool.js';
import { printXml, type XmlElement } from './xml.js';

export const printJunit = (designs: readonly ReportedDesign[]): string =>
  printXml({
    name: 'testsuites',
    attributes: {},
    content: designs.map(suite),
  });

const counts = (limits: readonly JudgedLimit[]): XmlElement['attributes'] => {
  const of = (verdict: Verdict): number => limits.filter((limit) => limit.verdict === verdict).length;
  return { tests: limits.length, failures: of('fail'), errors: of('unknown') };
};

/** Where nothing ran: a calculation has no hour and no host. The schema names `localhost` for a host unknown. */
const nowhere = { timestamp: '1970-01-01T00:00:00', hostname: 'localhost' };

function suite({ result, sha256 }: ReportedDesign, index: number): XmlElement {
  const { design, file, limits, verdict } = result;
  const properties = {
    tool: tool.name,
    version: tool.version,
    kind: design.kind,
    verdict,
    secondCalculation: secondLine(result),
    ...(sha256 !== null && { sha256 }),
  };
  return {
    name: 'testsuite',
    attributes: { name: design.name, id: index, package: file, ...nowhere, ...counts(limits), time: 0 },
    content: [
      {
        name: 'properties',
        attributes: {},
        content: Object.entries(properties).map(([name, value]) => ({
          name: 'property',
          attributes: { name, value },
          content: [],
        })),
      },
      ...limits.map((limit) => testcase(limit, result)),
      ...['system-out', 'system-err'].map((name) => ({ name, attributes: {}, content: [] })),
    ],
  };
}

const testcase = (limit: JudgedLimit, result: CheckResult): XmlElement => ({
  name: 'testcase',
  // Servers take what stands before the last dot for a package: the file, and in it a load.
  attributes: { classname: `${result.file}.${limit.load}`, name: limit.id, time: 0 },
  content: outcome(limit, result),
});

function outcome(limit: JudgedLimit, { design, remedies }: CheckResult): XmlElement[] {
  if (limit.verdict === 'pass') return [];
  const { who, what, wanted, value, off, why } = limitWords(limit, design.units);
  const lines = [
    `${who}: ${what}`,
    `wanted: ${wanted}`,
    `value: ${value ?? 'none'}`,
    ...(off === null ? [] : [`by how much: ${off}`]),
    ...(why === null ? [] : [`why: ${why}`]),
    `basis: ${limit.basis}`,
    ...(remedies.get(limit.id) ?? []).map((remedy) => `change: ${sayRemedy(remedy, limit, design.units)}`),
  ];
  const [name, type] = limit.verdict === 'fail' ? ['failure', 'not met'] : ['error', 'unknown'];
  return [{ name, attributes: { type, message: sayLimit(limit, design.units) }, content: lines.join('\n') }];
}
