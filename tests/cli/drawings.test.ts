/** Parts drawn in files beside the design: they weigh, rest and rock as the same part written out. */
import { describe, expect, it } from 'vitest';
import type { ReportObject } from '../../src/report/schema.js';
import { arc, circle, dxf, polyline, type Tags } from '../drawing/read/dxf-text.js';
import { trueroll } from '../stand-in-world.js';

const radius = 42;
const half = (22 * Math.PI) / 180;
const at = (r: number, lean: number): [number, number] => [r * Math.sin(lean), radius - r * Math.cos(lean)];
const bulge = Math.tan(half / 2);
const inches: Tags = [9, '$INSUNITS', 70, 1];
const band = polyline([
  [...at(radius, -half), bulge],
  [...at(radius, half), 0],
  [...at(radius - 2, half), -bulge],
  [...at(radius - 2, -half), 0],
]);
const notes: Tags = [0, 'TEXT', 8, 'notes', 10, 0, 20, 0, 1, 'ash'];
const drawing = dxf([band, notes], { header: inches });

const design = (outline: string, more = ''): string => `trueroll: 1
units: in
dimensions: { seat: 4 in }
parts:
  - { name: rocker, count: 2, wood: white ash, across: 1 in, outline: ${outline} }
  - { name: seat, wood: white ash, across: 20 in, outline: { rectangle: { from: [-8, 2], to: [8, seat] } } }
${more}`;
const fromFile = (asked: string): string => design(`{ drawing: { ${asked} } }`);
const level = radius * Math.sin(half);
const written = design(`{ rocker: { radius: 42, depth: 2, nose: ${level}, tail: ${level} } }`);

const files = (asked: string, others: Readonly<Record<string, string | Uint8Array>> = {}) => ({
  'shop/chair.yaml': fromFile(asked),
  'shop/chair.dxf': drawing,
  'written.yaml': written,
  ...others,
});

async function reportOf(
  path: string,
  of: Readonly<Record<string, string | Uint8Array>>,
): Promise<ReportObject> {
  const { stdout, stderr } = await trueroll(['check', path, '--format', 'json', '--no-second-opinion'], {
    files: of,
  });
  expect(stderr).toBe('');
  return JSON.parse(stdout) as ReportObject;
}

describe('a rocker drawn in a file', () => {
  it.each([
    ['a DXF', 'file: chair.dxf', {}],
    ['by its layer', 'file: chair.dxf, layer: 0', {}],
    ['moved, turned over and turned', 'file: m.dxf, origin: [10 in, 5 in]', { 'shop/m.dxf': moved(10, 5) }],
    ['in stated units', 'file: mm.dxf, units: in', { 'shop/mm.dxf': dxf([band]) }],
    ['an SVG, y down', 'file: chair.svg', { 'shop/chair.svg': svg() }],
  ])('%s is the rocker that it is', async (_, asked, others) => {
    const of = files(asked, others);
    const [drawn, wanted] = [await reportOf('shop/chair.yaml', of), await reportOf('written.yaml', of)];
    expect(drawn.chair.massKg).toBeCloseTo(wanted.chair.massKg, 8);
    const [seen, said] = [drawn, wanted].map(({ loads }) => loads[0]!.measures);
    for (const key of [
      'restAngleDeg',
      'periodS',
      'periodAtSwingS',
      'tipBackEnergyJ',
      'touchFromTailM',
    ] as const)
      expect(seen![key], key).toBeCloseTo(said![key]!, 6);
  });

  it('is told with its size, and what was left out of the file', async () => {
    const { stdout } = await trueroll(['check', 'shop/chair.yaml'], { files: files('file: chair.dxf') });
    expect(stdout.replaceAll(/\s+/g, ' ')).toContain(
      'rocker, from chair.dxf: 799.3 mm by 124.8 mm, or 31-15/32 in by 4-29/32 in. Is that its size?',
    );
    expect(stdout.replaceAll(/\s+/g, ' ')).toContain('Left out of chair.dxf: 1 TEXT, not a line that is cut');
  });

  it('is told where the design states other units than the file', async () => {
    const { stdout } = await trueroll(['check', 'shop/chair.yaml'], {
      files: files('file: chair.dxf, units: cm'),
    });
    expect(stdout.replaceAll(/\s+/g, ' ')).toContain(
      'chair.dxf says that its unit is 25.4 mm long; it was read with the 10 mm of this design.',
    );
  });

  it('stands in sweeps too', async () => {
    const argv = ['sweep', 'shop/chair.yaml', '--vary', 'seat=4 in, 5 in', '--format', 'csv'];
    const [drawn, wanted] = [
      await trueroll(argv, { files: files('file: chair.dxf') }),
      await trueroll(argv.with(1, 'written.yaml'), { files: files('file: chair.dxf') }),
    ];
    expect(drawn.code).toBe(0);
    expect(drawn.stdout.split('\n')).toHaveLength(wanted.stdout.split('\n').length);
  });

  it.each([
    ['file: none.dxf', {}, ':5:90: expected a drawing file that can be read, found no such file or folder'],
    ['file: chair.dxf, layer: nots', {}, 'found `nots`. Hint: it has 0'],
    ['file: bare.dxf', { 'shop/bare.dxf': dxf([band]) }, '`units` beside `file`'],
    [
      'file: odd.dxf',
      { 'shop/odd.dxf': dxf([circle(0, 0, -1)]) },
      'group 40 above 0, in line 32 of odd.dxf, found "-1"',
    ],
    ['file: chair.dxf, smooth: -0.1 mm', {}, 'expected more than 0'],
    ['file: chair.dxf, smooth: much', {}, 'much'],
  ])('{ %s } is refused', async (asked, others, words) => {
    const { code, stdout, stderr } = await trueroll(['check', 'shop/chair.yaml'], {
      files: files(asked, others),
    });
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toContain(words);
  });
});

/** The bottom of the band drawn in other ways; its top is one arc, drawn back. */
const bottoms: Readonly<Record<string, readonly Tags[]>> = {
  'as one arc': [arcDrawn(radius, 270 - 22, 270 + 22)],
  'as three arcs': [
    arcDrawn(radius, 270 - 22, 260),
    arcDrawn(radius, 260, 271.5),
    arcDrawn(radius, 271.5, 270 + 22),
  ],
  'as a rational spline': [spline(rational(radius), 2)],
  'as a spline through places 4° apart': [throughSpline(4)],
  'as lines 1° long': [linesDrawn(1)],
  'as lines 1° long, written to thousandths of an inch': [linesDrawn(1, 3)],
  'as loose lines half a degree long': looseLines(0.5),
};

describe('a 42 in arc', () => {
  const top = [
    arcDrawn(radius - 2, 270 - 22, 270 + 22),
    ...[-half, half].map((lean) => [
      ...[0, 'LINE', 8, '0', 10, at(radius, lean)[0], 20, at(radius, lean)[1]],
      ...[11, at(radius - 2, lean)[0], 21, at(radius - 2, lean)[1]],
    ]),
  ];
  const asked = 'file: chair.dxf, smooth: 0.1 mm, join: 0.03 mm';

  it.each(Object.entries(bottoms))(
    'drawn %s rests within 0.01° and rocks within 0.1 % of what it is',
    async (_, bottom) => {
      const of = files(asked, { 'shop/chair.dxf': dxf([...bottom, ...top], { header: inches }) });
      const [drawn, wanted] = [await reportOf('shop/chair.yaml', of), await reportOf('written.yaml', of)];
      const [seen, said] = [drawn, wanted].map(({ loads }) => loads[0]!.measures);
      expect(Math.abs(seen!.restAngleDeg! - said!.restAngleDeg!)).toBeLessThan(0.01);
      for (const key of ['periodS', 'periodAtSwingS', 'rockerEndBackDeg'] as const)
        expect(Math.abs(seen![key]! / said![key]! - 1), key).toBeLessThan(1e-3);
      expect(seen!.restCount).toBe(1);
    },
  );

  it('drawn as lines is told to be: what was made of them, and what they would do', async () => {
    const lines = files(asked, { 'shop/chair.dxf': dxf([linesDrawn(44 / 45), ...top], { header: inches }) });
    const { stdout } = await trueroll(['check', 'shop/chair.yaml', '--no-second-opinion'], { files: lines });
    const words = stdout.replaceAll(/\s+/g, ' ');
    expect(words).toContain(
      'rocker, from chair.dxf: 45 lines were read as 1 arc, 0.039 mm from them at most, radii as drawn to 0.001 %.',
    );
    expect(words).toMatch(
      /Left as lines it would do otherwise\. empty: it would settle 0° farther (back|forward), and its smallest rock has no time of its own \(rests on a flat 18 mm long: no small swing\)\./,
    );
  });

  it.each([
    ['true', 'read as 1 arc'],
    ['0.03 mm', 'no lines that stand for a curve were found to smooth'],
  ])('is smoothed as far as it may be: %s', async (smooth, words) => {
    const of = files(`file: chair.dxf, smooth: ${smooth}`, {
      'shop/chair.dxf': dxf([linesDrawn(1), ...top], { header: inches }),
    });
    const argv = ['check', 'shop/chair.yaml', '--no-second-opinion'];
    const { stdout } = await trueroll(argv, { files: of });
    expect(stdout.replaceAll(/\s+/g, ' ')).toContain(words);
  });

  it('stays lines where that is not asked for', async () => {
    const of = files('file: chair.dxf', {
      'shop/chair.dxf': dxf([linesDrawn(1), ...top], { header: inches }),
    });
    const { loads } = await reportOf('shop/chair.yaml', of);
    expect(loads[0]!.measures.periodS).toBeNull();
    const argv = ['check', 'shop/chair.yaml', '--no-second-opinion'];
    const { stdout } = await trueroll(argv, { files: of });
    expect(stdout.replaceAll(/\s+/g, ' ')).toContain(
      'Not met First of all: rocker: 44 flats in a row, up to 3/4 in long, 0 in to 32-1/4 in from its tail end, as a ' +
        'curve drawn as lines has them. If it is one, write `smooth: 0.1 mm` beside `file`.',
    );
  });
});

function arcDrawn(r: number, from: number, to: number): Tags {
  return arc(0, radius, r, from, to);
}

function linesDrawn(step: number, digits?: number): Tags {
  const places = placesEvery(step).map(([x, y]) =>
    digits === undefined ? [x, y] : [Number(x.toFixed(digits)), Number(y.toFixed(digits))],
  );
  return [
    ...[0, 'LWPOLYLINE', 8, '0', 90, places.length, 70, 0],
    ...places.flatMap(([x, y]) => [10, x!, 20, y!]),
  ];
}

function looseLines(step: number): Tags[] {
  const places = placesEvery(step);
  return places
    .slice(1)
    .map(([x, y], i) => [0, 'LINE', 8, '0', 10, places[i]![0], 20, places[i]![1], 11, x, 21, y]);
}

function placesEvery(step: number): (readonly [number, number])[] {
  const steps = Math.round(44 / step);
  return Array.from({ length: steps + 1 }, (_, i) => at(radius, -half + (2 * half * i) / steps));
}

/** A circle’s arc as a quadratic: its middle point where the tangents meet, of weight cos half its turn. */
function rational(r: number): { points: (readonly [number, number])[]; weights: number[] } {
  const points = [at(r, -half), [0, radius - r / Math.cos(half)], at(r, half)] as const;
  return { points: [...points], weights: [1, Math.cos(half), 1] };
}

function spline({ points, weights }: ReturnType<typeof rational>, degree: number): Tags {
  const knots = [...Array<number>(degree + 1).fill(0), ...Array<number>(degree + 1).fill(1)];
  return [
    ...[0, 'SPLINE', 8, '0', 70, 4, 71, degree, 72, knots.length, 73, points.length],
    ...knots.flatMap((knot) => [40, knot]),
    ...weights.flatMap((weight) => [41, weight]),
    ...points.flatMap(([x, y]) => [10, x, 20, y]),
  ];
}

function throughSpline(step: number): Tags {
  const places = placesEvery(step);
  return [
    ...[0, 'SPLINE', 8, '0', 70, 0, 71, 3, 72, 0, 73, 0, 74, places.length],
    ...[12, Math.cos(-half), 22, Math.sin(-half), 13, Math.cos(half), 23, Math.sin(half)],
    ...places.flatMap(([x, y]) => [11, x, 21, y]),
  ];
}

function moved(x: number, y: number): string {
  const away = band.map((value, i) =>
    band[i - 1] === 10 && i > 8 ? Number(value) + x : band[i - 1] === 20 && i > 8 ? Number(value) + y : value,
  );
  return dxf([away], { header: inches });
}

function svg(): string {
  const place = ([x, y]: readonly [number, number]): string => `${x} ${-y}`;
  const path = `M ${place(at(radius, -half))} A 42 42 0 0 0 ${place(at(radius, half))} L ${place(at(40, half))} A 40 40 0 0 1 ${place(at(40, -half))} Z`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="40in" height="20in" viewBox="-20 -15 40 20"><path d="${path}"/></svg>`;
}
