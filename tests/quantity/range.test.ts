import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Kind } from '../../src/names.js';
import { compileRange } from '../../src/quantity/range.js';
import { mistakeOf, scope, valueOf, values } from './scope.js';

const compile = (source: string | number, kind: Kind) => compileRange(source, { kind, units: 'in' }, scope);
function ends(source: string, kind: Kind) {
  const { min, max } = valueOf(compile(source, kind));
  return [min?.valueIn(values) ?? null, max?.valueIn(values) ?? null];
}

describe('ranges', () => {
  it.each([
    ['1.8 s .. 2.6 s', 'time', [1.8, 2.6]],
    ['1.8 s..2.6 s', 'time', [1.8, 2.6]],
    ['1.8 s ..', 'time', [1.8, null]],
    ['.. 50 mm', 'length', [null, 0.05]],
    ['2 .. 3', 'length', [0.0508, 3 * 0.0254]],
    ['.5 .. 1', 'length', [0.0127, 0.0254]],
    ['-2 deg .. 8 deg', 'angle', [-Math.PI / 90, (2 * Math.PI) / 45]],
    ['-1 in 12 .. 1 in 6', 'angle', [Math.atan(-1 / 12), Math.atan(1 / 6)]],
    ['4 deg ..', 'angle', [Math.PI / 45, null]],
    ['1 .. 1', 'number', [1, 1]],
    ['..0.3', 'number', [null, 0.3]],
    ['a .. radius - 1 in', 'length', [0.5, 0.9746]],
    // What names make of the ends is for whoever knows the names.
    ['radius .. a', 'length', [1, 0.5]],
  ] as const)('%s', (source, kind, expected) => {
    expect(ends(source, kind)).toEqual(expected);
  });
});

describe('refused', () => {
  it.each([
    ['', 0, undefined],
    ['..', 0, '`off`'],
    ['  ..  ', 2, '`off`'],
    ['2.6 s .. 1.8 s', 0, 'swap'],
    ['1.8 .. 2.6 s', 0, '`1.8 s`'],
    ['1.8 s .. 2.6', 9, '`2.6 s`'],
    ['1.8 s .. 2.6 sec ond', 17, undefined],
    ['>= 2 s', 0, '`2 s ..`'],
    ['>2 s', 0, '`2 s ..`'],
    ['≥ 2 s', 0, '`2 s ..`'],
    ['< 2 s', 0, '`.. 2 s`'],
    ['<= 2 s', 0, '`.. 2 s`'],
    ['2 s', 0, 'at least that is `2 s ..`, at most that is `.. 2 s`'],
    ['1 s ... 2 s', 6, 'two dots'],
    ['1 s .. 2 s .. 3 s', 11, 'two dots'],
    ['1 s … 2 s', 0, 'two dots'],
    ['1 s .. 2 kg', 7, '`s`'],
  ])('%s', (source, at, hint) => {
    const mistake = mistakeOf(compile(source, 'time'));
    expect(mistake.at).toBe(at);
    if (hint !== undefined) expect(mistake.hint).toContain(hint);
  });
  it('a text of more than 400 characters', () => {
    expect(mistakeOf(compile('1'.repeat(401), 'angle')).at).toBe(400);
    expect(mistakeOf(compile('1 s ..'.padEnd(401), 'time')).at).toBe(400);
  });
  it('a single number', () => {
    expect(mistakeOf(compile(5, 'number')).hint).toContain('`5 ..`');
  });
});

it('is a range or a mistake, whatever the text', () => {
  const pieces = fc.constantFrom('..', '.', '1', '2.5', ' ', 's', '-', 'in', 'a', '>=', '12', 'deg', '…');
  const text = fc.oneof(
    fc.array(pieces, { maxLength: 9 }).map((parts) => parts.join('')),
    fc.string(),
  );
  fc.assert(
    fc.property(text, fc.constantFrom<Kind>('time', 'length', 'angle', 'number'), (source, kind) => {
      const reading = compile(source, kind);
      if (reading.ok) expect(reading.value.min ?? reading.value.max).not.toBeNull();
      else expect(reading.mistake.at).toBeLessThanOrEqual(source.length);
    }),
    { numRuns: 2000 },
  );
});
