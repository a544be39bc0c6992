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
    flaws: [{ found: 'none: it has no width' }],
  });
});
