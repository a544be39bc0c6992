import { expect, it } from 'vitest';
import { resultsPage } from '../../benchmarks/results-page.js';

it('puts the machine first, then a table for each question', () => {
  const machine = { node: 'v20.0.0', cpu: 'a processor', cores: 2, date: '2026-01-02' };
  const findings = [
    { what: 'slow', value: 2.6049, spread: { low: 2.5, high: 2.7123 }, unit: '×', target: 2.5, met: false },
    { what: 'plain', value: 12, unit: 'ms' },
  ];
  expect(resultsPage(machine, [{ question: 'How long?', findings }])).toBe(
    `# Benchmarks

Written by \`npm run bench\` on 2026-01-02: Node v20.0.0, a processor, 2 cores.

## How long?

| what | median | middle half | target | met |
| --- | --- | --- | --- | --- |
| slow | 2.6 × | 2.5 to 2.71 | at most 2.5 × | NO |
| plain | 12 ms |  |  |  |
`,
  );
});
