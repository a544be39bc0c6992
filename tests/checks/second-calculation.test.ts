/** The second calculation of whole designs, and what it does to a verdict. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkDesign, withSecondOpinion, type CheckResult } from '../../src/check-design.js';
import { disagree, secondOpinions, trusted } from '../../src/checks/second-calculation.js';
import { agrees, disagreementOf, type SecondOpinion } from '../../src/contact/second-opinion.js';
import type { Motion } from '../../src/measures/motion.js';
import { rollAtRest, type RestRecord } from '../../src/rolling/roll-at-rest.js';
import { isMissing } from '../../src/numeric/missing.js';

const degree = Math.PI / 180;

function checked(fixture: string): CheckResult {
  const answer = checkDesign(readFileSync(`fixtures/${fixture}/design.yaml`, 'utf8'), fixture);
  if (!answer.ok) throw new RangeError(fixture);
  return answer.value;
}

const opinionsOf = async (fixture: string) => [...(await withSecondOpinion(checked(fixture))).opinions!];

describe('a second calculation', () => {
  it.each(readdirSync('fixtures'))('agrees with the first on %s', async (fixture) => {
    for (const [{ load }, opinion] of await opinionsOf(fixture)) {
      for (const one of opinion.compared) {
        // Six tenths of what is allowed: the rest is for chairs that are not fixtures.
        expect(disagreementOf(one) / one.tolerance, `${load.id} ${one.measure}`).toBeLessThan(0.6);
        expect(one.second).not.toBe(one.exact);
      }
      expect(agrees(opinion)).toBe(true);
    }
  });

  it('is of the empty chair and of what the first sitter does, and of the child on the tails', async () => {
    const asked = (await opinionsOf('nursing')).map(([{ load }]) => [load.id, load.sitter]);
    const first = checked('nursing').people.persons[0]!.name;
    expect(asked).toEqual([
      ['empty', null],
      ['seated', first],
      ['leaning-back-hard', first],
      ['getting-up', first],
      ['leaning-back-hard-with-a-child', first],
      ['getting-up-with-a-child', first],
      ['child-on-the-tails', null],
    ]);
  });

  it('compares the rest, the period and the energy where nothing stands against it', async () => {
    const [[, opinion]] = (await opinionsOf('one-arc-metric')) as [[unknown, SecondOpinion]];
    expect(opinion.compared.map(({ measure }) => measure)).toEqual([
      'restAngleDeg',
      'periodAtSwingS',
      'tipBackEnergyJ',
    ]);
    expect(opinion).toMatchObject({ slide: 0, lifts: false });
  });

  it('compares only where it settles, and says why, where flats take the energy', async () => {
    const [[, opinion]] = (await opinionsOf('dead-spot')) as [[unknown, SecondOpinion]];
    expect(opinion.compared.map(({ measure }) => measure)).toEqual(['restAngleDeg']);
    expect(opinion.notCovered.join()).toContain('flats');
  });

  describe('of a number that is wrong by more than the engine is', () => {
    const { loads, people, design } = checked('one-arc-metric');
    const { record } = loads.find(({ record: { load } }) => load.id === 'empty')!;
    const atRest = record.roll.atRest!;
    const { swing, back, rest } = atRest;
    if (isMissing(swing) || isMissing(back.tip)) throw new RangeError('no swing');
    const tip = back.tip;
    const { body, profile, surface } = record.chair;
    const moved = (way: number) => ({ ...body, centre: { ...body.centre, x: body.centre.x + way } });
    const rolled = (way: number) =>
      rollAtRest(profile, surface, moved(way), { swing: record.load.swing, pushedAt: null }).atRest!;
    const swinging = (factor: number) => ({ ...atRest, swing: { ...swing, period: swing.period * factor } });
    const leaning = (more: number) => ({ ...atRest, rest: { ...rest, lean: rest.lean + more * degree } });
    const tipping = (factor: number) => ({
      ...atRest,
      back: { ...back, tip: { ...tip, energy: tip.energy * factor } },
    });
    const crest = (more: number) => ({
      ...atRest,
      back: { ...back, tip: { ...tip, crest: tip.crest + more * degree } },
    });

    it.each<[string, RestRecord, string[]]>([
      // The rest moves by 0.05 mm over how far G hangs below the centre, 0.006°.
      ['G 0.05 mm farther back', rolled(-5e-5), ['restAngleDeg']],
      ['G 2 mm farther ahead', rolled(2e-3), ['restAngleDeg', 'tipBackEnergyJ']],
      ['a rest by 0.004°', leaning(0.004), ['restAngleDeg']],
      ['a rest by 0.5°', leaning(-0.5), ['restAngleDeg']],
      ['a period by 0.2 %', swinging(1.002), ['periodAtSwingS']],
      ['half a period', swinging(0.5), ['periodAtSwingS']],
      ['an energy by 2 %', tipping(1.02), ['tipBackEnergyJ']],
      ['a seventh of the energy', tipping(0.15), ['tipBackEnergyJ']],
      ['five times the energy', tipping(5), ['tipBackEnergyJ']],
      ['half the energy at a crest half way there', { ...crest(-10), ...tipping(0.5) }, ['tipBackEnergyJ']],
    ])('finds out %s', (_, wrong, measures) => {
      const told = { ...record, roll: { ...record.roll, atRest: wrong } };
      const opinions = secondOpinions([told], design.floor.friction, people.persons[0]?.name ?? null);
      const [opinion] = [...opinions.values()];
      const off = opinion!.compared.filter((one) => disagreementOf(one) > one.tolerance);
      expect(off.map((one) => one.measure)).toEqual(measures);
    });
  });

  describe('of a load that moves', () => {
    const { loads, people, design } = checked('porch-rocker');
    const first = people.persons[0]!.name;
    const recordOf = (id: string) =>
      loads.find(({ record: { load } }) => load.id === id && load.sitter === first)!.record;
    const told = (id: string, change: Partial<Motion>): SecondOpinion => {
      const record = recordOf(id);
      const changed = { ...record, motion: { ...record.motion!, ...change } };
      return [...secondOpinions([changed], design.floor.friction, first).values()][0]!;
    };
    const { farthest } = recordOf('leaning-back-hard').motion!;

    it.each([0.1, -0.1, 3, -3])('finds out a peak of a hard lean wrong by %s°', (off) => {
      const wrong = { ...farthest, back: farthest.back + off * degree };
      expect(agrees(told('leaning-back-hard', { farthest: wrong }))).toBe(false);
    });

    it('finds out a chair that is said to go over and does not', () => {
      expect(agrees(told('leaning-back-hard', {}))).toBe(true);
      expect(agrees(told('leaning-back-hard', { goesOver: 'back' }))).toBe(false);
    });

    it('finds out a chair that is said not to go over and does', () => {
      const over = checked('short-tails');
      const { record } = over.loads.find(({ record: { load } }) => load.id === 'leaning-back-hard')!;
      expect(record.motion!.goesOver).toBe('back');
      const said = { ...record, motion: { ...record.motion!, goesOver: null } };
      const judged = (one: typeof record) =>
        [...secondOpinions([one], 0.4, record.load.sitter).values()].every(agrees);
      expect([judged(record), judged(said)]).toEqual([true, false]);
    });
  });
});

describe('where the two disagree', () => {
  const result = checked('porch-rocker');
  const seated = result.loads.find(({ record: { load } }) => load.id === 'seated')!.record;
  const doubt: SecondOpinion = {
    compared: [{ measure: 'periodS', second: 2, exact: 2.1, tolerance: 0.002 }],
    slide: 0,
    lifts: false,
    notCovered: [],
  };

  it('nothing of the design is known', () => {
    const limits = trusted(result.limits, new Map([[seated, doubt]]));
    expect(limits.length).toBeGreaterThan(10);
    for (const limit of limits) expect(limit).toMatchObject({ verdict: 'unknown', reason: disagree });
    expect(trusted(result.limits, new Map())).toBe(result.limits);
  });

  it('no number at all agrees with nothing', () => {
    const none = { ...doubt, compared: [{ ...doubt.compared[0]!, second: NaN }] };
    expect(agrees(none)).toBe(false);
  });
});
