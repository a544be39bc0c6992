/** Every entity against closed forms, every trap of real files, and what is refused. */
import { describe, expect, it } from 'vitest';
import { readDxf } from '../../../src/drawing/read/dxf.js';
import type { Drawn, DrawnCurve } from '../../../src/drawing/read/drawn.js';
import { joined } from '../../../src/drawing/read/joined.js';
import { loopMoments } from '../../../src/geometry/area-moments.js';
import { endOf, pointOn, startOf } from '../../../src/geometry/piece.js';
import { arc, block, circle, dxf, insert, line, polyline, type Tags } from './dxf-text.js';

function drawn(text: string): Drawn {
  const read = readDxf(text);
  if (!read.ok) throw new RangeError(JSON.stringify(read.flaws));
  return read.drawn;
}
const curves = (...entities: Tags[]): readonly DrawnCurve[] => drawn(dxf(entities)).curves;

/** Area and centroid of the only outline there is. */
function only(found: readonly DrawnCurve[]) {
  const { loops } = joined(found, 1e-6);
  expect(loops).toHaveLength(1);
  const { area, centroid } = loopMoments(loops[0]!.boundary);
  return { area, x: centroid.x, y: centroid.y };
}

describe('an entity', () => {
  it('LINE and ARC join to a stadium, whichever way each is drawn', () => {
    const stadium = [line(0, -1, 3, -1), arc(3, 0, 1, 270, 90), line(0, 1, 3, 1), arc(0, 0, 1, 90, 270)];
    const { area, x } = only(curves(...stadium));
    expect(area).toBeCloseTo(6 + Math.PI, 12);
    expect(x).toBeCloseTo(1.5, 12);
  });

  it('ARC runs counter-clockwise from its start, over nought degrees too', () => {
    const [{ pieces }] = curves(arc(0, 0, 2, 350, 10)) as [DrawnCurve];
    expect(pointOn(pieces[0]!, 0.5)).toMatchObject({
      x: expect.closeTo(2, 12) as number,
      y: expect.closeTo(0, 12) as number,
    });
  });

  it('CIRCLE', () => {
    expect(only(curves(circle(4, 5, 2)))).toMatchObject({
      area: expect.closeTo(4 * Math.PI, 12) as number,
      x: expect.closeTo(4, 12) as number,
    });
  });

  it.each([
    ['whole', [], Math.PI * 3 * 1.5],
    ['half, closed by a line', [41, 0, 42, Math.PI], (Math.PI * 3 * 1.5) / 2],
  ])('ELLIPSE, %s: its other axis by the ratio, its ends by the parameter', (_, ends, area) => {
    const ellipse: Tags = [0, 'ELLIPSE', 8, '0', 10, 1, 20, 2, 11, 0, 21, 3, 40, 0.5, ...ends];
    const half = ends.length > 0 ? [line(1, 5, 1, -1)] : [];
    const found = only(curves(ellipse, ...half));
    expect(found.area).toBeCloseTo(area, 11);
    // The axis points up: the half lies to the left of it, 4 b / 3π off.
    expect(found.x).toBeCloseTo(half.length > 0 ? 1 - (4 * 1.5) / (3 * Math.PI) : 1, 11);
  });

  it('LWPOLYLINE with bulges: a square with a half circle on one side', () => {
    const square = polyline([
      [0, 0],
      [2, 0, 1],
      [2, 2],
      [0, 2],
    ]);
    expect(only(curves(square)).area).toBeCloseTo(4 + Math.PI / 2, 12);
  });

  it('POLYLINE with vertices, the frame of a spline left out', () => {
    const vertex = (x: number, y: number, ...more: Tags): Tags => [
      0,
      'VERTEX',
      8,
      '0',
      10,
      x,
      20,
      y,
      ...more,
    ];
    const made: Tags = [
      ...[0, 'POLYLINE', 8, '0', 66, 1, 10, 0, 20, 0, 70, 1],
      ...vertex(0, 0),
      ...vertex(50, 50, 70, 16),
      ...vertex(3, 0, 42, 0),
      ...vertex(3, 2),
      ...[0, 'SEQEND'],
    ];
    expect(only(curves(made)).area).toBeCloseTo(3, 12);
  });

  it('SPLINE: a Bézier cubic is that cubic, a rational one the circle that it is', () => {
    const points = [0, 0, 0, 1, 1, 1, 1, 0];
    const bezier: Tags = [
      ...[
        0,
        'SPLINE',
        8,
        '0',
        70,
        8,
        71,
        3,
        72,
        8,
        73,
        4,
        ...[0, 0, 0, 0, 1, 1, 1, 1].flatMap((k) => [40, k]),
      ],
      ...[0, 1, 2, 3].flatMap((i) => [10, points[2 * i]!, 20, points[2 * i + 1]!]),
    ];
    const [{ pieces }] = curves(bezier) as [DrawnCurve];
    expect(pieces).toEqual([
      {
        kind: 'cubic',
        from: { x: 0, y: 0 },
        control1: { x: 0, y: 1 },
        control2: { x: 1, y: 1 },
        to: { x: 1, y: 0 },
      },
    ]);
    const root = Math.SQRT1_2;
    const ring = [
      [1, 0],
      [1, 1],
      [0, 1],
      [-1, 1],
      [-1, 0],
      [-1, -1],
      [0, -1],
      [1, -1],
      [1, 0],
    ] as const;
    const rational: Tags = [
      ...[0, 'SPLINE', 8, '0', 70, 12, 71, 2],
      ...[0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4].flatMap((knot) => [40, knot]),
      ...ring.flatMap(([x, y], i) => [10, x, 20, y, 41, i % 2 === 0 ? 1 : root]),
    ];
    const found = curves(rational);
    // 1e-10 of its size is what cubics may be off.
    for (const piece of found[0]!.pieces)
      for (const u of [0, 0.3, 0.5, 0.9]) {
        const { x, y } = pointOn(piece, u);
        expect(Math.abs(Math.hypot(x, y) - 1)).toBeLessThan(1e-9);
      }
    expect(only(found).area).toBeCloseTo(Math.PI, 8);
  });

  it('SPLINE of degree four follows its Bernstein polynomial', () => {
    const [xs, ys] = [
      [0, 1, 2, 3, 4],
      [0, 3, -2, 3, 0],
    ];
    const made: Tags = [
      ...[0, 'SPLINE', 8, '0', 71, 4, ...[0, 0, 0, 0, 0, 1, 1, 1, 1, 1].flatMap((k) => [40, k])],
      ...xs.flatMap((x, i) => [10, x, 20, ys[i]!]),
    ];
    const binomial = [1, 4, 6, 4, 1];
    const wanted = (u: number) =>
      ys.reduce((sum, y, i) => sum + binomial[i]! * y * u ** i * (1 - u) ** (4 - i), 0);
    for (const piece of curves(made)[0]!.pieces)
      for (const u of [0, 0.4, 1]) {
        // x is the parameter: its points are even.
        const { x, y } = pointOn(piece, u);
        expect(Math.abs(y - wanted(x / 4))).toBeLessThan(1e-8);
      }
  });

  it('SPLINE told by the points that it goes through goes through them, with their directions', () => {
    const through = [
      [0, 0],
      [1, 2],
      [3, 1],
      [4, 4],
    ] as const;
    const made: Tags = [
      ...[0, 'SPLINE', 8, '0', 70, 8, 71, 3, 74, 4, 12, 0, 22, 5, 13, 2, 23, 0],
      ...through.flatMap(([x, y]) => [11, x, 21, y]),
    ];
    const [{ pieces }] = curves(made) as [DrawnCurve];
    expect([startOf(pieces[0]!), ...pieces.map(endOf)]).toEqual(through.map(([x, y]) => ({ x, y })));
    const [first, last] = [pointOn(pieces[0]!, 1e-6), pointOn(pieces.at(-1)!, 1 - 1e-6)];
    expect(Math.abs(first.x / first.y)).toBeLessThan(1e-4);
    expect(Math.abs((4 - last.y) / (4 - last.x))).toBeLessThan(1e-4);
  });
});

describe('a closed SPLINE told by the points that it goes through', () => {
  const ring = Array.from(
    { length: 8 },
    (_, i) => [Math.cos((i * Math.PI) / 4), Math.sin((i * Math.PI) / 4)] as const,
  );
  const spline = (...points: (readonly [number, number])[]): Tags => [
    ...[0, 'SPLINE', 8, '0', 70, 1, 71, 3],
    ...points.flatMap(([x, y]) => [11, x, 21, y]),
  ];

  it.each([
    ['each once', ring],
    ['the first again', [...ring, ring[0]!]],
  ])('is as smooth at its first point as at all others: %s', (_, points) => {
    const [{ pieces, closed }] = curves(spline(...points)) as [DrawnCurve];
    expect([pieces.length, closed]).toEqual([8, true]);
    // Eight points on a circle: all pieces are alike, and square to the radius at each.
    const middles = pieces.map((piece) => pointOn(piece, 0.5)).map(({ x, y }) => Math.hypot(x, y));
    for (const middle of middles) expect(middle).toBeCloseTo(middles[0]!, 12);
    expect(middles[0]).toBeCloseTo(1, 2);
    const [first] = pieces;
    if (first?.kind !== 'cubic') throw new RangeError('no cubic');
    expect(first.control1.x).toBeCloseTo(1, 12);
  });
});

describe('a block', () => {
  const half = block('half', 1, 0, arc(1, 0, 1, 0, 180), line(0, 0, 2, 0));
  const of = (...inserts: Tags[]) => drawn(dxf(inserts, { blocks: [half] })).curves;

  it('is scaled, turned and put where it is asked for, base first', () => {
    const { area, x, y } = only(of(insert('half', 10, 20, 41, 2, 42, 2, 50, 90)));
    expect(area).toBeCloseTo(2 * Math.PI, 11);
    // Turned by a quarter: the half disc points to -x, 4 r / 3π off.
    expect([x, y]).toEqual([expect.closeTo(10 - 8 / (3 * Math.PI), 11), expect.closeTo(20, 11)]);
  });

  it('mirrored and stretched has the area of that, and is an ellipse', () => {
    const { area, x, y } = only(of(insert('half', 0, 0, 41, -3, 42, 0.5)));
    expect(area).toBeCloseTo((Math.PI / 2) * 1.5, 11);
    expect([x, y]).toEqual([expect.closeTo(0, 11), expect.closeTo(2 / (3 * Math.PI), 11)]);
  });

  it('in rows and columns, and in other blocks', () => {
    const nest = block('nest', 0, 0, insert('half', 0, 0, 70, 3, 71, 2, 44, 5, 45, 4));
    const found = drawn(dxf([insert('nest', 100, 0)], { blocks: [half, nest] })).curves;
    const { loops } = joined(found, 1e-6);
    expect(loops).toHaveLength(6);
    const places = loops.map(({ boundary }) => loopMoments(boundary).centroid);
    expect(new Set(places.map(({ x }) => Math.round(x)))).toEqual(new Set([100, 105, 110]));
  });

  it('lies on the layer of its place where it lies on none of its own', () => {
    const own = block('own', 0, 0, line(0, 0, 1, 0), [0, 'LINE', 8, 'marks', 10, 0, 20, 1, 11, 1, 21, 1]);
    const asked: Tags = [0, 'INSERT', 8, 'seat', 2, 'own', 10, 0, 20, 0];
    expect(drawn(dxf([asked], { blocks: [own] })).curves.map(({ layers }) => layers)).toEqual([
      ['seat'],
      ['marks'],
    ]);
  });
});

describe('axes seen from behind', () => {
  const behind = [210, 0, 220, 0, 230, -1];

  it('turn x over, arcs and bulges with it', () => {
    const { area, x } = only(
      curves(
        polyline(
          [
            [1, 0],
            [3, 0, 1],
            [3, 2],
            [1, 2],
          ],
          ...behind,
        ),
      ),
    );
    expect(area).toBeCloseTo(4 + Math.PI / 2, 12);
    expect(x).toBeLessThan(-2);
    const [{ pieces }] = curves(arc(5, 0, 1, 0, 90, ...behind)) as [DrawnCurve];
    expect(pointOn(pieces[0]!, 0)).toMatchObject({ x: expect.closeTo(-6, 12) as number });
    expect(pointOn(pieces[0]!, 1)).toMatchObject({
      x: expect.closeTo(-5, 12) as number,
      y: expect.closeTo(1, 12) as number,
    });
  });

  it('leave lines and the places of ellipses as they are', () => {
    const [{ pieces }] = curves(line(1, 2, 3, 4, ...behind)) as [DrawnCurve];
    expect(pieces[0]).toMatchObject({ from: { x: 1, y: 2 }, to: { x: 3, y: 4 } });
  });

  it('aslant are left out and counted', () => {
    expect(drawn(dxf([circle(0, 0, 1, 210, 1, 220, 0, 230, 0)])).leftOut).toMatchObject([
      { what: 'CIRCLE', count: 1 },
    ]);
  });
});

describe('what is left out', () => {
  it('is counted by name: text, paper space, hidden, layers that are off', () => {
    const layers: Tags = [
      ...[0, 'TABLE', 2, 'LAYER'],
      ...[0, 'LAYER', 2, 'frozen', 70, 1, 62, 7, 0, 'LAYER', 2, 'dark', 70, 0, 62, -3, 0, 'ENDTAB'],
    ];
    const text: Tags = [0, 'TEXT', 8, '0', 10, 0, 20, 0, 1, 'nose'];
    const on = (layer: string): Tags => [0, 'LINE', 8, layer, 10, 0, 20, 0, 11, 1, 21, 0];
    const entities = [
      text,
      text,
      line(0, 0, 1, 0, 67, 1),
      line(0, 0, 1, 0, 60, 1),
      on('frozen'),
      on('dark'),
      on('__proto__'),
    ];
    const { curves: kept, leftOut } = drawn(dxf(entities, { tables: layers }));
    expect(kept.map((one) => one.layers)).toEqual([['__proto__']]);
    expect(leftOut.map(({ what, count }) => `${count} ${what}`)).toEqual([
      ...['2 TEXT', '1 LINE', '1 LINE', '1 curves', '1 curves'],
    ]);
  });
});

describe('the file', () => {
  it.each(['\n', '\r\n', '\r'])(
    'may end its lines by %j, with comments and a mark at its beginning',
    (newline) => {
      const text = dxf([circle(0, 0, 1)], { header: [999, 'a comment', 9, '$INSUNITS', 70, 4] }, newline);
      expect(drawn(`\ufeff${text}`)).toMatchObject({ unit: 1e-3, curves: [{ closed: true }] });
    },
  );

  it.each([
    [1, 0.0254],
    [4, 1e-3],
    [5, 1e-2],
    [6, 1],
    [0, null],
    [99, null],
  ])('declares units by $INSUNITS %s', (code, unit) => {
    expect(drawn(dxf([], { header: [9, '$INSUNITS', 70, code] })).unit).toBe(unit);
  });

  const good = dxf([circle(0, 0, 1)]);
  const hostile: [string, string, object][] = [
    ['binary', 'AutoCAD Binary DXF\r\n\u001a\u0000', { line: 1, found: 'a binary one' }],
    ['cut off', good.slice(0, -12), { found: 'the end of it' }],
    [
      'no DXF',
      'hello\nworld\n',
      { line: 1, expected: 'a DXF file, which begins with 0 and SECTION', found: '"hello"' },
    ],
    ['no DXF but numbers', '7\n8\n', { line: 1, found: '7 and "8"' }],
    ['empty', '', { line: 1, found: 'nothing' }],
    [
      'a word for a number',
      good.replace('\r\n40\r\n1\r\n', '\r\n40\r\nabc\r\n'),
      { found: '"abc"', line: 32 },
    ],
    [
      'a decimal comma',
      good.replace('\r\n40\r\n1\r\n', '\r\n40\r\n1,5\r\n'),
      { hint: 'DXF numbers have a point' },
    ],
    ['1e300', good.replace('\r\n40\r\n1\r\n', '\r\n40\r\n1e300\r\n'), { found: '"1e300"' }],
    ['1e400', good.replace('\r\n40\r\n1\r\n', '\r\n40\r\n1e400\r\n'), { found: '"1e400"' }],
    ['no radius', dxf([[0, 'CIRCLE', 8, '0', 10, 0, 20, 0]]), { expected: 'CIRCLE with a group 40' }],
    ['no end', dxf([[0, 'LINE', 8, '0', 10, 0, 20, 0, 11, 1]]), { expected: 'LINE with a group 21' }],
    ['a radius below 0', dxf([circle(0, 0, -1)]), { expected: 'CIRCLE: group 40 above 0' }],
    [
      'too few knots',
      dxf([[0, 'SPLINE', 71, 3, 40, 0, 40, 1, ...[10, 0, 20, 0, 10, 1, 20, 0, 10, 2, 20, 0, 10, 3, 20, 0]]]),
      { found: '2 knots' },
    ],
    [
      'a block in itself',
      dxf([insert('a', 0, 0)], {
        blocks: [block('a', 0, 0, insert('b', 0, 0)), block('b', 0, 0, insert('a', 0, 0))],
      }),
      { expected: 'blocks that do not hold themselves' },
    ],
    ['a block that is not there', dxf([insert('a', 0, 0)]), { expected: 'the name of a block of this file' }],
    ['a scale of 0', dxf([insert('a', 0, 0, 41, 0)], { blocks: [block('a', 0, 0)] }), { found: '0' }],
    [
      'a billion places',
      dxf([insert('a', 0, 0, 70, 30000, 71, 30000)], { blocks: [block('a', 0, 0)] }),
      { found: '900000000' },
    ],
    [
      'scales of a thousand million over and over',
      dxf([insert('b', 0, 0, 41, 1e9)], {
        blocks: [block('a', 0, 0, circle(5, 0, 1)), block('b', 0, 0, insert('a', 0, 0, 41, 1e9))],
      }),
      { expected: 'places within a billion units' },
    ],
  ];
  it.each(hostile)('%s is refused with its line', (_, text, flaw) => {
    expect(readDxf(text)).toMatchObject({ ok: false, flaws: [flaw] });
  });
});
