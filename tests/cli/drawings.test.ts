/** Parts drawn in files beside the design: they weigh, rest and rock as the same part written out. */
import { describe, expect, it } from 'vitest';
import type { ReportObject } from '../../src/report/schema.js';
import { circle, dxf, polyline, type Tags } from '../drawing/read/dxf-text.js';
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
  const { stdout, stderr } = await trueroll(['check', path, '--format', 'json'], { files: of });
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
    ['file: chair.dxf, smooth: 0.1 mm', {}, 'found `smooth`'],
  ])('{ %s } is refused', async (asked, others, words) => {
    const { code, stdout, stderr } = await trueroll(['check', 'shop/chair.yaml'], {
      files: files(asked, others),
    });
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toContain(words);
  });
});

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
