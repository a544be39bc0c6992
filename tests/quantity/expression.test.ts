/** Arithmetic with names: expected values by hand from radius 1 m, arc 0.4 m, a 0.5 m, lean 0.1 rad, ratio 3. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sameDimension } from '../../src/quantity/dimension.js';
import { compileExpression, namesIn } from '../../src/quantity/expression.js';
import { compileQuantity } from '../../src/quantity/quantity.js';
import { evaluate, mistakeOf, scope, valueOf, values } from './scope.js';

describe('expressions', () => {
  it.each([
    ['radius + 2 in', 1.0508],
    ['(arc/2)', 0.2],
    ['2 radius', 2],
    ['1 1/2 a', 0.75],
    ['½ a', 0.25],
    ['2 pi', 2 * Math.PI],
    ['π', Math.PI],
    ['radius - 3/4 in', 0.98095],
    ['a-1/2 in', 0.4873],
    ['a/3-1/2 in', 0.5 / 3 - 0.0127],
    ['ratio-1/2', 2.5],
    ['6/2/3', 1],
    ['a/1/2', 0.25],
    ['2 + 3 * 4', 14],
    ['2 - 3 - 4', -5],
    ['2^3^2', 512],
    ['-2^2', -4],
    ['2^-1', 0.5],
    ['5 - -2', 7],
    ['a/-2', -0.25],
    ['2 ratio^2', 18],
    ['a²', 0.25],
    ['(a + a)² / a', 2],
    ['3²', 9],
    ['2 × 3 ÷ 4', 1.5],
    ['2 · 3 − 4', 2],
    ['sqrt(radius^2 - (a - 0.3 m)^2)', Math.sqrt(0.96)],
    ['abs(-3 m)', 3],
    ['hypot(3 m, 4 m)', 5],
    ['min(a, 1 in)', 0.0254],
    ['max(1, 5, 2)', 5],
    ['sin(30 deg)', 0.5],
    ['cos(60°)', 0.5],
    ['tan(lean)', Math.tan(0.1)],
    ['sin(0.1)', Math.sin(0.1)],
    ['asin(1/2)', Math.PI / 6],
    ['acos(1/2)', Math.PI / 3],
    ['atan(1)', Math.PI / 4],
    ['atan2(1 in, -1 in)', (3 * Math.PI) / 4],
    ['min(1 s, 2 s)', 1],
    ['5 min', 300],
    ['2 m * min(3, 4)', 6],
    ['6 m / min(2, 3)', 3],
  ])('%s', (source, value) => {
    expect(evaluate(source)).toBeCloseTo(value, 14);
  });

  it('reads numbers as YAML gives them', () => {
    expect(evaluate(39.5)).toBe(39.5);
    expect(valueOf(compileExpression(3, scope)).dimension).toEqual([0, 0, 0, 0]);
  });

  it('knows what it counts', () => {
    const dimension = (source: string) => valueOf(compileExpression(source, scope)).dimension;
    expect(dimension('2 kg * a / (3 s)^2')).toEqual([1, 1, -2, 0]);
    expect(dimension('sqrt(a * radius)')).toEqual([1, 0, 0, 0]);
    expect(dimension('atan(ratio)')).toEqual([0, 0, 0, 1]);
    expect(sameDimension(dimension('a^ -1'), [-1, 0, 0, 0])).toBe(true);
  });

  it('tells the names it uses, each once', () => {
    expect(valueOf(compileExpression('a + 2 radius - a', scope)).names).toEqual(['a', 'radius']);
    expect(valueOf(compileExpression('1 in', scope)).names).toEqual([]);
  });

  it('follows the values it is given, and needs them all', () => {
    const sum = valueOf(compileExpression('a + radius/2', scope));
    expect(sum.valueIn(new Map(Object.entries({ a: 1, radius: 4 })))).toBe(3);
    expect(sum.valueIn(new Map(Object.entries({ a: 2, radius: 8 })))).toBe(6);
    expect(() => sum.valueIn(new Map([['a', 1]]))).toThrow(RangeError);
  });

  it('gives what is not finite as it is when names are in it', () => {
    const values = new Map([['ratio', 3]]);
    const valueIn = (source: string) => valueOf(compileExpression(source, scope)).valueIn(values);
    expect(valueIn('1/(ratio - 3)')).toBe(Infinity);
    expect(valueIn('sqrt(-ratio)')).toBeNaN();
  });

  it.each(['1/0', '0/0', '1/(2-2)', 'sqrt(-4)', '9^9^9^9', '1e999', 'asin(2)', NaN, Infinity, -Infinity])(
    'refuses %s, which is no finite number',
    (source) => {
      mistakeOf(compileExpression(source, scope));
    },
  );
});

describe('namesIn', () => {
  it.each([
    ['sqrt(tall^2 - (wide/2)^2) + 1/4 in', ['tall', 'wide']],
    ['2 länge + länge', ['länge']],
    ['min(x_1, 5 min)', ['x_1']],
    ['1 3/4 in', []],
    ['2 +', []],
    ['constructor + 1', ['constructor']],
  ])('%s', (source, names) => {
    expect(namesIn(source)).toEqual(names);
  });
  it('finds none in a number', () => {
    expect(namesIn(42)).toEqual([]);
  });
});

interface Written {
  readonly text: string;
  readonly value: number;
}
/** Expressions in full brackets, each with its value worked out beside the text. */
const { sum: written } = fc.letrec<{ sum: Written; leaf: Written }>((tie) => ({
  sum: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    tie('leaf'),
    fc.tuple(tie('sum'), fc.constantFrom('+', '-', '*', '/', '^'), tie('sum')).map(([a, sign, b]) => ({
      text: `(${a.text}) ${sign} (${b.text})`,
      value: compute(a.value, sign, b.value),
    })),
    tie('sum').map(({ text, value }) => ({ text: `-(${text})`, value: -value })),
  ),
  leaf: fc.oneof(
    fc.integer({ min: 0, max: 99 }).map((value) => ({ text: `${value}`, value })),
    fc.constant({ text: 'ratio', value: 3 }),
    fc.constant({ text: '2 ratio', value: 6 }),
    fc.constant({ text: '1 3/4', value: 1.75 }),
  ),
}));
function compute(a: number, sign: string, b: number): number {
  switch (sign) {
    case '+':
      return a + b;
    case '-':
      return a - b;
    case '*':
      return a * b;
    case '/':
      return a / b;
    default:
      return a ** b;
  }
}

it('computes what arithmetic does', () => {
  let read = 0;
  fc.assert(
    fc.property(written, ({ text, value }) => {
      const reading = compileExpression(text, scope);
      fc.pre(reading.ok);
      read += 1;
      expect(reading.value.valueIn(new Map([['ratio', 3]]))).toBe(value);
    }),
    { numRuns: 500, maxSkipsPerRun: 100 },
  );
  expect(read).toBe(500);
});

/** How a text is spaced may make it unclear, but never gives it another value. */
it('means the same however it is spaced', () => {
  const word = fc.constantFrom(
    ...'1 2 3/4 1/2 ½ 1.5 12 + - * / ^ ( ) in ft " \' mm radius ratio lb oz'.split(' '),
  );
  const space = fc.constantFrom('', ' ');
  const needsSpace = (before: string, after: string) =>
    /[\p{L}\p{N}.]$/u.test(before) && /^[\p{L}\p{Nd}.]/u.test(after);
  const join = (words: readonly string[], spaces: readonly string[]) =>
    words.reduce((text, next, index) => text + (needsSpace(text, next) ? ' ' : spaces[index - 1]!) + next);
  const spaces = fc.array(space, { minLength: 7, maxLength: 7 });
  let compared = 0;
  fc.assert(
    fc.property(fc.array(word, { minLength: 2, maxLength: 7 }), spaces, spaces, (words, some, others) => {
      const want = { kind: 'length', units: 'in' } as const;
      const [one, other] = [some, others].map((by) => compileQuantity(join(words, by), want, scope));
      if (!one?.ok || !other?.ok) return;
      compared += 1;
      expect(one.value.valueIn(values)).toBe(other.value.valueIn(values));
    }),
    { numRuns: 4000 },
  );
  expect(compared).toBeGreaterThan(50);
});

describe('any text', () => {
  const pieces = fc.constantFrom(
    ...'0 1 3/4 ½ 1.5 .5 1e3 , . .. + - – * / ⁄ ^ ² ( ) in ft m kg lb oz deg s " \' ′ ” ° min sqrt( max( atan2( radius a pi raduis IN'.split(
      ' ',
    ),
    ' ',
    '  ',
  );
  const anyText = fc.oneof(
    fc.array(pieces, { maxLength: 14 }).map((parts) => parts.join('')),
    fc.array(pieces, { maxLength: 14 }).map((parts) => parts.join(' ')),
    fc.string({ unit: 'binary', maxLength: 30 }),
    fc.string({ maxLength: 420 }),
  );

  it('is a number or a mistake within the text, and never anything else', () => {
    const values = new Map(scope.known.map((name) => [name, 0.5]));
    let numbers = 0;
    fc.assert(
      fc.property(anyText, (source) => {
        const reading = compileExpression(source, scope);
        if (reading.ok) {
          numbers += 1;
          expect(reading.value.valueIn(values)).toBeTypeOf('number');
          expect([...reading.value.names].sort()).toEqual([...namesIn(source)].sort());
        } else {
          expect(reading.mistake.at).toBeGreaterThanOrEqual(0);
          expect(reading.mistake.at).toBeLessThanOrEqual(source.length);
          expect(reading.mistake.expected).not.toBe('');
          expect(reading.mistake.found).not.toBe('');
        }
      }),
      { numRuns: 4000 },
    );
    expect(numbers).toBeGreaterThan(30);
  });

  it.each([
    '('.repeat(400),
    'sqrt('.repeat(80),
    '-'.repeat(400),
    '1/'.repeat(200),
    '1 '.repeat(200),
    '9'.repeat(400),
    '1+'.repeat(199) + '1',
    '2^'.repeat(199) + '0',
    '2^-'.repeat(130) + '1',
    'a'.repeat(400),
    ' '.repeat(400),
    '1 ft '.repeat(80),
    '1 m*m*m*m'.repeat(40),
    "'".repeat(400),
    '²'.repeat(400),
    '1'.padEnd(399, '.') + '1',
    '1'.padEnd(200, ' ') + '/'.padEnd(200, ' '),
  ])('is read at once: %#', (source) => {
    expect(source.length).toBeLessThanOrEqual(400);
    const start = performance.now();
    compileExpression(source, scope);
    // 400 characters take a few milliseconds; a pattern or parser gone wild takes minutes. A busy machine is slow.
    expect(performance.now() - start).toBeLessThan(2000);
  });

  it('is refused when it is longer than 400 characters', () => {
    expect(mistakeOf(compileExpression('1'.repeat(401), scope))).toMatchObject({ at: 400, found: '401' });
  });
});
