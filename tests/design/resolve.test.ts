/** Named values in the place of the stated ones: the same as if the file said so. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeIssue } from '../../src/design/issue.js';
import { resolveDesign } from '../../src/design/resolve.js';
import { disc, read, resolved, valueOf } from './read.js';

const design = (radius: string, tail: string) => `trueroll: 1
units: in
dimensions:
  gap: tail - 10 in
  radius: ${radius}
  tail: ${tail}
  depth: radius / 20
parts:
  - name: rocker
    count: 2
    mass: 1 kg
    outline: { rocker: { radius: radius, depth: depth, nose: 20, tail: tail } }
spacing: gap
limits: { flatLongest: .. depth }
`;

/** A reader of its own for each test: reading is slow beside resolving. */
const asDrawn = read(design('39 in', '20 in'));

it('follows a named value into all that is made of it', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 2, noNaN: true }),
      fc.double({ min: 0.3, max: 1, noNaN: true }),
      (radius, tail) => {
        const values = new Map([
          ['radius', radius],
          ['tail', tail],
        ]);
        expect(valueOf(resolveDesign(asDrawn, values))).toEqual(resolved(design(`${radius} m`, `${tail} m`)));
      },
    ),
    { numRuns: 50 },
  );
});

it('takes a pure number in the units of the file where a length is wanted', () => {
  const pure = read(design('39', '20 in').replace('radius / 20', '2 in'));
  const [part] = valueOf(resolveDesign(pure, new Map([['radius', 42]]))).parts;
  expect(part!.outline[0]).toMatchObject({ arcs: [{ radius: 42 * 0.0254 }] });
});

it('leaves the design as it is', () => {
  const before = valueOf(resolveDesign(asDrawn));
  resolveDesign(asDrawn, new Map([['radius', 2]]));
  expect(valueOf(resolveDesign(asDrawn))).toEqual(before);
});

describe('numbers that make no chair', () => {
  const told = (values: Record<string, number>) => {
    const checked = resolveDesign(asDrawn, new Map(Object.entries(values)));
    return checked.ok ? [] : checked.issues.map(describeIssue);
  };

  it('are told together, each where it is used', () => {
    expect(told({ radius: -1, tail: 0.2 })).toEqual([
      'chair.yaml:12:34: expected more than 0, found `radius`, which is -1 m',
      'chair.yaml:12:49: expected more than 0, found `depth`, which is -0.05 m',
      'chair.yaml:13:10: expected more than 0, found `gap`, which is -0.054 m',
    ]);
  });

  it('are told at the named value when it has none itself', () => {
    const text = `${disc}dimensions: { a: 3 in, b: 1 in * (a / (a - 1 in)) }\nspacing: b\n`;
    const checked = resolveDesign(read(text), new Map([['a', 0.0254]]));
    expect(checked.ok ? [] : checked.issues.map(describeIssue)).toEqual([
      'chair.yaml:7:27: expected a finite number, found `1 in * (a / (a - 1 in))`, which has no finite value',
    ]);
  });

  it('turn a range over', () => {
    const text = `${disc}dimensions: { most: 25 mm }\nlimits: { flatLongest: 20 mm .. most }\n`;
    const checked = resolveDesign(read(text), new Map([['most', 0.01]]));
    expect(checked.ok ? [] : checked.issues.map(describeIssue)).toEqual([
      'chair.yaml:8:24: expected a range from less to more, found `20 mm .. most`',
    ]);
  });
});

it.each([
  ['an unknown name', 'radus', 1],
  ['no number', 'radius', NaN],
  ['an infinite number', 'radius', Infinity],
])('is not asked for %s', (_, name, value) => {
  expect(() => resolveDesign(asDrawn, new Map([[name, value]]))).toThrow(RangeError);
});
