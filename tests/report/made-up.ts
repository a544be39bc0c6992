/** Checked designs with loads, sitters, measures and limits made up, so that a report shows what no one chair would. */
import type { CheckResult } from '../../src/check-design.js';
import { checkDesign } from '../../src/check-design.js';
import type { MeasuredLoad } from '../../src/checks/judge-loads.js';
import { judge, worst, type JudgedLimit } from '../../src/checks/verdict.js';
import { measures, type LoadId, type MeasureKey } from '../../src/names.js';
import { missing, type OrMissing } from '../../src/numeric/missing.js';
import { valueOf } from '../design/read.js';

/** A box on two rockers; two people by name. */
export const designText = (names: readonly string[], name = 'Reading-room rocker'): string => `trueroll: 1
name: ${JSON.stringify(name)}
units: in
dimensions: { radius: 42 in, tail: radius / 2 }
spacing: 19 in
sitters: ${JSON.stringify(names.map((sitter, i) => ({ name: sitter, body: i % 2 ? 'male' : 'female', stature: `${62 + 4 * i} in`, mass: `${55 + 15 * i} kg` })))}
parts:
  - { name: rocker, count: 2, density: 650 kg/m³, across: 1-1/4, outline: { rocker: { radius: radius, depth: 2-1/4, nose: 20, tail: tail } } }
  - { name: box, density: 480 kg/m³, across: 16, outline: { rectangle: { from: [-9, 12], to: [10, 14] } } }
seat: { front: [10, 15], rear: [-9, 14] }
back: { foot: [-9, 14], top: [-16, 40] }
`;

export const checked = (text: string, file = 'reading-room.yaml'): CheckResult =>
  valueOf(checkDesign(text, file));

/** A length in inches, an angle in degrees, anything else in SI: as a test reads best. */
export function inSI(measure: MeasureKey, value: number): number {
  const { kind } = measures[measure];
  if (kind === 'angle') return (value * Math.PI) / 180;
  return kind === 'length' ? value * 0.0254 : value;
}

type Range = readonly [min: number | null, max: number | null];

export function limit(
  load: LoadId,
  sitter: string | null,
  measure: MeasureKey,
  [min, max]: Range,
  value: number | string,
): JudgedLimit {
  const bound = (of: number | null): number | null => (of === null ? null : inSI(measure, of));
  const range = { min: bound(min), max: bound(max) };
  const key = measures[measure].limitKey;
  return {
    id: [load, key, ...(sitter === null ? [] : [sitter])].join('/'),
    load,
    sitter,
    measure,
    range,
    ...judge(range, typeof value === 'string' ? missing(value) : inSI(measure, value)),
    basis: 'the design’s own',
    cautioned: false,
  };
}

/** It does not come to rest: the arc of 16 in under a centre of gravity 20 in high would have to be of more than 24 in. */
export const noRest = (load: LoadId, sitter: string | null): JudgedLimit => ({
  ...limit(load, sitter, 'restAngleDeg', [null, null], 'no rest'),
  id: [load, 'rest', ...(sitter === null ? [] : [sitter])].join('/'),
  measure: null,
  verdict: 'fail',
  reason: { cause: 'too-tight', radius: 16 * 0.0254, height: 20 * 0.0254, leastRadius: 24 * 0.0254 },
  basis: 'a chair must come to rest on its rockers',
});

export function load(
  { loads: [first] }: CheckResult,
  id: LoadId,
  sitter: string | null,
  values: Readonly<Partial<Record<MeasureKey, number | string>>>,
): MeasuredLoad {
  const { record } = first!;
  const measured = Object.entries(values).map(([key, value]): [MeasureKey, OrMissing<number>] => {
    const measure = key as MeasureKey;
    return [measure, typeof value === 'string' ? missing(value) : inSI(measure, value)];
  });
  return { record: { ...record, load: { ...record.load, id, sitter } }, measured: new Map(measured) };
}

export const withLimits = (result: CheckResult, limits: readonly JudgedLimit[]): CheckResult => ({
  ...result,
  limits,
  verdict: worst(limits.map(({ verdict }) => verdict)),
});

/** Two sitters, four loads, every verdict. */
export function everyVerdict(names: readonly [string, string] = ['shortest', 'tallest']): CheckResult {
  const base = checked(designText(names));
  const [shortest, tallest] = names;
  const loads = [
    load(base, 'empty', null, { seatSlopeDeg: 5.5, periodS: 1.47, tipBackDeg: 64, restCount: 1 }),
    load(base, 'seated', shortest, { seatSlopeDeg: 9, periodS: 2.08, tipBackDeg: 22, wallClearanceM: 3 }),
    load(base, 'seated', tallest, { seatSlopeDeg: 12, periodS: 2.71, tipBackDeg: 17, wallClearanceM: -1 }),
    load(base, 'leaning-back-hard', tallest, { leftToTipBackDeg: 4, rockerLeftBackM: 0 }),
  ];
  return {
    ...withLimits(base, [
      limit('empty', null, 'seatSlopeDeg', [0, 9], 5.5),
      limit('seated', shortest, 'periodS', [1.8, 2.6], 2.08),
      limit('seated', tallest, 'periodS', [1.8, 2.6], 2.71),
      limit('seated', tallest, 'wallClearanceM', [0.5, null], -1),
      limit('seated-feet-up', shortest, 'seatSlopeDeg', [0, 14], 'the design has no seat line'),
      noRest('leaning-back-hard', tallest),
    ]),
    loads,
  };
}

/** Names from anywhere. */
export const hostileNames: readonly string[] = [
  `<script>alert("x")</script>`,
  `a|b || c \\| d`,
  '`rm -rf` ``` **bold** _it_ ~~no~~ [link](javascript:x) ![image](y)',
  'bell \u0007, escape \u001b[31m, null \u0000, delete \u007f',
  'two\nlines\r\nand a\ttab',
  `"double" 'single' &amp; &#60; ]]> <!-- -->`,
  '@everyone #1 https://example.org www.example.org :tada:',
  'wooden 🪑 with a family 👩‍👩‍👧 in it',
  'half of a pair \ud83d and a non-character \uffff',
  'turned \u202eback\u202c again',
  'long '.repeat(2000),
  '   ',
  '- [ ] # 1. > not a list',
];
