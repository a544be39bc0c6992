/** The findings as a Markdown page. */
import type { Finding } from './finding.js';

export interface Machine {
  readonly node: string;
  readonly cpu: string;
  readonly cores: number;
  readonly date: string;
}

export interface Answer {
  readonly question: string;
  readonly findings: readonly Finding[];
}

/** Three digits: more is noise. */
const digits = (value: number): string => Number(value.toPrecision(3)).toString();

function rowOf({ what, value, spread, unit, target, met }: Finding): string {
  const cells = [
    what,
    `${digits(value)} ${unit}`,
    spread ? `${digits(spread.low)} to ${digits(spread.high)}` : '',
    target === undefined ? '' : `at most ${digits(target)} ${unit}`,
    met === undefined ? '' : met ? 'yes' : 'NO',
  ];
  return `| ${cells.join(' | ')} |`;
}

const sectionOf = ({ question, findings }: Answer): string =>
  [
    `## ${question}`,
    '',
    '| what | median | middle half | target | met |',
    '| --- | --- | --- | --- | --- |',
    ...findings.map(rowOf),
  ].join('\n');

export function resultsPage({ node, cpu, cores, date }: Machine, answers: readonly Answer[]): string {
  const heading = `# Benchmarks\n\nWritten by \`npm run bench\` on ${date}: Node ${node}, ${cpu}, ${cores} cores.`;
  return [heading, ...answers.map(sectionOf)].join('\n\n') + '\n';
}
