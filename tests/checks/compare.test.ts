import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareDesigns, type Comparable } from '../../src/checks/compare.js';
import { compareLimits } from '../../src/checks/compare-limits.js';
import { compareLoads, isReadable } from '../../src/checks/compare-loads.js';
import type { JudgedLimit } from '../../src/checks/verdict.js';
import { loadIds, measuresOf, type MeasureKey } from '../../src/names.js';
import { lengthUnits } from '../../src/quantity/units.js';
import { sayValue } from '../../src/report/measure-words.js';
import { readDesign } from '../../src/design/read-design.js';
import { valueOf } from '../design/read.js';
import { checked, designText, everyVerdict, limit, load } from '../report/made-up.js';

const base = everyVerdict();
const comparable = (text: string): Comparable => ({
  ...checked(text),
  dimensions: valueOf(readDesign(text, 'chair.yaml')).dimensions,
});

describe('verdicts', () => {
  const judged = (value: number | string, sitter = 'x', range: [number, number] = [1.8, 2.6]): JudgedLimit =>
    limit('seated', sitter, 'periodS', range, value);
  const changes = (old: readonly JudgedLimit[], now: readonly JudgedLimit[]) =>
    compareLimits(old, now).map((one) => [one.change, one.old?.verdict ?? null, one.new?.verdict ?? null]);

  it.each([
    ['met → not met', [judged(2)], [judged(3)], ['flipped', 'pass', 'fail']],
    ['not met → met', [judged(3)], [judged(2)], ['flipped', 'fail', 'pass']],
    ['met → unknown', [judged(2)], [judged('no rest')], ['flipped', 'pass', 'unknown']],
    ['unknown → not met', [judged('no rest')], [judged(3)], ['flipped', 'unknown', 'fail']],
    ['appeared', [], [judged(2)], ['appeared', null, 'pass']],
    ['gone', [judged(3)], [], ['gone', 'fail', null]],
    ['loosened until it is met', [judged(3)], [judged(3, 'x', [1, 4])], ['flipped', 'fail', 'pass']],
    ['loosened, the verdict as before', [judged(2)], [judged(2, 'x', [1, 4])], ['bounds', 'pass', 'pass']],
  ])('%s', (_, old, now, change) => {
    expect(changes(old, now)).toEqual([change]);
  });

  it('that stay are not told, nor a bound written in another unit', () => {
    expect(changes([judged(2)], [judged(2.1)])).toEqual([]);
    const inches = limit('seated', 'x', 'sweptBackM', [null, 14], 3);
    const millimetres = { ...inches, range: { min: null, max: 0.3556 * (1 + 1e-15) } };
    expect(changes([inches], [millimetres])).toEqual([]);
  });

  it('that became worse come first', () => {
    const old = [
      judged(2, 'a'),
      judged(2, 'b'),
      judged(3, 'c'),
      judged(2, 'd'),
      judged(2, 'e'),
      judged(2, 'f'),
    ];
    const now = [
      judged(3, 'c', [1, 4]),
      judged(2, 'd', [1, 4]),
      judged(2, 'e'),
      judged('no rest', 'b'),
      judged(3, 'a'),
      judged(2, 'g'),
    ];
    expect(compareLimits(old, now).map((one) => (one.new ?? one.old).sitter)).toEqual([
      'a', // not met now
      'b', // unknown now
      'f', // gone
      'c', // met now
      'g', // new, met
      'd', // other bounds
    ]);
  });
});

describe('measures', () => {
  const seated = (values: Partial<Record<MeasureKey, number | string>>) => [
    load(base, 'seated', 'x', values),
  ];
  const moved = (old: Parameters<typeof seated>[0], now: Parameters<typeof seated>[0]) =>
    compareLoads(seated(old), seated(now), 'in').flatMap(({ measures }) =>
      measures.filter((one) => one.moved).map(({ measure }) => measure),
    );

  it('count as moved from half of what is printed on', () => {
    const still = { periodS: 2, seatSlopeDeg: 8, sweptBackM: 3, wallClearanceM: 'no wall' };
    const below = { periodS: 2.0049, seatSlopeDeg: 8.24, sweptBackM: 3 + 0.49 / 16, wallClearanceM: 'none' };
    const above = { periodS: 1.995, seatSlopeDeg: 7.75, sweptBackM: 3 - 0.5 / 16, wallClearanceM: 2 };
    expect(moved(still, below)).toEqual([]);
    expect(moved(still, above)).toEqual(['periodS', 'seatSlopeDeg', 'sweptBackM', 'wallClearanceM']);
    expect(moved({ tipBackDeg: 20 }, { tipBackDeg: 'no crest' })).toEqual(['tipBackDeg']);
  });

  it('have moved exactly when their difference does not read as nothing', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...loadIds.flatMap((id) => measuresOf(id).map((key) => [id, key] as const))),
        fc.constantFrom(...lengthUnits),
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        ([id, key], units, value, difference) => {
          const at = (of: number) => {
            const made = load(base, id, 'x', {});
            return [{ ...made, measured: new Map([[key, of]]) }];
          };
          const [change] = compareLoads(at(value), at(value + difference), units);
          const by = value + difference - value;
          const reads = sayValue(key, Math.abs(by), units) !== sayValue(key, 0, units);
          expect(change!.measures[0]!.moved).toBe(reads);
        },
      ),
    );
  });

  it('that are no numbers never count as still', () => {
    expect(isReadable(Number.NaN, 1)).toBe(true);
  });

  it('are set side by side by load and sitter', () => {
    const at = (id: 'seated' | 'seated-feet-up', sitter: string, periodS: number) =>
      load(base, id, sitter, { periodS });
    const old = [at('seated', 'mia', 2), at('seated', 'jo', 3), at('seated-feet-up', 'mia', 4)];
    const now = [at('seated', 'jo', 3.5), at('seated', 'mia', 2), at('seated', 'al', 9)];
    expect(
      compareLoads(old, now, 'in').map((one) => [one.load, one.sitter, one.in, one.measures.length]),
    ).toEqual([
      ['seated', 'jo', 'both', 1],
      ['seated', 'mia', 'both', 1],
      ['seated', 'al', 'new', 0],
      ['seated-feet-up', 'mia', 'old', 0],
    ]);
  });
});

describe('two designs', () => {
  const text = designText(['shortest']);
  const other = text
    .replace('radius: 42 in', 'radius: 44 in')
    .replace('- { name: box, density: 480', '- { name: case, density: 520');

  it('that are one have nothing to tell', () => {
    const { limits, loads, masses, dimensions } = compareDesigns(comparable(text), comparable(text), 'in');
    expect([limits, masses.parts, dimensions]).toEqual([[], [], []]);
    expect(loads.flatMap(({ measures }) => measures.filter(({ moved }) => moved))).toEqual([]);
    expect(loads.flatMap(({ measures }) => measures).length).toBeGreaterThan(30);
  });

  it('compared the other way round are the same differences, reversed', () => {
    const [there, back] = [
      compareDesigns(comparable(text), comparable(other), 'in'),
      compareDesigns(comparable(other), comparable(text), 'in'),
    ];
    const turned = (one: object) => {
      const { old, new: now } = one as { old: unknown; new: unknown };
      return { ...one, old: now, new: old };
    };
    const moves = there.loads.flatMap(({ measures }) => measures);
    expect(back.loads.flatMap(({ measures }) => measures)).toEqual(moves.map(turned));
    expect(moves.filter(({ moved }) => moved).length).toBeGreaterThan(5);
    expect(new Set(back.dimensions.map(({ old }) => old?.name))).toEqual(
      new Set(there.dimensions.map(({ new: now }) => now?.name)),
    );
  });

  it('tell the dimensions that changed, those that follow from others too', () => {
    const { dimensions } = compareDesigns(comparable(text), comparable(other), 'in');
    expect(dimensions.map(({ old, new: now }) => [now?.name, old?.value, now?.value])).toEqual([
      ['radius', 42 * 0.0254, 44 * 0.0254],
      ['tail', 21 * 0.0254, 22 * 0.0254],
    ]);
  });

  it('tell no dimension that is only written in another unit', () => {
    const metric = text.replace('radius: 42 in', 'radius: 1066.8 mm');
    expect(metric).not.toBe(text);
    expect(compareDesigns(comparable(text), comparable(metric), 'in').dimensions).toEqual([]);
  });

  it('tell the masses of parts that appeared, went or changed', () => {
    const { masses } = compareDesigns(comparable(text), comparable(other), 'in');
    expect(masses.parts.map(({ old, new: now }) => [old?.name ?? null, now?.name ?? null])).toEqual([
      ['rocker', 'rocker'], // the tail is half the radius
      [null, 'case'],
      ['box', null],
    ]);
    // 480 and 520 kg/m³ of 16 × 19 × 2 in: closed form.
    const volume = 16 * 19 * 2 * 0.0254 ** 3;
    expect(masses.parts[1]!.new!.mass).toBeCloseTo(520 * volume, 9);
    expect(masses.parts[2]!.old!.mass).toBeCloseTo(480 * volume, 9);
  });
});
