import { describe, expect, it } from 'vitest';
import type { CheckResult } from '../../src/check-design.js';
import { compareDesigns } from '../../src/checks/compare.js';
import { readDesign } from '../../src/design/read-design.js';
import { comparisonJson, printComparisonJson } from '../../src/report/compare-json.js';
import { printCompareMarkdown } from '../../src/report/compare-markdown.js';
import { comparisonSchema } from '../../src/report/compare-schema.js';
import { printCompareText } from '../../src/report/compare-text.js';
import type { Compared } from '../../src/report/compared.js';
import { standingCautions } from '../../src/report/cautions.js';
import { valueOf } from '../design/read.js';
import { tablesIn } from '../oracles/markdown-table.js';
import {
  checked,
  designText,
  everyVerdict,
  hostileNames,
  limit,
  load,
  noRest,
  withLimits,
} from './made-up.js';

const text = designText(['shortest', 'tallest']);
const changed = text.replace('radius: 42 in', 'radius: 44 in').replace('density: 480', 'density: 520');
const dimensionsOf = (of: string) => valueOf(readDesign(of, 'chair.yaml')).dimensions;

function compared(old: CheckResult, now: CheckResult, oldText = text, newText = text): Compared {
  const comparison = compareDesigns(
    { ...old, dimensions: dimensionsOf(oldText) },
    { ...now, dimensions: dimensionsOf(newText) },
    now.design.units,
  );
  return { old: { result: old, sha256: null }, new: { result: now, sha256: null }, comparison };
}

/** The tallest rocks too slowly, one limit is loosened, one dropped, one comes; feet up is no longer rolled. */
const old = everyVerdict();
const heavier = checked(changed, 'reading-room-44.yaml');
const now: CheckResult = {
  ...withLimits(heavier, [
    limit('empty', null, 'seatSlopeDeg', [0, 9], 4.5),
    limit('seated', 'shortest', 'periodS', [1.8, 2.2], 2.31),
    limit('seated', 'tallest', 'periodS', [1.8, 3.2], 2.96),
    limit('seated', 'tallest', 'wallClearanceM', [0.25, null], -1.5),
    limit('seated', 'tallest', 'frictionDemand', [null, 0.2], 'passes a rocker end'),
  ]),
  loads: [
    load(heavier, 'empty', null, { seatSlopeDeg: 4.5, periodS: 1.55, tipBackDeg: 64.2, restCount: 1 }),
    load(heavier, 'seated', 'shortest', {
      seatSlopeDeg: 8,
      periodS: 2.31,
      tipBackDeg: 'no crest',
      wallClearanceM: 3,
    }),
    load(heavier, 'seated', 'tallest', {
      seatSlopeDeg: 12,
      periodS: 2.96,
      tipBackDeg: 15,
      wallClearanceM: -1.5,
    }),
    load(heavier, 'seated', 'visitor', { seatSlopeDeg: 10 }),
  ],
};
const both = compared(old, now, text, changed);
const same = compared(old, old);
const plain = { columns: 100, paint: (_: unknown, words: string) => words };

describe('a comparison in text', () => {
  it('of two designs', async () => {
    await expect(printCompareText(both, plain)).toMatchFileSnapshot('../golden/compare.txt');
  });

  it('tells verdicts before anything that moved', () => {
    const said = printCompareText(both, plain);
    const at = (words: string) => said.indexOf(words);
    expect(at('met → NOT MET')).toBeGreaterThan(0);
    expect(at('met → NOT MET')).toBeLessThan(at('NOT MET → met'));
    expect(at('NOT MET → met')).toBeLessThan(at('Sizes that changed'));
    expect(at('Sizes that changed')).toBeLessThan(at('What moved'));
  });

  it('of one design with itself says that nothing moved, and what to mind', () => {
    const said = printCompareText(same, plain);
    expect(said).toContain('Nothing moved by as much as a maker could read.');
    expect(said).not.toContain('What moved');
    expect(said.replace(/\s+/g, ' ')).toContain(standingCautions[0]);
  });

  it.each([60, 80, 100])('keeps to a width of %i', (columns) => {
    for (const line of printCompareText(both, { ...plain, columns }).split('\n'))
      expect(line.length).toBeLessThanOrEqual(columns);
  });
});

describe('a load that goes over now', () => {
  const over = (result: CheckResult, way: 'back' | 'forward' | null): CheckResult => {
    const judged = limit(
      'getting-up',
      'shortest',
      'kickBackDeg',
      [null, way ? 25 : 19],
      way ? 'goes over' : 32,
    );
    const rolled = load(result, 'getting-up', 'shortest', { kickBackDeg: way ? 'goes over' : 32 });
    const motion = { ...rolled.record.motion!, goesOver: way };
    const withLimit = withLimits(result, [way === null ? judged : { ...judged, verdict: 'fail' }]);
    return { ...withLimit, loads: [{ ...rolled, record: { ...rolled.record, motion } }] };
  };
  const told = (before: 'back' | 'forward' | null, after: 'back' | 'forward' | null) =>
    compared(over(old, before), over(old, after));

  it('stands above all else, though the verdict is as before', () => {
    const sections = printCompareText(told(null, 'forward'), plain).split('\n\n');
    expect(sections[1]).toBe('Goes over now, and did not before\n  shortest, getting up: goes over forwards');
    expect(sections.join('\n')).not.toContain('the verdict as before');
    const markdown = printCompareMarkdown(told(null, 'forward'));
    expect(markdown.split('\n\n')[2]).toBe('**Goes over now, and did not before:**');
    expect(markdown.split('\n\n')[3]).toBe('- shortest, getting up: goes over forwards');
    const { loads } = comparisonSchema.parse(comparisonJson(told(null, 'forward')));
    expect(loads[0]!.goesOver).toEqual({ old: null, new: 'forward' });
  });

  it.each([
    ['forward', 'forward'],
    ['forward', null],
    [null, null],
  ] as const)('is none from %s to %s', (before, after) => {
    for (const print of [printCompareMarkdown, (one: Compared) => printCompareText(one, plain)])
      expect(print(told(before, after))).not.toContain('Goes over now');
  });

  it('is one that goes over the other way', () => {
    expect(printCompareText(told('back', 'forward'), plain)).toContain('Goes over now');
  });
});

describe('a chair that comes to rest', () => {
  const rolled = [load(old, 'empty', null, { periodS: 2 })];
  const standing = { ...withLimits(old, []), loads: rolled };
  const falling = { ...withLimits(old, [noRest('empty', null)]), loads: rolled };
  const gone = { ...withLimits(old, []), loads: [] };

  it.each([
    ['no more', standing, falling, 'met → NOT MET'],
    ['again', falling, standing, 'NOT MET → met'],
    ['was never asked in the new design', falling, gone, 'NOT MET → no limit'],
  ])('%s', (_, before, after, words) => {
    expect(printCompareText(compared(before, after), plain)).toContain(words);
  });
});

describe('a comparison in Markdown', () => {
  it('of two designs', async () => {
    await expect(printCompareMarkdown(both)).toMatchFileSnapshot('../golden/compare.md');
  });

  it('tells the verdict of the new design first, then what flipped', () => {
    const said = printCompareMarkdown(both);
    expect(said).toMatch(/^### Not all limits are met: 2 of 5 fail, 1 is unknown\.\n/);
    expect(tablesIn(said)[0]!.heads[0]).toBe('verdict changed');
    expect(tablesIn(said)[0]!.rows[0]!.slice(0, 4)).toEqual([
      'shortest: one full rock, small',
      'met',
      'NOT MET',
      '2.08 s → 2.31 s',
    ]);
  });

  it('of one design with itself says that nothing moved', () => {
    expect(printCompareMarkdown(same)).toContain('Nothing moved by as much as a maker could read.');
    expect(tablesIn(printCompareMarkdown(same))).toEqual([]);
  });
});

describe('a comparison in JSON', () => {
  it('is by its own schema, and the same every time', () => {
    expect(comparisonSchema.parse(JSON.parse(printComparisonJson(both)))).toEqual(comparisonJson(both));
    expect(printComparisonJson(both)).toBe(printComparisonJson(both));
    expect(() => comparisonSchema.parse(comparisonJson(same))).not.toThrow();
  });

  it('is in metres, degrees and the units of the names', () => {
    const { loads, limits, dimensions } = comparisonJson(both);
    const tallest = loads.find(({ sitter }) => sitter === 'tallest')!;
    expect(tallest.measures).toEqual({
      seatSlopeDeg: { old: 12, new: 12, difference: 0, moved: false },
      periodS: { old: 2.71, new: 2.96, difference: 0.25, moved: true },
      tipBackDeg: { old: 17, new: 15, difference: -2, moved: true },
      wallClearanceM: { old: -0.0254, new: -0.0381, difference: -0.0127, moved: true },
    });
    expect(limits.map(({ id, change }) => [id, change])).toEqual([
      ['seated/period/shortest', 'flipped'],
      ['seated/frictionDemand/tallest', 'appeared'],
      ['seated-feet-up/seatSlope/shortest', 'gone'],
      ['leaning-back-hard/rest/tallest', 'gone'],
      ['seated/period/tallest', 'flipped'],
      ['seated/wallClearance/tallest', 'bounds'],
    ]);
    expect(dimensions).toEqual([
      {
        name: 'radius',
        kind: 'length',
        old: { written: '42 in', value: 1.0668 },
        new: { written: '44 in', value: 1.1176 },
      },
      {
        name: 'tail',
        kind: 'length',
        old: { written: 'radius / 2', value: 0.5334 },
        new: { written: 'radius / 2', value: 0.5588 },
      },
    ]);
  });
});

describe('a name from anywhere', () => {
  const hostile = (name: string): Compared => {
    const named = (result: CheckResult): CheckResult => ({
      ...result,
      file: name,
      design: { ...result.design, name },
      limits: result.limits.map((one) => ({ ...one, sitter: one.sitter && name })),
    });
    return compared(named(old), named(now), text, changed);
  };

  it.each(hostileNames)('moves no cursor and breaks no table: %j', (name) => {
    const of = hostile(name);
    expect(printCompareText(of, plain).replaceAll('\n', '')).not.toMatch(/[\p{Cc}\u202a-\u202e]/u);
    const shape = (of: Compared) =>
      tablesIn(printCompareMarkdown(of)).map(({ heads, rows }) => [
        heads.length,
        ...rows.map((row) => row.length),
      ]);
    expect(shape(of)).toEqual(shape(both));
    expect(printCompareMarkdown(of).match(/<[^>]*>/g)).toEqual(printCompareMarkdown(both).match(/<[^>]*>/g));
    expect(() => comparisonSchema.parse(comparisonJson(of))).not.toThrow();
  });
});
