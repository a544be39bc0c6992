/** What a design asks of a drawing that it does not hold. */
import { describe, expect, it } from 'vitest';
import { drawnOutlines, type Asked } from '../../../src/drawing/read/outlines.js';
import { outlineFlaws } from '../../../src/geometry/flaws.js';
import { drawnIn } from '../../starter/drawings.js';
import { dxf, line } from './dxf-text.js';
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
      'an overrun of 0.14142 mm',
    ],
  ])('running %s is told as what it is', (_, lines, found) => {
    expect(drawnOutlines(drawnIn(dxf(lines)), whole)).toMatchObject({
      flaws: [{ found: expect.stringContaining(`${found} `) as string }],
    });
  });

  it('of an SVG is told with its y down', () => {
    const path = '<path d="M 10 90 L 20 90 L 20 95 L 10.01 90.01"/>';
    const made = drawnOutlines(drawnIn(svg(path)), { ...whole, layer: null });
    expect(made).toMatchObject({
      flaws: [{ found: expect.stringContaining('between (10.01, 90.01) and (10, 90) as drawn') as string }],
    });
  });
});
