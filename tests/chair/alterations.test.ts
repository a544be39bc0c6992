/** A chair altered from its drawing, held against the laws of rolling bodies and plain geometry. */
import { describe, expect, it, test } from 'vitest';
import { checkDesign, type CheckResult } from '../../src/check-design.js';
import type { Issue } from '../../src/design/issue.js';
import { readDesign } from '../../src/design/read-design.js';
import { designFunction } from '../../src/explore/design-function.js';
import { variablesOf } from '../../src/explore/variables.js';
import { outlineMoments } from '../../src/geometry/area-moments.js';
import { endOf, startOf, type Loop } from '../../src/geometry/piece.js';
import { distance } from '../../src/geometry/point.js';
import { rocker } from '../../src/geometry/words/rocker.js';
import { alterationNames, type AlterationName } from '../../src/names.js';

/** Two bars for legs on a rocker, a slab for a seat, a stick for a back. Masses as weighed. */
const chair = (
  alterations: string,
  rockers = '2 kg',
  rocker = 'radius: 1000, depth: 50, nose: 400, tail: 500',
): string => `trueroll: 1
units: mm
alterations: { ${alterations} }
spacing: 500
parts:
  - { name: rocker, mass: ${rockers}, outline: { rocker: { ${rocker} } } }
  - { name: front leg, mass: 1 kg, outline: { bar: { from: [250, 84], to: [250, 400], width: 40 } } }
  - { name: back leg, mass: 1 kg, outline: { bar: { from: [-250, 84], to: [-250, 380], width: 40 } } }
  - { name: seat, mass: 4 kg, outline: { rectangle: { from: [-260, 380], to: [260, 400] } } }
  - { name: back, mass: 3 kg, outline: { bar: { from: [-250, 400], to: [-420, 1000], width: 30 } } }
extras: [ { name: bolts, mass: 0.5 kg, at: [100, 300] } ]
seat: { front: [260, 400], rear: [-240, 380] }
back: { foot: [-240, 400], top: [-410, 1000] }
arms: { rear: [-200, 600], front: [200, 610] }
`;

function checked(text: string): CheckResult {
  const result = checkDesign(text, 'cabin.yaml');
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.value;
}
const altered = (alterations: string, rockers?: string): CheckResult => checked(chair(alterations, rockers));
const massless = '1e-6 kg';

function emptyOf({ loads }: CheckResult): { readonly slope: number; readonly rest: number } {
  const { measured } = loads.find(({ record }) => record.load.id === 'empty')!;
  return { slope: measured.get('seatSlopeDeg') as number, rest: measured.get('restAngleDeg') as number };
}

describe('the upper chair', () => {
  it('slid along massless rockers keeps the slope of its seat at rest', () => {
    const drawn = emptyOf(altered('', massless));
    for (const by of ['-60', '35', '80']) {
      const slid = emptyOf(altered(`upper-chair: ${by}`, massless));
      expect(Math.abs(slid.rest - drawn.rest)).toBeGreaterThan(0.01);
      // A rocker of 1 mg moves the centre of gravity by 1e-7 of its own way.
      expect(Math.abs(slid.slope - drawn.slope)).toBeLessThan(1e-6);
    }
  });

  it('slid along rockers that weigh turns as the law of both masses says', () => {
    // physics: θ = -π/2 - arg(m_u e^{iβ}(G_u - C) + m_r (G_r - C)), the seat turns by θ + β.
    const drawn = altered('');
    const [rockers, ...upper] = [...drawn.chair.parts, ...drawn.chair.extras];
    const about = ({ centre, mass }: { centre: { x: number; y: number }; mass: number }) => ({
      x: mass * centre.x,
      y: mass * (centre.y - 1),
    });
    const sum = upper.map(about).reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }));
    const own = about(rockers!);
    for (const slide of [-0.07, 0.03]) {
      const [cos, sin] = [Math.cos(slide), Math.sin(slide)];
      const both = { x: sum.x * cos - sum.y * sin + own.x, y: sum.x * sin + sum.y * cos + own.y };
      const rest = -Math.PI / 2 - Math.atan2(both.y, both.x);
      const then = emptyOf(altered(`upper-chair: ${slide * 1000}`));
      expect(then.rest).toBeCloseTo(rest, 9);
      expect(then.slope).toBeCloseTo(Math.atan2(20, 500) + slide + rest, 9);
    }
  });

  it('with legs trimmed leans as much more as the law of leg trim says, to first order', () => {
    // physics: ε [1 + (m_u/m)(h_u - y_J)/(R - h)]
    // Its hypothesis: the centre of gravity plumb below that of the arc, which the bolts see to.
    const { mass, centre } = altered('', massless).chair.body;
    const level = (alterations: string): CheckResult =>
      checked(
        chair(alterations, massless).replace(
          'at: [100, 300]',
          `at: [${100 - (1000 * centre.x * mass) / 0.5}, 300]`,
        ),
      );
    const drawn = level('');
    const { body } = drawn.chair;
    expect(Math.abs(body.centre.x)).toBeLessThan(1e-12);
    const joint = 0.084;
    const gain = 1 + (body.centre.y - joint) / (1 - body.centre.y);
    const errorOf = (by: number): number => {
      const turn = by / 1000 / 0.5;
      return emptyOf(level(`front-legs: ${by}`)).slope - emptyOf(drawn).slope - gain * turn;
    };
    const [coarse, fine] = [errorOf(2), errorOf(1)];
    expect(Math.abs(fine)).toBeLessThan(0.02 * gain * 0.002);
    // What is left is of second order: a quarter at half the trim.
    expect(coarse / fine).toBeCloseTo(4, 0);
    expect(emptyOf(level('back-legs: -2')).slope).toBeGreaterThan(emptyOf(drawn).slope);
    expect(emptyOf(level('front-legs: -2')).slope).toBeLessThan(emptyOf(drawn).slope);
  });

  it('raised by all legs stands so much higher; its lines and extras go with it', () => {
    const [drawn, raised] = [altered(''), altered('both-legs: 12')];
    expect(raised.chair.seat!.front.y - drawn.chair.seat!.front.y).toBeCloseTo(0.012, 12);
    expect(raised.chair.arms!.rear.y - drawn.chair.arms!.rear.y).toBeCloseTo(0.012, 12);
    expect(raised.chair.extras[0]!.centre.y - drawn.chair.extras[0]!.centre.y).toBeCloseTo(0.012, 12);
    const share = 1 - 2 / drawn.chair.body.mass;
    expect(raised.chair.body.centre.y - drawn.chair.body.centre.y).toBeCloseTo(0.012 * share, 12);
    expect(raised.chair.parts[0]).toEqual(drawn.chair.parts[0]);
  });

  it('slid along massless rockers of another radius keeps the slope that it has on those', () => {
    // physics: the slide turns it about the centre of the arc that it then rolls on.
    for (const radius of ['rocker-radius: 150', 'rocker-radius: -120']) {
      const other = emptyOf(altered(radius, massless));
      expect(Math.abs(other.slope - emptyOf(altered('', massless)).slope)).toBeGreaterThan(1e-3);
      for (const by of ['-60', '35', '80']) {
        const slid = emptyOf(altered(`${radius}, upper-chair: ${by}`, massless));
        expect(Math.abs(slid.rest - other.rest)).toBeGreaterThan(0.01);
        expect(Math.abs(slid.slope - other.slope)).toBeLessThan(1e-6);
      }
    }
  });

  it('with front and back legs changed alike moves as with both legs, whatever the height of their joints', () => {
    const stepped = (alterations: string): CheckResult =>
      checked(
        chair(alterations).replace('from: [-250, 84]', 'from: [-250, 96]').replace('depth: 50', 'depth: 62'),
      );
    for (const by of ['12', '-9']) {
      const alike = stepped(`front-legs: ${by}, back-legs: ${by}`);
      expect(alike.chair).toEqual(stepped(`both-legs: ${by}`).chair);
      expect(alike.chair.seat).not.toEqual(stepped('').chair.seat);
    }
    expect(stepped('front-legs: 5, back-legs: 8').chair).toEqual(stepped('both-legs: 5, back-legs: 3').chair);
  });

  it('altered there and back is as drawn', () => {
    const drawn = altered('');
    const back = altered('both-legs: 5 - 5, front-legs: 3 - 3, upper-chair: 0');
    expect(back.chair).toEqual(drawn.chair);
  });
});

describe('the rockers', () => {
  it('get radius, tail and nose as if they were drawn so', () => {
    const drawnSo = checked(chair('', '2 kg', 'radius: 1100, depth: 50, nose: 380, tail: 560'));
    expect(altered('rocker-radius: 100, tail-end: 60, nose-end: -20').chair).toEqual(drawnSo.chair);
  });

  it('get wedges: tangent half-way, lower by so much at the end, of a larger radius', () => {
    const word = {
      arcs: [{ radius: 1, until: null }],
      at: 0.05,
      nose: 0.4,
      tail: 0.5,
      along: 'level',
      depth: 0.05,
    } as const;
    const thick = 0.01;
    const [plain, wedged] = [rocker(word), rocker({ ...word, wedge: thick })];
    if (!plain.ok || !wedged.ok) throw new Error('a rocker that cannot be built');
    expect(plain.ends.tail.y - wedged.ends.tail.y).toBeCloseTo(thick, 12);
    expect(wedged.ends.tail.x).toBeCloseTo(plain.ends.tail.x, 12);
    expect(wedged.ends.nose.x).toBeCloseTo(plain.ends.nose.x, 12);
    const [wedge, arc] = wedged.boundary;
    if (wedge?.kind !== 'arc' || arc?.kind !== 'arc') throw new Error('a bottom edge of no arcs');
    expect(wedge.radius).toBeGreaterThan(1);
    const joint = endOf(wedge);
    expect(joint.x).toBeCloseTo(0.05 - 0.25, 12);
    expect(startOf(arc).x).toBeCloseTo(joint.x, 12);
    // Both centres and the joint lie on one line.
    const cross =
      (wedge.centre.x - joint.x) * (arc.centre.y - joint.y) -
      (wedge.centre.y - joint.y) * (arc.centre.x - joint.x);
    expect(Math.abs(cross)).toBeLessThan(1e-12);
    expect(wedged.boundary.at(-2)).toEqual(plain.boundary.at(-1));
    expect(wedged.boundary.at(-1)).toMatchObject({ kind: 'line', from: plain.ends.tail });
  });

  it('get all the wood of the wedges, and lose none of their own', () => {
    // The wedge lies between the chord from where it begins to the tail end, the plumb way down from there, and two
    // circular segments: that of its own arc more, that of the arc above less.
    const word = {
      arcs: [{ radius: 0.9, until: null }],
      at: 0,
      nose: 0.4,
      tail: 0.55,
      along: 'level',
      depth: 0.05,
    } as const;
    const [plain, wedged] = [rocker(word), rocker({ ...word, wedge: 0.012 })];
    if (!plain.ok || !wedged.ok) throw new Error('a rocker that cannot be built');
    const [wedge] = wedged.boundary;
    if (wedge?.kind !== 'arc') throw new Error('a wedge of no arc');
    const [begin, tail, tip] = [endOf(wedge), plain.ends.tail, wedged.ends.tail];
    const triangle = ((tail.y - tip.y) * (begin.x - tail.x)) / 2;
    const segment = (radius: number, chord: number): number => {
      const angle = 2 * Math.asin(chord / (2 * radius));
      return (radius * radius * (angle - Math.sin(angle))) / 2;
    };
    const own = segment(wedge.radius, distance(begin, tip)) - segment(0.9, distance(begin, tail));
    const areaOf = (boundary: Loop): number => outlineMoments([{ boundary, holes: [] }]).area;
    expect(triangle + own).toBeGreaterThan(1e-3);
    expect(areaOf(wedged.boundary) - areaOf(plain.boundary)).toBeCloseTo(triangle + own, 14);
  });

  it('with wedges stand farther from going over backwards', () => {
    const tipBack = (result: CheckResult): number =>
      result.loads[0]!.measured.get('tipBackEnergyJ') as number;
    expect(tipBack(altered('tail-wedge: 10'))).toBeGreaterThan(tipBack(altered('')));
  });
});

test('a rocker drawn as two parts stays one', () => {
  const two = (text: string): string =>
    text.replace(/( {2}- \{ name: )(rocker, mass: 2 kg)(.*\n)/, '$1inner $2$3$1outer $2$3');
  const [drawn, raised] = [checked(two(chair(''))), checked(two(chair('both-legs: 12')))];
  expect(raised.chair.parts.slice(0, 2)).toEqual(drawn.chair.parts.slice(0, 2));
  expect(raised.chair.parts[2]!.centre.y - drawn.chair.parts[2]!.centre.y).toBeCloseTo(0.012, 12);
});

test('weights lie at the ends of the rockers', () => {
  const [drawn, weighted] = [altered(''), altered('tail-weight: 2 kg, nose-weight: 1 kg')];
  const { mass, centre } = drawn.chair.body;
  const sum = (drawnAt: number, tail: number, nose: number): number =>
    (mass * drawnAt + 2 * tail + nose) / (mass + 3);
  const height = (x: number): number => 1 - Math.sqrt(1 - x * x);
  expect(weighted.chair.body.mass).toBeCloseTo(mass + 3, 12);
  expect(weighted.chair.body.centre.x).toBeCloseTo(sum(centre.x, -0.5, 0.4), 12);
  expect(weighted.chair.body.centre.y).toBeCloseTo(sum(centre.y, height(0.5), height(0.4)), 12);
});

test('rockers are altered first, as if they were drawn so: what hangs at their ends, and slides on them', () => {
  const drawnSo = 'radius: 1100, depth: 50, nose: 380, tail: 400';
  const rockers = 'rocker-radius: 100, nose-end: -20, tail-end: -100';
  for (const others of ['tail-weight: 2 kg', 'nose-weight: 1 kg', 'upper-chair: 30'])
    expect(altered(`${rockers}, ${others}`).chair).toEqual(checked(chair(others, '2 kg', drawnSo)).chair);
  // By hand: two kilograms at the tail end 100 mm farther forward than drawn.
  const { mass, centre } = altered(rockers).chair.body;
  const weighted = altered(`${rockers}, tail-weight: 2 kg`).chair.body;
  expect(weighted.centre.x).toBeCloseTo((mass * centre.x - 2 * 0.4) / (mass + 2), 12);
});

test('the back rest moves along the seat, and nothing else', () => {
  const [drawn, moved] = [altered(''), altered('back-rest: 30')];
  const way = Math.hypot(500, 20);
  expect(moved.chair.back!.foot.x - drawn.chair.back!.foot.x).toBeCloseTo((0.03 * 500) / way, 12);
  expect(moved.chair.back!.top.y - drawn.chair.back!.top.y).toBeCloseTo((0.03 * 20) / way, 12);
  expect(moved.chair.body).toEqual(drawn.chair.body);
});

describe('what cannot be', () => {
  const mistakes = (text: string): string[] => {
    const result = checkDesign(text, 'cabin.yaml');
    return result.ok
      ? []
      : result.issues.map(
          ({ line, column, expected, hint }) =>
            `${line}:${column} ${expected}${hint === undefined ? '' : ` (${hint})`}`,
        );
  };
  const path = 'radius: 1000, depth: 50, nose: 400, tail: 500';
  const drawn =
    'outline: { path: "M -480 122 A 1000 1000 0 0 1 400 83.5 L 390 130 A 950 950 0 0 0 -470 170 Z" }';

  it.each<[string, RegExp]>([
    [chair('front-leg: 3'), /^3:16 .*front-legs/],
    [chair('tail-weight: -1 lb'), /^3:29 0 or more/],
    [chair('tail-wedge: 2 lb'), /a length/],
    [chair('tail-wedge: 200'), /a wedge under the tail/],
    [
      chair('tail-end: 3').replace(`outline: { rocker: { ${path} } }`, drawn),
      /^3:26 a chair with a `rocker` outline/,
    ],
    [
      chair('front-legs: 3').replace(/ {2}- \{ name: back leg.*\n/, ''),
      /^3:28 a chair with front and back legs/,
    ],
    [chair('both-legs: -90'), /^3:27 `both-legs` of no less than -\d/],
    [
      chair('back-legs: -45').replace(
        'parts:',
        'parts:\n  - { name: tail, mass: 1 kg, outline: { bar: { from: [-480, 187], to: [-480, 400], width: 2 } } }',
      ),
      /^3:27 an upper chair that stands on its rockers/,
    ],
    [chair('back-rest: 3').replace(/^back: .*\n/m, ''), /a seat line and a back line/],
  ])('%#', (text, words) => {
    const found = mistakes(text);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(words);
  });
});

describe('what goes too far is told once, at the alteration, with how far it may go', () => {
  const issuesOf = (alterations: string): readonly Issue[] => {
    const result = checkDesign(chair(alterations), 'cabin.yaml');
    return result.ok ? [] : result.issues;
  };

  it.each<[AlterationName, number, RegExp]>([
    // Longer than the legs, and so long that the chair turns right round.
    ['front-legs', -320, /comes through the rockers/],
    ['front-legs', -3200, /comes through the rockers/],
    ['back-legs', -300, /comes through the rockers/],
    ['both-legs', -305, /comes through the rockers/],
    ['both-legs', -5000, /comes through the rockers/],
    ['front-legs', 1500, /nobody can sit/],
    ['back-legs', 900, /nobody can sit/],
    ['upper-chair', 200, /leaves the rockers/],
    ['upper-chair', -300, /leaves the rockers/],
    // Half a turn, and a whole one back to where it is drawn.
    ['upper-chair', 1000 * Math.PI, /leaves the rockers/],
    ['upper-chair', 2000 * Math.PI, /leaves the rockers/],
    ['upper-chair', -2000 * Math.PI, /leaves the rockers/],
    ['back-rest', 2540, /nobody who sits/],
    ['back-rest', -2540, /nobody who sits/],
  ])('%s: %d', (name, by, hint) => {
    const issues = issuesOf(`${name}: ${by}`);
    expect(issues).toHaveLength(1);
    const [issue] = issues;
    expect([issue!.line, issue!.column]).toEqual([3, 18 + name.length]);
    expect(issue!.hint).toMatch(hint);
    const told = /^`([a-z-]+)` of no (more|less) than (-?[\d.]+) mm$/.exec(issue!.expected)!;
    expect([told[1], told[2]]).toEqual([name, by > 0 ? 'more' : 'less']);
    const limit = Number(told[3]);
    // Legs are judged to first order of their turn, here of a tenth.
    const [short, past] = by > 0 ? [limit - 0.1, limit + 0.1] : [limit + 1, limit - 0.1];
    expect(issuesOf(`${name}: ${short}`)).toEqual([]);
    expect(issuesOf(`${name}: ${past}`)).toHaveLength(1);
  });

  it('counts what the others do', () => {
    const limitOf = (alterations: string): number => {
      const [issue] = issuesOf(alterations);
      return Number(/than (-?[\d.]+) mm/.exec(issue!.expected)![1]);
    };
    const alone = limitOf('front-legs: -100');
    // The foremost corner of the front legs stands 270 mm ahead, the joints 500 mm apart.
    expect(limitOf('front-legs: -100, both-legs: -10')).toBeCloseTo(alone + (10 * 500) / 520, 2);
    expect(limitOf('front-legs: -100, both-legs: 20')).toBeCloseTo(alone - (20 * 500) / 520, 2);
    const slid = limitOf('upper-chair: 500');
    // The nose end of a rocker of 1 m stands at asin(nose / 1 m).
    const nearer = Math.asin(0.4) - Math.asin(0.35);
    expect(limitOf('nose-end: -50, upper-chair: 500')).toBeCloseTo(slid - 1000 * nearer, 1);
  });

  it('is that of the rockers where they cannot be built so', () => {
    expect(issuesOf('rocker-radius: -990')).toMatchObject([{ line: 3, column: 31 }]);
    expect(issuesOf('rocker-radius: 1, tail-end: 900')).toMatchObject([{ line: 3, column: 44 }]);
    expect(issuesOf('tail-end: 1, tail-wedge: 200, tail-weight: 1 kg')).toMatchObject([
      { line: 3, column: 41 },
    ]);
  });

  it('is that of any chair where a number is varied that no file may state', () => {
    const read = readDesign(chair(''), 'cabin.yaml');
    if (!read.ok) throw new Error('a chair that cannot be read');
    for (const name of alterationNames) {
      const variables = variablesOf(read.value).filter((one) => one.name === name);
      const { at } = designFunction(read.value, variables);
      const unit = name.endsWith('weight') ? 'kg' : 'm';
      const expected = `no more than 1000000 ${unit}`;
      expect(at([1e300])).toMatchObject({ ok: false, issues: [{ expected }] });
    }
  });
});

test('what an alteration does not touch is the very same object as before', () => {
  const read = readDesign(chair('rocker-radius: 10, front-legs: 5'), 'cabin.yaml');
  if (!read.ok) throw new Error('a chair that cannot be read');
  const variables = variablesOf(read.value).filter(({ name }) => name === 'tail-weight');
  const { at } = designFunction(read.value, variables);
  const [one, other] = [at([1]), at([2])];
  if (!one.ok || !other.ok) throw new Error('a chair that cannot be built');
  expect(other.chair.profile).toBe(one.chair.profile);
  one.chair.parts.forEach((part, i) => {
    expect(other.chair.parts[i]).toBe(part);
  });
  expect(other.people).toBe(one.people);
});

test('every alteration does something', () => {
  const drawn = altered('');
  const by = (name: AlterationName): string => (name.endsWith('weight') ? '1 kg' : '5');
  for (const name of alterationNames) {
    const { chair: then } = altered(`${name}: ${by(name)}`);
    expect([
      name,
      JSON.stringify([then.body, then.back, then.surface]) ===
        JSON.stringify([drawn.chair.body, drawn.chair.back, drawn.chair.surface]),
    ]).toEqual([name, false]);
  }
});
