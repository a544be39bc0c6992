import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildChair } from '../../src/chair/build-chair.js';
import { describeIssue } from '../../src/design/issue.js';
import { readDesign } from '../../src/design/read-design.js';
import { resolveDesign } from '../../src/design/resolve.js';
import { fromDrawing } from '../../src/starter/from-drawing.js';
import { summaryOfDrawing } from '../../src/starter/from-drawing-summary.js';
import { printFromDrawing } from '../../src/starter/from-drawing-text.js';
import { dxf, line, polyline } from '../drawing/read/dxf-text.js';
import { svg } from '../drawing/read/svg-drawn.js';
import { box, drawnIn, filledIn, found, inInches, inMillimetres, onLayer, porch } from './drawings.js';

const inch = 0.0254;
const names = { name: 'Porch rocker', kind: null, sitters: null, file: 'chair.dxf' };
const textOf = (drawing: string, asked = {}): string => printFromDrawing(found(drawing, asked), names);

function designOf(text: string, drawing: string) {
  const read = readDesign(text, 'chair.yaml', new Map([['chair.dxf', new TextEncoder().encode(drawing)]]));
  if (!read.ok) throw new Error(read.issues.map(describeIssue).join('\n'));
  return read.value;
}

describe('a runner drawn as lines', () => {
  const at = (r: number, lean: number): [number, number] => {
    const angle = (lean * Math.PI) / 180;
    return [r * Math.sin(angle), 42 - r * Math.cos(angle)];
  };
  const row = (r: number): [number, number][] => Array.from({ length: 46 }, (_, i) => at(r, i - 22.5));
  const lines = dxf([polyline([...row(42), ...row(40).reverse()])], inInches);

  it('is read as the arcs that it stands for, and stands on its arc', () => {
    const text = textOf(lines);
    expect(text.replaceAll(/\n\s*# /g, ' ')).toContain('90 lines were read as 2 arcs by `smooth`.');
    expect(text).toContain('smooth: 0.1 mm }');
    // The lowest of the lines is the one from -0.5° to 0.5°: the arc reaches 42 (1 - cos 0.5°) in lower.
    expect(found(lines).origin.y).toBeCloseTo(0, 9);
  });

  it('is told to be lines still where they do not tell the radius', () => {
    const digit = ([x, y]: [number, number]): [number, number] => [
      Number(x.toFixed(2)),
      Number(y.toFixed(2)),
    ];
    const rough = dxf([polyline([...row(42), ...row(40).reverse()].map(digit))], inInches);
    const told = /9\d lines look like a curve whose radius they do not tell to 0\.1 %/;
    expect(textOf(rough).replaceAll(/\n\s*# /g, ' ')).toMatch(told);
    expect(textOf(rough)).not.toContain('smooth:');
    expect(summaryOfDrawing(found(rough), 'chair.dxf', 9).replaceAll(/\n +/g, ' ')).toMatch(told);
  });

  it('is not where lines are lines', () => {
    expect(textOf(porch())).not.toContain('smooth');
  });
});

describe('a drawing with a part on each layer', () => {
  const { parts, unfinished, lines, origin, units, leftOut, facesLeft } = found(porch());

  it('gives a part for each layer that closes', () => {
    expect(parts.map(({ name }) => name)).toEqual(['Rocker', 'front leg', 'back post', 'seat panel']);
    expect(units).toBe('in');
    const { left, right, foot, top } = parts[1]!.box;
    expect([left, right, foot, top].map((side) => side / inch)).toEqual(
      [13.5, 15.25, 4.25, 22.25].map((side) => expect.closeTo(side, 9) as number),
    );
  });

  it('stands it on the floor: the lowest place, of an arc too', () => {
    expect(origin.x).toBe(0);
    expect(origin.y / inch).toBeCloseTo(0.75, 9);
  });

  it('reads the lines of seat, back and arms in the chair’s frame, whichever way they are drawn', () => {
    const read = Object.entries(lines).map(([name, { from, ends }]) => [
      ...[name, from],
      ends.map(({ x, y }) => [x, y].map((length) => Number((length / inch).toFixed(9)) + 0)),
    ]);
    expect(read).toEqual([
      ['seat', 'the layer SEAT', [[0, 12.75], [15.5, 13.25]]], // prettier-ignore
      ['back', 'the layer back line', [[0, 12.75], [-9.75, 38.5]]], // prettier-ignore
      ['arms', 'the layer Arms', [[-1, 21], [16, 22.5]]], // prettier-ignore
    ]);
    expect(facesLeft).toBe(false);
  });

  it('keeps what does not close as a comment with the reason, and tells what is left out', () => {
    expect(unfinished.map(({ name }) => name)).toEqual(['rung']);
    expect(unfinished[0]!.flaws[0]!.found).toMatch(/^a gap of 255\.27 mm between /);
    const text = textOf(porch());
    expect(text.replaceAll(/\n\s*#/g, '')).toContain(
      'found a gap of 255.27 mm between (10, 6.75) and (0, 5.75) as drawn',
    );
    expect(text).toContain('  # - name: rung\n');
    expect(leftOut).toHaveLength(1);
    const summary = summaryOfDrawing(found(porch()), 'chair.dxf', 12);
    expect(summary).toContain('Left out of chair.dxf: 1 TEXT');
    expect(summary).toContain('Not taken, only a comment: rung.');
  });

  it('tells the box of each layer in millimetres and inches, and where the drawing’s own [0, 0] lies', () => {
    const text = textOf(porch()).replaceAll(/\n\s*# /g, ' ');
    expect(text).toContain(
      "Layer front leg: 44.5 mm by 457.2 mm, or 1-3/4 in by 18 in. The drawing's [0, 0] is 13-1/2 in behind its rear end and 4-1/4 in below its lowest place.",
    );
  });

  it('has a blank for all that it does not tell, each named by `check` with its line', () => {
    const text = textOf(porch());
    const read = readDesign(text, 'chair.yaml');
    const issues = read.ok ? [] : read.issues;
    const blanks = text.split('\n').flatMap((each, i) => (/^ *\w+: # wanted/.test(each) ? [i + 1] : []));
    expect(issues.map((issue) => issue.line)).toEqual(blanks);
    expect(blanks).toHaveLength(3 + 3 * 4);
    expect(issues.map(describeIssue)[4]).toBe(
      `chair.yaml:${blanks[4]!}:5: expected \`wood\` of \`Rocker\`: a wood such as \`white ash\`, found a blank. Hint: e.g. white ash; or in its place \`mass\`, one piece as weighed`,
    );
  });

  it('filled in is the chair that is drawn', () => {
    const design = resolveDesign(designOf(filledIn(textOf(porch())), porch()));
    const built = design.ok ? buildChair(design.value) : design;
    if (!design.ok || !built.ok) throw new Error('a chair that cannot be built');
    const { parts: made } = built.chair;
    expect(made.map(({ drawn }) => drawn[0]!.box.foot / inch)).toEqual(
      [0, 3.5, 2.5, 12].map((foot) => expect.closeTo(foot, 3) as number),
    );
  });

  it('is the same drawn from the other side, or with y down', () => {
    const [right, left] = [
      [box('post', 0, 1, 2, 30), onLayer('seat', line(1, 15, 17, 16)), onLayer('back', line(1, 15, -6, 40))],
      [
        box('post', -2, 1, 2, 30),
        onLayer('seat', line(-1, 15, -17, 16)),
        onLayer('back', line(-1, 15, 6, 40)),
      ],
    ].map((entities) => dxf(entities, inInches));
    const down = svg(
      '<g id="post"><rect y="-31" width="2" height="30"/></g><g id="seat"><path d="M1-15 17-16"/></g><g id="back"><path d="M1-15-6-40"/></g>',
      'width="100in" viewBox="0 0 100 100"',
    );
    const [wanted, mirrored] = [found(right!), found(left!, { mirror: true })];
    expect(found(left!).facesLeft).toBe(true);
    expect(mirrored).toMatchObject({ facesLeft: false, lines: wanted.lines, origin: wanted.origin });
    expect(found(down).lines).toMatchObject(wanted.lines);
    expect(found(down).origin.y).toBeCloseTo(-wanted.origin.y, 12);
    const text = textOf(down);
    expect(text).toContain('layer: post, origin: [0, -1] }');
    expect(textOf(left!, { mirror: true })).toContain('origin: [0, 1], mirror: true }');
  });
});

describe('all in one group', () => {
  const rk = '<path d="M0 0h40v2h-40z"/>';
  const inside = `<g id="rk">${rk}</g><rect id="leg" y="-20" width="2" height="20"/><path id="seat" d="M5-15 22-16"/>`;
  const page = 'width="100in" viewBox="0 0 100 100"';

  it.each([
    ['with a label', `<g id="layer1" ink:label="Layer 1">${inside}</g>`],
    ['with an id', `<g id="layer1">${inside}</g>`],
    ['in another', `<g id="layer1" ink:label="Layer 1"><g id="all">${inside}</g></g>`],
  ])('%s that is no part: its parts are what is in it', (_, text) => {
    const { parts, unfinished, lines } = found(svg(text, page));
    expect(parts.map(({ group: { by, name } }) => [by, name])).toEqual([
      ['layer', 'rk'],
      ['id', 'leg'],
    ]);
    expect([unfinished, lines.seat!.from]).toEqual([[], 'the id seat']);
  });

  const part = (id: string, x: number) => `<rect id="${id}" x="${x}" y="-20" width="2" height="20"/>`;
  const layer = (label: string, inside: string) => `<g id="${label}1" ink:label="${label}">${inside}</g>`;
  const namesIn = (text: string) => {
    const made = found(svg(text, page));
    return [made.parts.map(({ name }) => name), made.unfinished.map(({ name }) => name)];
  };

  it('of several parts is those', () => {
    const text = layer('Layer 1', part('leg', 0) + part('post', 10));
    expect(namesIn(text)).toEqual([['leg', 'post'], []]);
    const told = summaryOfDrawing(found(svg(text, page)), 'chair.svg', 9);
    expect(told).toContain('Layer 1 has outlines of several parts');
  });

  it('of several parts, one with a hole: the hole is a comment with the reason', () => {
    const text = layer(
      'Layer 1',
      part('leg', 0) + part('post', 10) + '<circle id="c" cx="1" cy="-9" r=".2"/>',
    );
    expect(namesIn(text)).toEqual([['leg', 'post'], ['c']]);
    expect(textOf(svg(text, page)).replaceAll(/\n\s*# /g, ' ')).toContain('it lies wholly inside leg');
  });

  it('with one outline and its holes is a part', () => {
    const text = layer('leg', part('r', 0) + '<circle id="c" cx="1" cy="-9" r=".2"/>');
    expect(namesIn(text)).toEqual([['leg'], []]);
  });

  it('that is no part by far is left whole', () => {
    const text = layer(
      'leg',
      '<path id="a" d="M0 0h2"/><path id="b" d="M2 0v9h-2"/><circle id="c" cx="1" cy="4" r=".2"/>',
    );
    expect(namesIn(layer('post', part('r', 5)) + text)).toEqual([['post'], ['leg']]);
    expect(fromDrawing({ drawn: drawnIn(svg(text, page)), units: null, mirror: false }).ok).toBe(false);
  });

  it('beside others is looked into where layers are in it', () => {
    const crossing = layer('rail', '<rect x="-5" y="-10" width="20" height="1"/>');
    const side = layer('Side view', layer('leg', part('r1', 0)) + crossing);
    const lines = layer(
      'Lines',
      layer('seat', '<path d="M5-15 22-16"/>') + layer('back', '<path d="M5-15 0-40"/>'),
    );
    const text = side + lines + layer('Notes', '<path d="M0 0h10"/>');
    expect(namesIn(text)).toEqual([['leg', 'rail'], ['Notes']]);
    expect(Object.keys(found(svg(text, page)).lines)).toEqual(['seat', 'back']);
    // Side by side they are several parts too, each with a label.
    const apart = layer('Side view', layer('leg', part('r1', 0)) + layer('post', part('r2', 10)));
    expect(namesIn(apart + layer('slat', part('r3', 20)))).toEqual([['leg', 'post', 'slat'], []]);
    // Slats of one layer, each a path of its own, are one part.
    expect(namesIn(layer('slats', part('p1', 0) + part('p2', 10)) + layer('rail', part('p3', 20)))).toEqual([
      ['slats', 'rail'],
      [],
    ]);
  });

  it('with a curve in it that has no name is left whole where it is a part, else that is told', () => {
    const hole = '<circle cx="1" cy="-9" r=".2"/>';
    const labelled = (x: number) => layer('leg', part('r1', 0)) + layer('slat', part('r2', x)) + hole;
    const others = layer('rail', part('r3', 40));
    expect(namesIn(layer('side', labelled(10)) + others)).toEqual([['side', 'rail'], []]);
    expect(namesIn(layer('side', labelled(1)) + others)).toEqual([['leg', 'slat', 'rail'], []]);
    const told = summaryOfDrawing(found(svg(layer('side', labelled(1)) + others, page)), 'chair.svg', 9);
    expect(told.replaceAll(/\n +/g, ' ')).toContain(
      'Left out of it: 1 curve without a name (line 1); is a hole among them?',
    );
  });

  it('drawn twice is one part', () => {
    const text =
      part('leg', 0) +
      part('again', 0) +
      part('post', 10) +
      '<rect id="pin" x="10.5" y="-9" width="1" height="1"/>';
    expect(namesIn(text)).toEqual([
      ['leg', 'post'],
      ['again', 'pin'],
    ]);
    expect(namesIn(layer('Layer 1', text))).toEqual([
      ['leg', 'post'],
      ['again', 'pin'],
    ]);
    const { unfinished } = found(svg(text, page));
    expect(unfinished.map(({ flaws }) => flaws[0]!.found)).toEqual([
      'it covers the same as leg',
      'it lies wholly inside post',
    ]);
  });

  it('of the same name in two others is one', () => {
    const seat = layer('seat', '<path d="M5-15 22-16"/>');
    const two =
      layer('a', seat + layer('leg', part('r1', 0))) + layer('b', seat + layer('post', part('r2', 10)));
    expect(namesIn(two)).toEqual([['leg', 'post'], []]);
  });

  it('tells parts that have curves in common, in whatever layers', () => {
    const peg = (x: number) => layer('peg', `<rect x="${x}" y="-9" width="9" height="1"/>`);
    const leg = layer('leg', part('r1', 0) + peg(10));
    const text = leg + layer('side', peg(50) + layer('slat', part('r2', 51)));
    const { parts } = found(svg(text, page));
    expect(parts.map(({ name, shares }) => [name, shares])).toEqual([
      ['leg', ['peg']],
      ['peg', ['leg']],
      ['slat', []],
    ]);
    expect(textOf(svg(text, page)).replaceAll(/\n\s*# /g, ' ')).toContain('Some of it is on peg too');
  });

  it('without names in it is refused with its own reason', () => {
    const text = svg(`<g id="layer1">${rk}<path d="M5-15 22-16"/></g>`, page);
    expect(fromDrawing({ drawn: drawnIn(text), units: null, mirror: false })).toMatchObject({
      flaws: [{ expected: expect.stringMatching(/^on layer1, outlines that close/) as string }],
    });
  });
});

describe('a drawing that is refused', () => {
  const flaws = (text: string, units = null) => {
    const made = fromDrawing({ drawn: drawnIn(text), units, mirror: false });
    return made.ok ? [] : made.flaws.map((flaw) => `${flaw.expected}, ${flaw.found}. ${flaw.hint ?? ''}`);
  };

  it('without units, and says how large it would be', () => {
    expect(flaws(dxf([box('a', 0, 0, 42.25, 3)]))).toEqual([
      '`--units`: the drawing does not say what its units are, none. it is 42.25 wide and 3 high: with `--units in` inches, with `--units mm` millimetres',
    ]);
  });

  it('without curves, and where nothing closes with the reason of each layer', () => {
    expect(flaws(dxf([], inInches))).toEqual(['a drawing with curves, none. ']);
    const hidden = svg('<g style="display:none"><path d="M0 0h9"/></g>');
    expect(flaws(hidden)).toEqual(['a drawing with curves, none. left out: 1 path, display: none (line 1)']);
    const open = dxf([onLayer('a', line(0, 0, 1, 0)), onLayer('b', line(0, 0, 0, 2))], inInches);
    expect(flaws(open).map((flaw) => flaw.slice(0, 24))).toEqual([
      'on a, outlines that clos',
      'on b, outlines that clos',
    ]);
    expect(flaws(dxf([onLayer('seat', line(0, 1, 2, 1))], inInches))).toEqual([
      'a layer whose curves close, none. ',
    ]);
  });
});

describe('outlines of one layer that are no part', () => {
  const reasons = (text: string, asked = {}) => {
    const made = fromDrawing({ drawn: drawnIn(text), units: null, mirror: false, ...asked });
    return made.ok ? [] : made.flaws.map(({ found, hint }) => `${found}. ${hint ?? ''}`);
  };

  it('because they cross are told to be put on layers of their own, by a place as drawn', () => {
    const crossing = dxf([box('0', 100, 0, 600, 50), box('0', 300, 20, 40, 500)], inInches);
    const told =
      /^outline 1 and outline 2 crossing near \(3[0-4]\d(?:\.\d+)?, -?[\d.]+\) as drawn\. put each part on a layer of its own/;
    for (const mirror of [false, true]) {
      expect(reasons(crossing, { mirror })).toHaveLength(1);
      expect(reasons(crossing, { mirror })[0]).toMatch(told);
    }
  });

  it('because one crosses itself are told where it is drawn', () => {
    const path = '<path d="M100 900L900 900L900 850L500 930L100 850Z"/>';
    const text = svg(path, 'width="1000in" height="1000in" viewBox="0 0 1000 1000"');
    // The slanting sides cross the level one at x = 350 and 650.
    expect(reasons(text)).toEqual([
      expect.stringMatching(/^a crossing near \((350|650), 900\) as drawn/) as string,
    ]);
  });
});

describe('units', () => {
  it.each([
    ['inches', inInches, null, 'in', ''],
    ['millimetres', inMillimetres, null, 'mm', ''],
    ['what is stated where none are declared', {}, 'cm', 'cm', 'units: cm, '],
    ['what is stated, whatever is declared', inMillimetres, 'in', 'in', 'units: in, '],
    ['millimetres where they are yards', { header: [9, '$INSUNITS', 70, 10] }, null, 'mm', ''],
  ] as const)('are %s', (_, sections, units, wanted, stated) => {
    const text = textOf(dxf([box('post', 0, 0, 2, 30)], sections), { units });
    expect(text).toContain(`\nunits: ${wanted}\n`);
    expect(text).toContain(`{ file: chair.dxf, layer: post, ${stated}origin: [0, 0] }`);
  });
});

describe('any names of layers', () => {
  /** What a line of a DXF file can hold. */
  const name = fc
    .oneof(
      fc.constantFrom(
        '0',
        '007',
        '__proto__',
        'a: b',
        '#',
        "'",
        '"',
        '- x',
        'null',
        '{',
        'seat',
        'Arms',
        '\u202e',
      ),
      fc.string({ unit: 'binary' }),
      fc.string(),
    )
    .map((text) => text.replaceAll(/[\r\n\ufeff]|\p{Cs}/gu, '').trim())
    .filter((text) => text !== '');

  it('are found again by the design, each by a part of its own name', () => {
    fc.assert(
      fc.property(fc.uniqueArray(name, { minLength: 1, maxLength: 6 }), (layers) => {
        const drawing = dxf(
          layers.map((layer, i) => box(layer, 3 * i, i, 2, 30)),
          inInches,
        );
        const design = designOf(filledIn(textOf(drawing)), drawing);
        const { parts } = design.written;
        expect(parts.map(({ outline }) => [outline].flat()[0]!.drawing!.layer)).toEqual(layers);
        expect(new Set(parts.map((part) => part.name)).size).toBe(layers.length);
        const resolved = resolveDesign(design);
        if (!resolved.ok) throw new Error(resolved.issues.map(describeIssue).join('\n'));
      }),
      { numRuns: 300 },
    );
  });

  it('are found again where they have breaks of line and halves of letters, as in an SVG', () => {
    const any = fc.string({ unit: 'binary', minLength: 1 });
    fc.assert(
      fc.property(fc.uniqueArray(any, { minLength: 1, maxLength: 6 }), (layers) => {
        const { curves, ...sheet } = drawnIn(dxf([box('0', 0, 0, 2, 30)], inInches));
        const drawn = { ...sheet, curves: layers.flatMap((layer) => ({ ...curves[0]!, layers: [layer] })) };
        const made = fromDrawing({ drawn, units: null, mirror: false });
        if (!made.ok) throw new Error(JSON.stringify(made.flaws));
        const { parts } = designOf(filledIn(printFromDrawing(made.value, names)), porch()).written;
        expect(parts.map(({ outline }) => [outline].flat()[0]!.drawing!.layer)).toEqual(layers);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a layer of a line’s name that is no line', () => {
  const reasons = (...entities: Parameters<typeof dxf>[0]) =>
    found(dxf([box('post', 0, 0, 2, 30), ...entities], inInches)).unfinished.map(({ name, flaws }) => [
      name,
      `${flaws[0]!.expected}, ${flaws[0]!.found}`,
    ]);

  it('is told so: a second one, several lines', () => {
    const [seat, higher] = [line(1, 15, 17, 16), line(1, 16, 17, 17)];
    expect(reasons(onLayer('seat', seat), onLayer('seat line', higher))).toEqual([
      ['seat line', 'one seat line, another on the layer seat'],
    ]);
    expect(reasons(onLayer('seat', seat), onLayer('seat', higher))).toEqual([
      ['seat', 'one straight line, or the outlines of a part, 2 lines or curves'],
    ]);
  });
});
