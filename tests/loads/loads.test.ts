/** What the chair is put through, and by whom. */
import { describe, expect, it } from 'vitest';
import { whyNotRolled } from '../../src/loads/loads-of.js';
import { loadIds } from '../../src/names.js';
import { checked, mistakesIn, oneArc, sitters } from '../reading.js';

const loadsOf = (text: string) =>
  checked(text).loads.map(({ record: { load } }) =>
    load.sitter === null ? load.id : `${load.id}/${load.sitter}`,
  );
const child = 'child: { mass: 9 kg }\n';

describe('the loads', () => {
  it('are those of the contract, in its order, each for every sitter in the file’s', () => {
    expect(loadsOf(oneArc)).toEqual(['empty', 'child-on-the-tails']);
    const each = (...ids: string[]) => ids.flatMap((id) => [`${id}/short`, `${id}/tall`]);
    const alone = each('seated', 'seated-feet-up', 'leaning-back-hard', 'getting-up');
    expect(loadsOf(`${oneArc}${sitters}`)).toEqual(['empty', ...alone, 'child-on-the-tails']);
    expect(loadsOf(`${oneArc}${sitters}${child}`)).toEqual([
      'empty',
      ...alone,
      ...each('with-a-child', 'leaning-back-hard-with-a-child', 'getting-up-with-a-child'),
      'child-on-the-tails',
    ]);
  });

  it('are only of the empty chair when nobody holds the child', () => {
    expect(loadsOf(`${oneArc}${child}`)).toEqual(['empty', 'child-on-the-tails']);
  });

  it.each(loadIds)('%s can be off', (id) => {
    const [all, left] = [
      `${oneArc}${sitters}${child}`,
      `${oneArc}${sitters}${child}loads: { ${id}: off }\n`,
    ].map(loadsOf);
    expect(left).toEqual(all!.filter((load) => load.split('/')[0] !== id));
    expect(left!.length).toBeLessThan(all!.length);
  });

  it('with a child swing as far as without, unless they say otherwise', () => {
    const swings = (loads: string): Map<string, number> =>
      new Map(
        checked(`${oneArc}${sitters}${child}loads: ${loads}\n`)
          .loads.filter(({ record: { load } }) => load.script === null)
          .map(({ record: { load } }) => [load.id, Math.round((load.swing * 180) / Math.PI)]),
      );
    expect(Object.fromEntries(swings('{ seated: { swing: 4 deg } }'))).toEqual({
      empty: 6,
      seated: 4,
      'seated-feet-up': 6,
      'with-a-child': 4,
    });
    const own = swings('{ seated: { swing: 4 deg }, with-a-child: { swing: 3 deg } }');
    expect([own.get('seated'), own.get('with-a-child')]).toEqual([4, 3]);
  });
});

describe('what a moving load rolls with', () => {
  const { loads, chair } = checked(`${oneArc}${sitters}${child}`);
  const of = (id: string, sitter: string | null = 'tall') =>
    loads.find(({ record }) => record.load.id === id && record.load.sitter === sitter)!.record.load;

  it('is counted from the rest of the same sitter, with the child that rides', () => {
    for (const [moving, still] of [
      ['leaning-back-hard', 'seated'],
      ['getting-up', 'seated'],
      ['leaning-back-hard-with-a-child', 'with-a-child'],
      ['getting-up-with-a-child', 'with-a-child'],
    ] as const)
      expect(of(moving).settled, moving).toEqual(of(still).body);
    expect(of('child-on-the-tails', null).settled).toEqual(chair.body);
  });

  it('is the chair alone while somebody gets up or a child steps on its tails, all in a hard lean', () => {
    expect(of('getting-up').body).toEqual(chair.body);
    expect(of('getting-up-with-a-child').body).toEqual(chair.body);
    expect(of('child-on-the-tails', null).body).toEqual(chair.body);
    const [lean, still] = [of('leaning-back-hard'), of('seated')];
    expect(lean.body.mass).toBeCloseTo(still.body.mass, 9);
    // The trunk is bent forward at first.
    expect(lean.body.centre.x).toBeGreaterThan(still.body.centre.x);
  });

  it('is nothing that moves in a load that only rocks', () => {
    for (const { record } of loads)
      expect(record.load.script === null, record.load.id).toBe(record.motion === null);
    const still = loads.filter(({ record }) => record.load.script === null);
    expect(new Set(still.map(({ record }) => record.load.id))).toEqual(
      new Set(['empty', 'seated', 'seated-feet-up', 'with-a-child']),
    );
  });
});

describe('the people', () => {
  const persons = (text: string) => checked(`${oneArc}${text}`).people.persons;

  it('at a percentile are those of the table: ANSUR II 2012, men, 95th: 1870 mm, 110.7 kg', () => {
    const [man] = persons('sitters: [ { name: man, body: male, percentile: 95 } ]\n');
    expect(man!.size).toMatchObject({ stature: 1.87, mass: 110.7 });
    const [tall] = persons('sitters: [ { name: man, body: male, percentile: 95, stature: 2 m } ]\n');
    expect(tall!.size).toMatchObject({ stature: 2, mass: 110.7 });
  });

  it('ride with all their mass, feet up', () => {
    const text = `${oneArc}sitters: [ { name: man, body: male, percentile: 95 } ]\n`;
    const { loads, chair } = checked(text);
    const up = loads.find(({ record }) => record.load.id === 'seated-feet-up')!.record.load;
    expect(up.body.mass).toBeCloseTo(chair.body.mass + 110.7, 9);
  });

  it('hold a child of the table: WHO 2006, girls, 9 months, median 8.2 kg', () => {
    const { people, loads } = checked(`${oneArc}${sitters}child: { body: girl, age: 9 months }\n`);
    expect(people.child?.mass).toBeCloseTo(8.2, 1);
    const rides = (id: string) => loads.find(({ record }) => record.load.id === id)!.record.load.riders;
    expect(rides('with-a-child') - rides('seated')).toBeCloseTo(people.child!.mass, 9);
  });

  it('that nobody can be are told where they stand', () => {
    const mistakes = mistakesIn(`${oneArc}${sitters}child: { body: boy, age: 60 months }\n`);
    expect(mistakes).toHaveLength(1);
    expect(mistakes[0]).toMatch(/^design\.yaml:\d+:\d+: .*\b60 months\b.*table/);
  });
});

describe('a load that is not rolled', () => {
  it('is off, or lacks somebody: each is told, and none that is rolled is asked about', () => {
    const { design, people } = checked(`${oneArc}loads: { empty: off }\n`);
    const why = whyNotRolled(design, people);
    expect(why('empty')).toBe('the design has put this load off');
    expect(why('seated')).toBe('the design has no sitters');
    expect(() => why('child-on-the-tails')).toThrow(RangeError);
    const seated = checked(`${oneArc}${sitters}`);
    const unheld = whyNotRolled(seated.design, seated.people);
    for (const id of loadIds.filter((each) => each.endsWith('with-a-child')))
      expect(unheld(id)).toBe('the design has no child');
    const rolled = new Set(seated.loads.map(({ record }) => record.load.id));
    for (const id of loadIds) if (rolled.has(id)) expect(() => unheld(id)).toThrow(RangeError);
  });
});
