/** What the human reports say of the loads that throw people. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assumptionsOf } from '../../src/report/assumptions.js';
import { cautionsOf } from '../../src/report/cautions.js';
import { printText } from '../../src/report/text.js';
import type { CheckResult } from '../../src/check-design.js';
import { checked, oneArc } from '../reading.js';

const porch = readFileSync('fixtures/porch-rocker/design.yaml', 'utf8');
const withLines = (...lines: string[]): CheckResult => checked([porch, ...lines].join('\n'));
const cautions = (result: CheckResult): string => cautionsOf(result).join('\n');
const screen = (result: CheckResult, all = false): string =>
  printText(result, { columns: 100, all, assumed: false, parts: false, paint: (_, text) => text });

describe('cautions', () => {
  it('tell of a child on the tails that tip over, with what they bear, and not of tails that bear it', () => {
    expect(cautions(withLines())).toMatch(/child who steps on the tails .* the tails bear 12\.2 kg/u);
    expect(cautions(withLines('loads: { child-on-the-tails: { mass: 12 kg } }'))).not.toMatch(
      /steps on the tails/u,
    );
    expect(cautions(withLines('loads: { child-on-the-tails: off }'))).not.toMatch(/steps on the tails/u);
  });

  it('tell where fingers are crushed', () => {
    // One arc of 1 m: sqrt(2 · 7 mm · 1 m) is 118 mm, sqrt(2 · 18 mm · 1 m) 190 mm.
    expect(cautions(checked(oneArc))).toMatch(/from 118 mm to 189 mm behind the place .* \(7 mm to 18 mm,/u);
  });

  it('tell of a floor that gives less than a hard lean asks, naming both', () => {
    const slippery = cautions(
      withLines().design.floor.name
        ? checked(porch.replace(/^floor:.*$/mu, 'floor: { friction: 0.2 }'))
        : withLines(),
    );
    expect(slippery).toMatch(
      /Leaning back hard asks the floor for a friction of up to 0\.24; this floor gives 0\.2/u,
    );
    expect(cautions(withLines())).not.toMatch(/the chair slides/u);
  });

  it('tell when a harder shove leaves little rocker, and when its worst moment takes the chair over', () => {
    const hard = cautions(withLines('loads: { leaning-back-hard: { shove: 0.29 } }'));
    expect(hard).toMatch(/tallest, leaning back hard: only 2-1\/16 in of rocker is left behind the touch\./u);
    expect(hard).toMatch(
      /tallest, leaning back hard: begun at the worst moment of a 6° rock, the same shove leaves 0 in/u,
    );
    const harder = cautions(withLines('loads: { leaning-back-hard: { shove: 0.35 } }'));
    expect(harder).toMatch(/tallest, leaning back hard: begun at the worst moment .* over backwards\./u);
  });
});

describe('the first screen', () => {
  it('has what is left of the rocker in the columns of the sitters', () => {
    const rows = screen(withLines());
    expect(rows).toMatch(/leaning back hard: rocker left +7-15\/16 in +6-1\/4 in\n/u);
    expect(rows).toMatch(/getting up: rocker left ahead +5-3\/4 in +6-1\/16 in\n/u);
    expect(rows).toMatch(/kicks back as far as +26\.5° +2\.5°\n/u);
  });

  it('says that it goes over, and fails all that is judged of it', () => {
    const result = withLines('loads: { leaning-back-hard: { shove: 0.5 } }');
    expect(result.verdict).toBe('fail');
    expect(screen(result)).toMatch(/leaning back hard: rocker left +goes over +goes over\n/u);
    expect(screen(result)).toMatch(
      /NOT MET tallest, leaning back hard: goes over backwards\n {2}4 more limits are not met with that: --all\./u,
    );
    const of = result.limits.filter(({ load }) => load === 'leaning-back-hard');
    expect(of).toHaveLength(6);
    for (const { verdict, value, reason } of of)
      expect([verdict, value, reason]).toEqual(['fail', null, 'goes over backwards']);
  });

  it('shows the loads of upright chairs with all, as no test of this chair', () => {
    const all = screen(withLines(), true).replace(/\s+/gu, ' ');
    expect(all).toMatch(
      /600 N down on the seat and 20 N forward.*do not apply to rocking chairs\. No conformity follows/u,
    );
    expect(screen(withLines())).not.toMatch(/upright chairs/u);
  });
});

describe('assumptions', () => {
  const found = (result: CheckResult, what: string) =>
    assumptionsOf(result).find((assumption) => assumption.what === what);

  it.each([
    ['leaning back hard: trunk, head and arms forward at first', '15°', 'trunkAhead: 20 deg', '20°'],
    ['leaning back hard: thrown onto the back within', '0.4 s', 'throwTime: 0.5 s', '0.5 s'],
    [
      'leaning back hard: shove of the feet on the floor',
      '20 % of body weight',
      'shove: 0.1',
      '10 % of body weight',
    ],
    ['leaning back hard: for', '0.5 s', 'shoveTime: 0.25 s', '0.25 s'],
  ])('%s: %s, unless the design says otherwise', (what, usual, setting, own) => {
    expect(found(withLines(), what)).toEqual({ what, value: usual, basis: 'assumption of this project' });
    const changed = withLines(`loads: { leaning-back-hard: { ${setting} } }`);
    expect(found(changed, what)).toEqual({ what, value: own, basis: 'the design’s own' });
  });

  it.each([
    ['getting up: has left the chair after', '1.2 s', /published/u, 'leaveTime: 1 s', '1 s'],
    ['getting up: slides to the front within', '0.6 s', /project/u, 'slideTime: 0.5 s', '0.5 s'],
    [
      'getting up: each hand on the arms, at most',
      '25 % of body weight',
      /published/u,
      'armShare: 0.2',
      '20 % of body weight',
    ],
    [
      'getting up: pushes the seat back with, at most',
      '10 % of body weight',
      /project/u,
      'seatPush: 0.2',
      '20 % of body weight',
    ],
  ])('%s: %s', (what, usual, basis, setting, own) => {
    expect(found(withLines(), what)).toMatchObject({
      value: usual,
      basis: expect.stringMatching(basis) as string,
    });
    const changed = withLines(`loads: { getting-up: { ${setting} } }`);
    expect(found(changed, what)).toEqual({ what, value: own, basis: 'the design’s own' });
  });

  it('a child on the tails: 15 kg', () => {
    expect(found(withLines(), 'a child on the tails: steps on the ends of both')).toMatchObject({
      value: '15 kg',
      basis: 'assumption of this project',
    });
  });

  it('tell the worst moment of a rock in numbers', () => {
    const worst = assumptionsOf(withLines()).filter(({ what }) => what.includes('worst moment'));
    // The first screen's 4-3/4 in and 3-3/16 in.
    expect(worst.map(({ value }) => value)).toEqual([
      expect.stringMatching(/^\d\.?\d?° farther back, rocker left 4-3\/4 in$/u),
      expect.stringMatching(/^\d\.?\d?° farther back, rocker left 3-3\/16 in$/u),
    ]);
  });

  it('are followed by how much they matter, a line for each sitter and thing', () => {
    const lines = assumptionsOf(withLines()).filter(({ basis }) => basis.startsWith('calculated again'));
    expect(lines.map(({ what }) => what.replace(/, with .*/u, ''))).toEqual([
      ...(['shortest', 'tallest'] as const).flatMap((who) =>
        Array<string>(3).fill(`${who}, leaning back hard`),
      ),
      ...(['shortest', 'tallest'] as const).flatMap((who) => Array<string>(2).fill(`${who}, getting up`)),
    ]);
    expect(lines[0]!.value).toMatch(/° less far back, rocker left .*; or .*° farther back, rocker left /u);
  });
});
