/** The second calculation of whole designs, and what it does to a verdict. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkDesign, withSecondOpinion, type CheckResult } from '../../src/check-design.js';
import { disagree, secondOpinions, trusted } from '../../src/checks/second-calculation.js';
import { agrees, disagreementOf, type SecondOpinion } from '../../src/contact/second-opinion.js';
import { rollAtRest } from '../../src/rolling/roll-at-rest.js';
import { isMissing } from '../../src/numeric/missing.js';

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
        // Half of what is allowed: the other half is for chairs that are not fixtures.
        expect(disagreementOf(one) / one.tolerance, `${load.id} ${one.measure}`).toBeLessThan(0.5);
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

  it('says why it compares nothing where flats take the energy', async () => {
    const [[, opinion]] = (await opinionsOf('dead-spot')) as [[unknown, SecondOpinion]];
    expect(opinion.compared).toEqual([]);
    expect(opinion.notCovered.join()).toContain('flats');
  });

  it('finds out a number that is wrong by more than the engine is', () => {
    const { loads, people, design } = checked('one-arc-metric');
    const { record } = loads.find(({ record: { load } }) => load.id === 'empty')!;
    const atRest = record.roll.atRest!;
    const { swing, back } = atRest;
    if (isMissing(swing) || isMissing(back.tip)) throw new RangeError('no swing');
    // G 0.05 mm farther back: the rest moves by 0.05 mm over how far G hangs below the centre, 0.006°.
    const { body, profile, surface } = record.chair;
    const moved = { ...body, centre: { ...body.centre, x: body.centre.x - 5e-5 } };
    const wrong = {
      restAngleDeg: rollAtRest(profile, surface, moved, { swing: record.load.swing, pushedAt: null }).atRest!,
      periodAtSwingS: { ...atRest, swing: { ...swing, period: swing.period * 1.002 } },
      tipBackEnergyJ: { ...atRest, back: { ...back, tip: { ...back.tip, energy: back.tip.energy * 1.05 } } },
    };
    for (const [measure, roll] of Object.entries(wrong)) {
      const told = { ...record, roll: { ...record.roll, atRest: roll } };
      const opinions = secondOpinions([told], design.floor.friction, people.persons[0]?.name ?? null);
      const [opinion] = [...opinions.values()];
      const off = opinion!.compared.filter((one) => disagreementOf(one) > one.tolerance);
      expect(off.map((one) => one.measure)).toEqual([measure]);
    }
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
