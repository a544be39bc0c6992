/** What a design asks of a drawing that it does not hold. */
import { describe, expect, it } from 'vitest';
import { drawnOutlines, type Asked } from '../../../src/drawing/read/outlines.js';
import { outlineFlaws } from '../../../src/geometry/flaws.js';
import { drawnIn } from '../../starter/drawings.js';
import { arc, circle, dxf, line } from './dxf-text.js';
import { svg } from './svg-drawn.js';

const whole: Asked = {
  ...{ layer: null, id: null, unit: 0.001, origin: { x: 0, y: 0 }, turn: 0 },
  ...{ mirror: false, join: null, smooth: null },
};

describe('a name that no curve answers to', () => {
  const rect = (id: string) => `<rect id="${id}" width="2" height="30"/>`;
  const drawn = drawnIn(svg(`<g id="legs">${rect('front')}</g><g id="arms">${rect('arm')}</g>`));

  it.each([
    [{ layer: 'leg' }, 'a layer', '`leg`', 'did you mean `legs`?'],
    [{ id: 'frunt' }, 'an id', '`frunt`', 'did you mean `front`?'],
    [{ layer: 'leg', id: 'front' }, 'a layer', '`leg`', 'did you mean `legs`?'],
    [{ layer: 'legs', id: 'arm' }, 'an id', '`arm`', 'it has front, legs'],
  ])('is told: %o', (asked, what, found, hint) => {
    const made = drawnOutlines(drawn, { ...whole, ...asked });
    expect(made).toEqual({
      ok: false,
      flaws: [{ expected: `${what} of the drawing with curves on it`, found, hint }],
    });
  });
});

it('a line whose ends are joined to each other is no outline', () => {
  const made = drawnOutlines(drawnIn(dxf([line(0, 50, 0, 400)])), { ...whole, join: 0.5 });
  expect(made.ok ? outlineFlaws(made.loops) : made).toMatchObject({
    flaws: [{ found: 'none: it has no width at (0, 50) mm' }],
  });
});

describe('what is open', () => {
  const open = (gap: number) => dxf([line(0, 0, 10, 0), line(10, 0, 10, 5), line(10, 5, 0, gap)]);

  it('is told by places of the drawing, however the design puts it into the chair', () => {
    const asked = { ...whole, unit: 0.0254, origin: { x: 1, y: 2 }, turn: 1, mirror: true };
    expect(drawnOutlines(drawnIn(open(0.1)), asked)).toMatchObject({
      flaws: [
        {
          found: expect.stringMatching(
            /^a gap of 2\.54 mm between \(0, 0\.1\) and \(0, 0\) as drawn, /,
          ) as string,
          hint: 'close it in the drawing, or state `join: 2.5654 mm`',
        },
      ],
    });
  });

  it('is not told to be joined, nor to overrun, where a side is missing', () => {
    expect(drawnOutlines(drawnIn(open(2)), whole)).toMatchObject({
      flaws: [{ found: expect.stringMatching(/^a gap of 2 mm/) as string, hint: 'close it in the drawing' }],
    });
  });

  it.each([
    [
      'over the first',
      [line(0, 0, 10, 0), line(10, 0, 10, 5), line(10, 5, -1, -0.5)],
      'an overrun of 1.118 mm',
    ],
    [
      'along it',
      [line(0.5, 0, 10, 0), line(10, 0, 10, 5), line(10, 5, 0, 0), line(0, 0, 1, 0)],
      'an overrun of 0.5 mm',
    ],
    ['as two lines from a corner', [line(0, 0, 10, 0), line(10, 0, 1, 1)], 'a gap'],
    [
      'over each other, two halves',
      [line(0, 0, 10, 0), line(10, 0, 10, 5), line(10.1, 4.9, 0, 4.9), line(0, 4.9, 0, 0)],
      'an overrun of 0.1 mm',
    ],
  ])('running %s is told as what it is', (_, lines, found) => {
    expect(drawnOutlines(drawnIn(dxf(lines)), whole)).toMatchObject({
      flaws: [{ found: expect.stringContaining(`${found} `) as string }],
    });
  });

  const told = (lines: Parameters<typeof dxf>[0], asked = {}) => {
    const made = drawnOutlines(drawnIn(dxf(lines)), { ...whole, layer: '0', ...asked });
    return made.ok
      ? []
      : made.flaws.map(({ found, hint }) => `${found.replace(/ as drawn.*/, '')}: ${hint!}`);
  };

  /** Four lines, each side one of its own, round from the lower left corner. */
  const sides = (left: number, foot: number, right: number, top: number) => [
    ...[line(left, foot, right, foot), line(right, foot, right, top)],
    ...[line(right, top, left, top), line(left, top, left, foot)],
  ];

  it('of lines that cross far beyond the part is overruns', () => {
    const crossing = [
      line(300, 150, 300, 650),
      line(340, 150, 340, 650),
      line(260, 200, 380, 200),
      line(260, 600, 380, 600),
    ];
    const cut = 'cut the lines where they cross';
    expect(told(crossing)).toEqual([
      `an overrun of 50 mm between (300, 600) and (300, 650): ${cut}`,
      `an overrun of 50 mm between (340, 600) and (340, 650): ${cut}`,
      `an overrun of 40 mm between (340, 200) and (380, 200): ${cut}`,
      `an overrun of 40 mm between (340, 600) and (380, 600): ${cut}`,
    ]);
  });

  it('of one line or curve beside outlines that close is told as that', () => {
    const leg = sides(0, 0, 100, 200);
    const remedy =
      'draw what is to close it, cut the lines that it rounds off, or take it off what is asked for';
    expect(told([...leg, line(50, 10, 50, 190)])).toEqual([
      `a line by itself between (50, 10) and (50, 190): ${remedy}`,
    ]);
    expect(told([...leg, arc(90, 190, 10, 0, 90)])).toEqual([
      `a curve by itself between (100, 190) and (90, 200): ${remedy}`,
    ]);
  });

  it('of a small one is that too, and what lies across a missing side is no overrun', () => {
    const leg = sides(0, 0, 100, 200);
    expect(told([...leg, arc(98, 198, 2, 0, 90)])[0]).toMatch(/^a curve by itself between /);
    expect(told([...leg, line(50, 50, 52, 50)])[0]).toMatch(/^a line by itself between /);
    const open = [line(300, 600, 300, 200), line(300, 200, 340, 200), line(340, 200, 340, 600)];
    const across = told([...open, line(250, 400, 400, 400)]);
    expect(across.map((flaw) => flaw.replace(/:.*/, ''))).toEqual([
      'a gap of 40 mm between (340, 600) and (300, 600)',
      'an overrun of 60 mm between (340, 400) and (400, 400)',
    ]);
  });

  it('is not told to be joined where what is then joined is no outline, or less than is drawn', () => {
    const box = [line(303, 0, 340, 0), ...sides(300, 0, 340, 400).slice(1)];
    expect(told(box)[0]).toContain('or state `join: 3.03 mm`');
    // A slot as narrow as the gap, and rings as near to each other.
    const slot = sides(310, 300, 312.5, 360);
    expect(told([...box, ...slot])[0]).toMatch(/: close it in the drawing$/);
    expect(told([...box, circle(320, 200, 15), circle(320, 200, 12.5)])[0]).toMatch(
      /: close it in the drawing$/,
    );
  });

  it('of a chain that nearly closes is its own gap, whatever lies nearer', () => {
    const slat = (s: number) => [
      ...[line(s, 3.5, s, 400), line(s, 400, 20 * s, 400)],
      ...[line(20 * s, 400, 20 * s, 0), line(20 * s, 0, s, 0)],
    ];
    expect(told([...slat(1), ...slat(-1)])).toEqual([
      'a gap of 3.5 mm between (1, 0) and (1, 3.5): close it in the drawing',
      'a gap of 3.5 mm between (-1, 0) and (-1, 3.5): close it in the drawing',
    ]);
  });

  it('is told to be joined only where that closes it, all of it', () => {
    const gaps = (notch: number) => [
      ...[line(0, 0, 100, 0), line(100, 0.5, 100, 300), line(100, 302, 50 + notch, 302)],
      ...[line(50 + notch, 302, 50, 302), line(50, 302, 0, 302), line(0, 302, 0, 1)],
    ];
    const join = 'close it in the drawing, or state `join: 2.02 mm`';
    expect(told(gaps(10)).map((flaw) => flaw.split(': ').slice(1).join(': '))).toEqual([join, join, join]);
    expect(told(gaps(10), { join: 0.00202 })).toEqual([]);
    // A line of 1.5 mm would have its two ends joined.
    expect(told(gaps(1.5)).every((flaw) => flaw.endsWith(': close it in the drawing'))).toBe(true);
    expect(told(gaps(1.5), { join: 0.00202 })).not.toEqual([]);
  });

  it('of an SVG is told with its y down', () => {
    const path = '<path d="M 10 90 L 20 90 L 20 95 L 10.01 90.01"/>';
    const made = drawnOutlines(drawnIn(svg(path)), { ...whole, layer: null });
    expect(made).toMatchObject({
      flaws: [{ found: expect.stringContaining('between (10.01, 90.01) and (10, 90) as drawn') as string }],
    });
  });
});
