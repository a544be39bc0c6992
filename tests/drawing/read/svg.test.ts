/** Shapes, maps, windows and uses of SVG by the areas and places that geometry gives them. */
import { describe, expect, it } from 'vitest';
import { endOf, startOf } from '../../../src/geometry/piece.js';
import { areas, boxIn, drawn, outlines, svg } from './svg-drawn.js';

const shapes: readonly (readonly [string, number, readonly number[]])[] = [
  ['<path d="M10 10h20v5H10z"/>', 100, [10, 10, 30, 15]],
  ['<path d="M10 10 H 30 V 15 h-20 V10"/>', 100, [10, 10, 30, 15]],
  // Under a parabola two thirds of its box.
  ['<path d="M0 0Q10 15 20 0z"/>', -100, [0, 0, 20, 7.5]],
  ['<rect x="1" y="2" width="30" height="4"/>', 120, [1, 2, 31, 6]],
  ['<rect width="30" height="20" rx="5"/>', 600 - (4 - Math.PI) * 25, [0, 0, 30, 20]],
  ['<rect width="30" height="20" ry="5" rx="auto"/>', 600 - (4 - Math.PI) * 25, [0, 0, 30, 20]],
  ['<rect width="30" height="20" rx="4" ry="10"/>', 600 - (4 - Math.PI) * 40, [0, 0, 30, 20]],
  ['<rect width="30" height="20" rx="99"/>', 600 - (4 - Math.PI) * 150, [0, 0, 30, 20]],
  ['<circle cx="20" cy="30" r="10"/>', Math.PI * 100, [10, 20, 30, 40]],
  ['<ellipse cx="20" cy="30" rx="10" ry="5"/>', Math.PI * 50, [10, 25, 30, 35]],
  ['<ellipse cx="20" cy="30" rx="10"/>', Math.PI * 100, [10, 20, 30, 40]],
  ['<polygon points="0,0 10,0,10,10 \n 0 10"/>', 100, [0, 0, 10, 10]],
  ['<polygon points="0 0 10-0 10.5.5 0 0"/>', 2.5, [0, 0, 10.5, 0.5]],
  ['<polyline points="0,0 10,0 10,10 0,10 0,0"/>', 100, [0, 0, 10, 10]],
  ['<rect x="50%" y="10%" width="10%" height="1e1"/>', 100, [50, 10, 60, 20]],
  ['<circle r="10%"/>', Math.PI * 100, [-10, -10, 10, 10]],
  ['<rect width="1in" height="25.4mm" x="2.54cm" y="72pt"/>', 96 * 96, [96, 96, 192, 192]],
  ['<rect width="6pc" height="101.6Q" x="1px"/>', 96 * 96, [1, 0, 97, 96]],
];

describe('shapes', () => {
  it.each(shapes)('%s', (text, area, box) => {
    const [got, ...others] = areas(svg(text));
    expect(others).toEqual([]);
    expect(Math.abs(got! - area)).toBeLessThan(1e-9 * Math.abs(area));
    boxIn(svg(text)).forEach((side, i) => {
      expect(Math.abs(side - box[i]!)).toBeLessThan(1e-4);
    });
  });

  it('runs each through without a gap', () => {
    for (const [text] of shapes)
      for (const { pieces, closed } of drawn(svg(text)).curves)
        pieces.slice(closed ? 0 : 1).forEach((piece, i) => {
          const before = closed ? pieces.at(i - 1)! : pieces[i]!;
          const [end, start] = [endOf(before), startOf(piece)];
          expect(Math.hypot(end.x - start.x, end.y - start.y)).toBeLessThan(1e-12 * 100);
        });
  });

  it('keeps circles arcs and says what closes by itself', () => {
    const { curves, yDown } = drawn(
      svg(
        '<circle r="1"/><line x2="3" y2="4"/><polyline points="0 0 1 0 0 0"/><path d="M0 0h1v1zm5 5h1v1"/>',
      ),
    );
    expect(curves.map(({ closed }) => closed)).toEqual([true, false, false, true, false]);
    expect(curves[0]!.pieces.map(({ kind }) => kind)).toEqual(['arc']);
    expect(curves[1]!.pieces).toEqual([{ kind: 'line', from: { x: 0, y: 0 }, to: { x: 3, y: 4 } }]);
    expect(yDown).toBe(true);
  });

  it('counts those that draw nothing', () => {
    const nothing =
      '<path/><path d="none"/><path d=" M1 1"/><rect width="0" height="3"/><circle/><line/><polygon points="1 1"/>';
    const { curves, leftOut } = drawn(svg(nothing));
    expect(curves).toEqual([]);
    expect(leftOut.map(({ what, count }) => [what, count])).toEqual([
      ...[
        ['path', 3],
        ['rect', 1],
        ['circle', 1],
        ['line', 1],
        ['polygon', 1],
      ],
    ]);
  });
});

describe('maps', () => {
  const unitSquare = '<rect width="1" height="1"/>';
  it.each([
    ['matrix(2 0 0 3 4 5)', [4, 5, 6, 8]],
    ['matrix(2,0,0,3,4,5)', [4, 5, 6, 8]],
    ['matrix(2-0-0 3,4 , 5)', [4, 5, 6, 8]],
    ['translate(7)', [7, 0, 8, 1]],
    ['translate(7 -2)', [7, -2, 8, -1]],
    ['scale(3)', [0, 0, 3, 3]],
    ['scale(3,-2)', [0, -2, 3, 0]],
    // Turned from x to y, which points down.
    ['rotate(90)', [-1, 0, 0, 1]],
    ['rotate(180 5 5)', [9, 9, 10, 10]],
    ['rotate(45)', [-Math.SQRT1_2, 0, Math.SQRT1_2, Math.SQRT2]],
    ['skewX(45)', [0, 0, 2, 1]],
    ['skewY(45)', [0, 0, 1, 2]],
    ['translate(10,0) scale(2)', [10, 0, 12, 2]],
    ['scale(2), translate(10 0)', [20, 0, 22, 2]],
    [' translate (1e1) ', [10, 0, 11, 1]],
    ['none', [0, 0, 1, 1]],
  ])('%s', (transform, box) => {
    boxIn(svg(`<g transform="${transform}">${unitSquare}</g>`)).forEach((side, i) => {
      expect(side).toBeCloseTo(box[i]!, 12);
    });
  });

  it('go from the inside out', () => {
    const nested = `<g transform="translate(10 20)"><a transform="scale(2 4)"><rect width="1" height="1" transform="translate(1 1)"/></a></g>`;
    expect(boxIn(svg(nested))).toEqual([12, 24, 14, 28]);
  });

  it('keep an arc where they scale alike, and the area by their determinant', () => {
    const under = (transform: string) => svg(`<circle cx="3" cy="4" r="2" transform="${transform}"/>`);
    const kinds = (transform: string) => drawn(under(transform)).curves[0]!.pieces[0]!.kind;
    expect(kinds('rotate(31) scale(-3 3)')).toBe('arc');
    expect(kinds('rotate(31) scale(-3 2)')).toBe('ellipse-arc');
    expect(areas(under('skewX(20) rotate(31) scale(-3 2)'))[0]).toBeCloseTo(-Math.PI * 4 * 6, 10);
  });

  it('that flatten draw nothing, which is counted', () => {
    const { curves, leftOut } = drawn(svg(`<g transform="scale(1 0)">${unitSquare}</g>`));
    expect(curves).toEqual([]);
    expect(leftOut).toEqual([{ what: 'rect', why: 'a transform flattens it to nothing', count: 1, line: 1 }]);
  });
});

describe('windows', () => {
  const square = '<rect width="10" height="10"/>';
  it.each([
    ['x="5" y="6"', [5, 6, 15, 16]],
    ['x="5" y="6" width="40" height="20" viewBox="0 0 10 10"', [15, 6, 35, 26]],
    ['width="40" height="20" viewBox="0 0 10 10" preserveAspectRatio="none"', [0, 0, 40, 20]],
    ['width="40" height="20" viewBox="0 0 10 10" preserveAspectRatio="xMinYMax"', [0, 0, 20, 20]],
    ['width="40" height="20" viewBox="0 0 10 10" preserveAspectRatio="xMaxYMid meet"', [20, 0, 40, 20]],
    ['width="40" height="20" viewBox="0 0 10 10" preserveAspectRatio="xMidYMid slice"', [0, -10, 40, 30]],
    ['width="50%" height="50%" viewBox="-10 -10 20 20"', [25, 25, 50, 50]],
    ['viewBox="0 0 10 10"', [0, 0, 100, 100]],
  ])('svg %s', (attributes, box) => {
    expect(boxIn(svg(`<svg ${attributes}>${square}</svg>`))).toEqual(box);
  });

  it('percentages are of the nearest', () => {
    const inner = '<svg width="50" height="50" viewBox="0 0 200 200"><rect width="50%" height="50%"/></svg>';
    expect(boxIn(svg(inner))).toEqual([0, 0, 25, 25]);
  });
});

describe('use', () => {
  const defs =
    '<defs><rect id="r" width="2" height="3"/><g id="two"><use href="#r"/><use href="#r" x="10"/></g></defs>';
  it('draws what it refers to, moved after its own map', () => {
    expect(boxIn(svg(`${defs}<use href="#r" x="5" y="6" transform="scale(2)"/>`))).toEqual([10, 12, 14, 18]);
    expect(boxIn(svg(`<use xlink:href="#r" x="5"/>${defs}`))).toEqual([5, 0, 7, 3]);
    const twice = svg(
      `${defs}<g transform="translate(0 50)"><use href="#two"/><use href="#two" y="10"/></g>`,
    );
    expect(areas(twice)).toEqual([6, 6, 6, 6]);
    expect(boxIn(twice)).toEqual([0, 50, 12, 63]);
  });

  it('lays a symbol into its size, once it is used', () => {
    const symbol = '<symbol id="s" viewBox="0 0 10 10"><circle cx="5" cy="5" r="5"/></symbol>';
    expect(drawn(svg(symbol)).curves).toEqual([]);
    const text = svg(`${symbol}<use href="#s" x="10" y="20" width="40" height="20"/>`);
    expect(areas(text)[0]).toBeCloseTo(Math.PI * 100, 10);
    boxIn(text).forEach((side, i) => {
      expect(side).toBeCloseTo([20, 20, 40, 40][i]!, 4);
    });
  });

  it('takes the first of two with one id, and names with escapes', () => {
    expect(
      areas(
        svg(
          '<defs><rect id="a b" width="1" height="1"/><rect id="a b" width="9" height="9"/></defs><use href="#a%20b"/>',
        ),
      ),
    ).toEqual([1]);
  });

  it('of nothing is counted', () => {
    const { leftOut } = drawn(svg('<use/><use href="#no"/><use href="other.svg#a"/><use href="#no"/>'));
    expect(leftOut.map(({ what, count }) => [what, count])).toEqual([
      ['use', 1],
      ['use', 2],
      ['use', 1],
    ]);
  });
});

describe('names', () => {
  it('are the ids around a curve, and the ids and labels of groups', () => {
    const { curves } = drawn(
      svg(
        '<defs><g id="part"><path id="p" d="M0 0h1"/></g></defs>\n<g id="layer1" ink:label="Cut"><g ink:label="__proto__">\n<use id="u" href="#part"/></g></g><path id="constructor" d="M0 0h1"/>',
        'id="page"',
      ),
    );
    expect(curves.map(({ ids, layers, labels, line }) => ({ ids, layers, labels, line }))).toEqual([
      {
        ids: ['p', 'part', 'u', 'layer1', 'page'],
        layers: ['layer1', 'Cut', '__proto__', 'part'],
        labels: ['Cut', '__proto__'],
        line: 1,
      },
      { ids: ['constructor', 'page'], layers: [], labels: [], line: 3 },
    ]);
  });
});

describe('what is not drawn', () => {
  const path = '<path d="M0 0h1v1z"/>';
  it.each(['defs', 'clipPath', 'mask', 'pattern', 'marker', 'symbol', 'metadata'])(
    '%s says nothing',
    (name) => {
      expect(drawn(svg(`<${name}>${path}</${name}>`))).toMatchObject({ curves: [], leftOut: [] });
    },
  );

  it('of another namespace says nothing', () => {
    const other = `<rdf:path xmlns:rdf="urn:rdf" d="M0 0h1"/><path xmlns="urn:other" d="M0 0h1"/><unknown:path d="M0 0h1"/>`;
    expect(drawn(svg(other))).toMatchObject({ curves: [], leftOut: [] });
  });

  it('is counted by name, with the line of the first', () => {
    const text = svg(
      `\n<text>a</text>\n<text>b</text><image/><foreignObject>${path}</foreignObject><other/>`,
    );
    expect(drawn(text).curves).toEqual([]);
    expect(drawn(text).leftOut.map(({ what, count, line }) => [what, count, line])).toEqual([
      ...[
        ['text', 2, 2],
        ['image', 1, 3],
        ['foreignObject', 1, 3],
        ['other', 1, 3],
      ],
    ]);
  });

  it.each([
    [`<g display="none">${path}<g>${path}</g></g>`, 'display: none', 2],
    [`<g style="fill:red; display : none">${path}</g>`, 'display: none', 1],
    [`<g style="DISPLAY:none !important">${path}</g>`, 'display: none', 1],
    [`<g visibility="hidden">${path}</g>`, 'visibility: hidden', 1],
  ])('%s is hidden', (text, why, count) => {
    const { curves, leftOut } = drawn(svg(text));
    expect(curves).toEqual([]);
    expect(leftOut).toEqual([{ what: 'path', why, count, line: 1 }]);
  });

  it('is seen again where it says so', () => {
    expect(
      drawn(svg(`<g visibility="hidden"><path visibility="visible" d="M0 0h1"/></g>`)).curves,
    ).toHaveLength(1);
    expect(drawn(svg(`<g style="display:inline">${path}</g>`)).curves).toHaveLength(1);
  });

  it('is cut off or hidden by what this reader does not obey, which is said', () => {
    const { curves, leftOut } = drawn(
      svg(
        `<defs><style>.a { display: none }</style></defs><style>.cut { stroke: red }</style><path clip-path="url(#c)" d="M0 0h1"/>`,
      ),
    );
    expect(curves).toHaveLength(1);
    expect(leftOut.map(({ what }) => what)).toEqual(['clip-path', 'style']);
  });

  it('of a switch is all but the first that asks for nothing', () => {
    const text = `<switch><foreignObject requiredExtensions="x"/><g>${path}</g><g>${path}${path}</g></switch>`;
    expect(drawn(svg(text))).toMatchObject({ leftOut: [] });
    expect(outlines(drawn(svg(text)))).toHaveLength(1);
  });
});

describe('the unit', () => {
  it.each([
    ['width="100mm" height="100mm" viewBox="0 0 500 500"', 0.0002],
    ['width="24in" height="18in" viewBox="0 0 609.6 457.2"', 0.001],
    ['width="10cm" viewBox="0 0 100 7"', 0.001],
    ['height="72pt" viewBox="0 0 5 1"', 0.0254],
    ['width="6pc" height="100%" viewBox="0 0 1 1"', 0.0254],
    ['width="4Q" viewBox="0 0 1 1"', 0.001],
    ['width="20mm" height="10mm" viewBox="0 0 10 10"', 0.001],
    ['width="20mm" height="10mm" viewBox="0 0 10 10" preserveAspectRatio="xMidYMid slice"', 0.002],
    ['width="100" height="100" viewBox="0 0 100 100"', null],
    ['width="100px" height="100px" viewBox="0 0 100 100"', null],
    ['width="100%" height="1em" viewBox="0 0 100 100"', null],
    ['width="100mm" height="100mm"', null],
    ['', null],
  ])('of %s', (attributes, unit) => {
    const got = drawn(svg('', attributes)).unit;
    if (unit === null) expect(got).toBeNull();
    else expect(got).toBeCloseTo(unit, 12);
  });
});
