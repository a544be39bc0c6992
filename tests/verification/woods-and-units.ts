/** Woods, panels, units of measure and statistics: handbooks, definitions and other programs. */
import { loopMoments } from '../../src/geometry/area-moments.js';
import type { Loop } from '../../src/geometry/piece.js';
import { normalQuantile } from '../../src/numeric/normal.js';
import { proportionOf } from '../../src/numeric/proportion.js';
import { compileQuantity } from '../../src/quantity/quantity.js';
import type { Kind } from '../../src/names.js';
import { g } from '../../src/rolling/gravity.js';
import { densityAtMoisture, woodNamed } from '../../src/wood/woods.js';
import { scope } from '../quantity/scope.js';
import type { OutsideCheck } from './outside-check.js';

const handbook = 'Wood Handbook, FPL-GTR-282 (2021)';
const handbook2010 = 'Wood Handbook, FPL-GTR-190 (2010)';
const yard = 'international yard and pound agreement, 1959';
const asPrinted = { within: 1e-9, why: 'exact by its source' } as const;

const density = (name: string): number => woodNamed(name)?.density ?? NaN;

function written(text: string, kind: Kind): number {
  const reading = compileQuantity(text, { kind, units: 'in' }, scope);
  if (!reading.ok) throw new RangeError(text);
  return reading.value.valueIn(new Map());
}

const segment = (radius: number, half: number): Loop => {
  const [x, y] = [radius * Math.sin(half), -radius * Math.cos(half)];
  return [
    { kind: 'arc', centre: { x: 0, y: 0 }, radius, start: -Math.PI / 2 - half, sweep: 2 * half },
    { kind: 'line', from: { x, y }, to: { x: -x, y } },
  ];
};

export const woodsAndUnits: readonly OutsideCheck[] = [
  {
    what: 'density of specific gravity 0.60 at 12 %',
    source: `${handbook}, table 4-6a`,
    mark: 'READ',
    unit: 'kg/m³',
    expected: 672,
    got: () => densityAtMoisture(0.6, 12),
    ...asPrinted,
  },
  {
    what: 'density of specific gravity 0.40 at 100 %',
    source: `${handbook}, table 4-6a`,
    mark: 'READ',
    unit: 'kg/m³',
    expected: 800,
    got: () => densityAtMoisture(0.4, 100),
    ...asPrinted,
  },
  ...(
    [
      ['white ash', 0.6],
      ['white oak', 0.68],
      ['hard maple', 0.63],
      ['black walnut', 0.55],
      ['black cherry', 0.5],
      ['beech', 0.64],
    ] as const
  ).map(([name, gravity]): OutsideCheck => ({
    what: `density of ${name}`,
    source: `${handbook2010}, table 5-3a: specific gravity ${gravity} at 12 %, times 1120`,
    mark: 'READ',
    unit: 'kg/m³',
    expected: 1120 * gravity,
    got: () => density(name),
    ...asPrinted,
  })),
  {
    what: 'a sheet of birch plywood, 1220 × 2440 × 18 mm',
    source: 'a mill’s data sheet',
    mark: 'READ',
    unit: 'kg',
    expected: 36.7,
    got: () => density('birch plywood 18 mm') * 1.22 * 2.44 * 0.018,
    within: 0.05,
    why: 'printed to a tenth',
  },
  {
    what: '1 3/4 in',
    source: yard,
    mark: 'CITED',
    unit: 'm',
    expected: 0.04445,
    got: () => written('1 3/4 in', 'length'),
    within: 1e-15,
    why: 'exact by definition',
  },
  {
    what: '7 lb 4 oz',
    source: yard,
    mark: 'CITED',
    unit: 'kg',
    expected: 7.25 * 0.45359237,
    got: () => written('7 lb 4 oz', 'mass'),
    within: 1e-14,
    why: 'exact by definition',
  },
  {
    what: 'standard gravity',
    source: '3rd General Conference on Weights and Measures, 1901',
    mark: 'CITED',
    unit: 'm/s²',
    expected: 9.80665,
    got: () => g,
    within: 0,
    why: 'exact by definition',
  },
  {
    what: 'centroid of a circular segment of 1 m, 0.4 rad each way, from the centre',
    source: 'handbooks of mechanics: 2 r sin³ α / (3 (α - sin α cos α))',
    counts: 'textbooks of vibration',
    mark: 'DERIVED',
    unit: 'm',
    expected: (2 * Math.sin(0.4) ** 3) / (3 * (0.4 - Math.sin(0.4) * Math.cos(0.4))),
    got: () => -loopMoments(segment(1, 0.4)).centroid.y,
    within: 1e-12,
    why: 'closed form against closed form: rounding of a small difference',
  },
  ...(
    [
      [81, 263, 0.2553, 0.3662],
      [15, 148, 0.0624, 0.1605],
    ] as const
  ).flatMap(([count, of, low, high]) =>
    (
      [
        ['low', low],
        ['high', high],
      ] as const
    ).map(([end, expected]): OutsideCheck => ({
      what: `${end} end of the 95 % interval of ${count} in ${of}`,
      source: 'scipy 1.17: binomtest(…).proportion_ci(method="wilson")',
      mark: 'CALCULATED',
      unit: '',
      expected,
      got: () => proportionOf(count, of)[end],
      within: 5e-5,
      why: 'printed to four decimals',
    })),
  ),
  {
    what: 'normal quantile of 0.6',
    source: 'mpmath 1.3, forty digits',
    mark: 'CALCULATED',
    unit: '',
    expected: 0.2533471031357997988,
    got: () => normalQuantile(0.6),
    within: 1e-13,
    why: 'rounding',
  },
];
