/** Starters pass a check of their own text, whoever they are for. */
import { describe, expect, it } from 'vitest';
import { withSecondOpinion } from '../../src/check-design.js';
import { allAgree } from '../../src/contact/second-opinion.js';
import { chairKinds, type ChairKind } from '../../src/names.js';
import { cautionsOf } from '../../src/report/cautions.js';
import { massAtPercentile, statureAtPercentile } from '../../src/sitter/percentiles.js';
import type { Body } from '../../src/sitter/segment-table.js';
import { starter, type Starter, type StarterRequest } from '../../src/starter/starter.js';
import { summaryOfStarter } from '../../src/starter/starter-summary.js';

const measured = { kneeHollow: null, buttockToKneeHollow: null, elbowAboveSeat: null };

function begun(kind: ChairKind, units: 'in' | 'mm', sitter: StarterRequest['sitter'] = null): Starter {
  const made = starter({ name: 'Starter', kind, units, sitter }, 'starter.yaml');
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value;
}

const somebody = (body: Body, stature: number, mass: number): StarterRequest['sitter'] => ({
  ...{ body, stature, mass, percentile: null, measured },
  line: `{ name: sitter, body: ${body}, stature: ${stature} m, mass: ${mass} kg }`,
});

const missed = ({ result }: Starter): string[] =>
  result.limits.filter(({ verdict }) => verdict !== 'pass').map(({ id }) => id);

describe.each(chairKinds)('a starter of kind %s for the usual people', (kind) => {
  it.each(['in', 'mm'] as const)('in %s meets all limits', (units) => {
    const made = begun(kind, units);
    expect(missed(made)).toEqual([]);
    expect(made.result.limits.length).toBeGreaterThan(15);
    expect(cautionsOf(made.result).join('\n')).not.toMatch(/ apart|overlap/);
    // The parts of a side view, each weighed.
    const names = made.result.chair.parts.map(({ name }) => name);
    for (const name of ['rocker', 'front leg', 'back post', 'arm', 'side rail', 'seat', 'back slat'])
      expect(names).toContain(name);
  });

  it('is in sixteenths of an inch or whole millimetres, and the same each time', () => {
    for (const units of ['in', 'mm'] as const) {
      const { text } = begun(kind, units);
      expect(begun(kind, units).text).toBe(text);
      const fitted = /worth trying out\.\n([^]*?)\n\n/.exec(text)?.[1] ?? '';
      expect(fitted.split('\n')).toHaveLength(11);
      for (const line of fitted.split('\n'))
        expect(line).toMatch(
          units === 'in' ? /: -?(\d+|\d+-)?(\d+\/(2|4|8|16))? in #/ : /^ {2}\w+: -?\d+ mm #/,
        );
    }
  });
});

describe('a starter for somebody', () => {
  const percentiles = [5, 50, 95];
  const sizes = (['female', 'male'] as const).flatMap((body) =>
    percentiles.flatMap((stature) => percentiles.map((mass) => [body, stature, mass] as const)),
  );

  it.each(sizes)(
    '%s, stature of percentile %i, mass of percentile %i, meets all limits',
    (body, tall, heavy) => {
      const [stature, mass] = [statureAtPercentile(body, tall), massAtPercentile(body, heavy)] as number[];
      for (const kind of ['adult', 'porch', 'nursing'] as const)
        expect([kind, missed(begun(kind, 'in', somebody(body, stature!, mass!)))]).toEqual([kind, []]);
    },
  );

  it.each([
    [0.95, 14],
    [1.1, 19],
    [1.25, 26],
    [1.4, 38],
  ])('a child of %d m and %d kg meets all limits', (stature, mass) => {
    expect(missed(begun('child', 'mm', somebody('female', stature, mass)))).toEqual([]);
  });

  it('of a nursing chair holds a child', () => {
    const { text, result } = begun('nursing', 'in', somebody('female', 1.63, 63));
    expect(text).toContain('\nchild: { mass: 10.9 kg } #');
    expect(result.loads.map(({ record }) => record.load.id)).toContain('with-a-child');
  });

  it('sits closer to the ground for the small: the front edge follows the knee hollow', () => {
    const [small, tall] = [1.5, 1.85].map((stature) => begun('adult', 'mm', somebody('male', stature, 75)));
    const heights = [small!, tall!].map(({ result }) => result.design.seat!.front.y);
    // The knee hollow of men is at 0.2447 of stature; each may be anywhere in its window of 50 mm.
    expect(Math.abs(heights[1]! - heights[0]! - 0.2447 * 0.35)).toBeLessThan(0.05);
  });
});

describe('a second calculation', () => {
  it.each([
    ['porch', null],
    ['nursing', somebody('female', 1.63, 63)],
  ] as const)('agrees of a starter of kind %s', async (kind, sitter) => {
    const { opinions, verdict } = await withSecondOpinion(begun(kind, 'in', sitter).result);
    expect([opinions!.size > 0, allAgree(opinions!.values()), verdict]).toEqual([true, true, 'pass']);
  });
});

describe('where no chair meets all limits', () => {
  it('the nearest is given, and what it misses is told', () => {
    const made = begun('adult', 'in', somebody('female', 0.9, 60));
    expect(made.result.verdict).not.toBe('pass');
    const summary = summaryOfStarter(made);
    expect(summary).toMatch(/^Starter: Not all limits are met: \d of \d+ fails?/);
    expect(summary).toMatch(/\n {2}sitter, .*, wanted /);
    expect(summary).toContain('No chair of this kind was found');
  });
});
