/** The screen where names, numbers and wishes are unusual. `npm test -- -u` writes the goldens anew. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../src/report/text-width.js';
import { printText } from '../../src/report/text.js';
import { checked, oneArc, sitters } from '../reading.js';
import { hostileNames } from './made-up.js';
import { plain } from './plain.js';

const everything = { ...plain, all: true, assumed: true, parts: true };
const fixture = (name: string) => checked(readFileSync(`fixtures/${name}/design.yaml`, 'utf8'));
const sections = (text: string): string[] => text.split('\n\n').map((section) => section.split('\n', 1)[0]!);

/** Five people, a child, names of every sort, millimetres. */
const family = `${oneArc
  .replace('trueroll: 1', 'trueroll: 1\nname: "椅子 \\u001b[31mred\\u001b[0m 🪑 chair"')
  .replace(
    'name: rocker',
    'name: rocker of white ash from the tree that stood before the porch of the old house',
  )}
kind: porch
floor: rug on boards
arms: { rear: [-140, 560], front: [200, 580] }
room: { wall: 40 cm }
child: { body: girl, age: 9 months }
sitters:
  - { name: Jo, body: female, stature: 1.52 m, mass: 48 kg }
  - { name: "grandmother from across the road", body: female, stature: 1.6 m, mass: 60 kg }
  - { name: 祖父, body: male, stature: 1.68 m, mass: 70 kg }
  - { name: "👩‍👩‍👧 \\u0007bell", body: female, stature: 1.72 m, mass: 75 kg }
  - { name: Maximiliane-Friederike, body: male, stature: 1.9 m, mass: 110 kg }
`;

describe('a full screen', () => {
  it.each([
    ['nursing', 100],
    ['dead-spot', 80],
  ])('of %s at %i columns', async (name, columns) => {
    await expect(printText(fixture(name), { ...everything, columns })).toMatchFileSnapshot(
      `../golden/everything-${name}-${columns}.txt`,
    );
  });

  it('of five sitters and a child at 80 columns', async () => {
    await expect(printText(checked(family), { ...plain, columns: 80 })).toMatchFileSnapshot(
      '../golden/screen-family-80.txt',
    );
  });
});

describe('no line is wider than the screen', () => {
  it.each([60, 72, 80, 100])('%i columns', (columns) => {
    for (const how of [plain, everything])
      for (const line of printText(checked(family), { ...how, columns }).split('\n'))
        expect(textWidth(line)).toBeLessThanOrEqual(columns);
  });

  // What no file of text may hold is refused before it is a name.
  const named = hostileNames.filter((name) => !/\u007F|\uFFFF|\p{Cs}/u.test(name));
  it.each(named.map((name) => [name.slice(0, 20), name]))('with the name %s', (_, name) => {
    const written = JSON.stringify(name);
    const text = family
      .replace(/^name: .*$/m, `name: ${written}`)
      .replace('name: Jo', `name: ${written}`)
      .replace(/name: rocker of .*? house/, `name: ${written}`);
    for (const how of [plain, everything]) {
      const printed = printText(checked(text), { ...how, columns: 80 });
      const controls = Array.from(printed).filter(
        (sign) => sign !== '\n' && /\p{Cc}|\p{Zl}|\p{Zp}/u.test(sign),
      );
      expect(controls).toEqual([]);
      for (const line of printed.split('\n')) expect(textWidth(line)).toBeLessThanOrEqual(80);
    }
  });
});

describe('what is shown', () => {
  it('goes in a maker’s order', () => {
    expect(sections(printText(fixture('short-tails'), plain)).map((head) => head.split('  ')[0])).toEqual([
      'Reading-room rocker with short tails',
      'Not met',
      'How it sits and rocks',
      'What is left',
      'Assumed',
      'Mind',
    ]);
  });

  it('keeps joules, kg m² and friction demand to `--all`', () => {
    const first = printText(fixture('nursing'), plain);
    const all = printText(fixture('nursing'), { ...plain, all: true });
    for (const words of [/ J\b/, /kg m²/, /friction that it asks of the floor/]) {
      expect(first).not.toMatch(words);
      expect(all).toMatch(words);
    }
  });

  it('has the weights of parts with `--parts` only, in both units, and their sum', () => {
    expect(printText(fixture('nursing'), plain)).not.toContain('Weights');
    const [, weights = ''] = printText(checked(oneArc), { ...plain, parts: true }).split(
      'Weights, to check on a scale',
    );
    const cells = (line: string): string[] => line.trim().split(/ {2,}/);
    const [heads, ...rows] = weights.split('\n\n', 1)[0]!.split('\n').map(cells);
    expect(heads).toEqual(['lb', 'kg']);
    expect(rows).toEqual([
      ['rocker × 2', '0 lb', '0 kg'],
      ['lump', '22 lb', '10 kg'],
      ['the whole chair', '22 lb', '10 kg'],
    ]);
  });

  it('has no bare verdict: whom and where', () => {
    const [, verdict] = printText(fixture('porch-rocker'), plain).split('\n');
    expect(verdict).toBe('All listed limits met, for shortest and tallest, on porch boards.');
  });

  it('says why a dash stands where a number should', () => {
    const text = printText(checked(`${oneArc}${sitters}loads: { seated: { swing: 45 deg } }\n`), plain);
    expect(text).toContain(
      '  - short, tall: rocks by itself, until under 1°: the swing passes the tail end of the rockers',
    );
  });

  it('is headed by what is unknown where nothing fails', () => {
    const own =
      'limits: { period: off, seatSlope: off, backAngle: off, armHeightGap: 0 mm .., kneeHollowGap: off, seatDepthGap: off, footReach: off, frictionDemand: off, leftToTipBack: off, rockerLeftBack: off, rockerLeftForward: off, kickBack: off }';
    const text = printText(checked(`${oneArc}${sitters}${own}\n`), plain);
    expect(text.split('\n').slice(1, 6)).toEqual([
      expect.stringMatching(/^Cannot say: 2 of \d+ limits are unknown\.$/),
      '',
      'Unknown',
      '  unknown short: arms over the elbow, wanted at least 0 mm: the design has no arms line',
      '  unknown tall: arms over the elbow, wanted at least 0 mm: the design has no arms line',
    ]);
  });

  it('does not say that limits are met where there are none', () => {
    const off = 'limits: { empty: { seatSlope: off }, flatLongest: off, radiusJump: off, restCount: off }';
    const text = printText(checked(`${oneArc}${off}\n`), { ...plain, all: true });
    expect(text.split('\n')[1]).toBe('Nothing was judged: the design has put every limit off.');
    expect(text).not.toMatch(/^Limits$/m);
  });

  it('tells a load without a rest once, and what follows from it in number', () => {
    const text = printText(fixture('tight-radius'), plain);
    expect(text.match(/NOT MET .*/g)).toEqual([
      expect.stringMatching(/^NOT MET empty chair: the rockers are too tight/),
    ]);
    expect(text).toMatch(/^ {2}4 more limits are unknown for want of a rest: --all\.$/m);
  });

  it('is in the units of the design', () => {
    const metric = printText(checked(`${oneArc}${sitters}`), everything);
    expect(metric).toMatch(/\d mm/);
    expect(metric).not.toMatch(/\d in\b(?! per)/);
  });

  it('paints headings, verdicts and marks, and nothing that would move a column', () => {
    const painted = printText(fixture('short-tails'), {
      ...plain,
      paint: (style, text) => `<${style}>${text}</>`,
    });
    expect(painted.replace(/<[a-z]+>|<\/>/g, '')).toBe(printText(fixture('short-tails'), plain));
    expect(new Set(painted.match(/<[a-z]+>/g))).toEqual(new Set(['<heading>', '<bad>']));
  });
});
