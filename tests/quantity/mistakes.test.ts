/** What is refused, where, and what the maker is told: read these as the maker would. */
import { describe, expect, it } from 'vitest';
import { compileExpression } from '../../src/quantity/expression.js';
import { mistakeOf, refused, scope } from './scope.js';

describe('refused as unclear, with how to write either meaning', () => {
  it.each([
    ['1 - 3/4', 0, /`1 3\/4` for one number, `1 - \(3\/4\)` for a difference/],
    ['2 - 1/2 in', 0, /`2 1\/2` for one number, .* `3 in - 1\/2 in`/],
    ['2 -1/2 in', 0, /one number/],
    ['2- ½ in', 0, /`2 1\/2` for one number/],
    [`5' 6 - 1/2"`, 3, /`6 1\/2` for one number/],
    ['1.5-3/4', 0, /`1.5 - \(3\/4\)`/],
    ['2*1-1/2', 2, /`1 1\/2` for one number/],
    ['1-1/2 radius', 0, /`1 1\/2` for one number/],
    ['1-3/4 + 2', 0, /for one number/],
    [`5' - 2"`, 0, /`5' 2"` for the sum, `\(5'\) - \(2"\)` for the difference/],
    [`5' -2"`, 0, /for the sum/],
    ['5 ft-2 in', 0, /`5 ft 2 in` for the sum/],
    ['a/2 in', 2, /brackets/],
    ['10 in/2 in', 6, /brackets/],
    ['1.5/2 in', 4, /brackets/],
    ['6/2 radius', 2, /brackets/],
    ['a/-2 in', 3, /brackets/],
    ['a^2 in', 2, /brackets/],
    ['a² in', 1, /brackets/],
    ['a/1 1/2', 2, /brackets/],
    ['a/½', 2, /brackets/],
    ['a/5"', 2, /brackets/],
    ['1 3/4^2', 0, /`\(1 3\/4\)\^2`/],
    [`5' 2"²`, 0, /brackets|`\(5' 2"\)\^2`/],
    [`5' 2*3`, 0, /inch mark/],
    [`5' 6/2`, 0, /inch mark/],
  ])('%s', (source, at, hint) => {
    const mistake = refused(source);
    expect(mistake.at).toBe(at);
    expect(mistake.hint).toMatch(hint);
  });
});

describe('two values side by side', () => {
  it.each([
    ['1 in 3/4', 5, /before the unit: `1 3\/4 in`/],
    ['1" 3/4', 3, /before the unit: `1 3\/4"`/],
    ['5 ft 2', 5, /`5 ft 2 in`/],
    ['7 lb 4', 5, /`7 lb 4 oz`/],
    ['42 kg 3', 6, /its unit/],
    ['1 in 12', 5, /slope.*only where an angle/],
    ['5 ft 12 in', 0, /less than one/],
    ['5 ft 14 in', 0, /less than one/],
    [`5' 12"`, 0, /less than one/],
    ['3 in 4 ft', 0, /larger unit/],
    ['5.5 ft 2 in', 0, /whole number/],
    ['1 in 1 in', 0, /`\+`/],
    ['7 lb 4 in', 0, /`\*`/],
    ['2 3', 2, /mixed number.*`1 3\/4`/],
    ['1.5 3/4 in', 4, /whole number/],
    ['1 3.5/4', 2, /whole number/],
    ['1 000', 2, /`\*`/],
    ['radius 2', 7, /`\*`/],
    ['radius a', 7, /`\*`/],
    ['2 (a)', 2, /`\*`/],
    ['(a)(a)', 3, /`\*`/],
    ['radius(2)', 6, /`\*`/],
    [`5' 2 radius`, 5, /`\*`/],
    ['radius in', 7, /`\* 1 in`/],
    ['(a) in', 4, /`\* 1 in`/],
    ['5 in in', 5, /too much/],
    ['5 kg/m3 s', 8, /`\* 1 s`/],
  ])('%s', (source, at, hint) => {
    const mistake = refused(source);
    expect(mistake.at).toBe(at);
    expect(mistake.hint).toMatch(hint);
  });
});

describe('mixed numbers', () => {
  it.each(['1 7/4 in', '1-4/4', '1 3/0 in', '12-7/2'])('%s: the fraction is not proper', (source) => {
    expect(refused(source)).toMatchObject({ at: 0, expected: 'a mixed number such as `1 3/4`' });
  });
  it('3/0 in: no fraction', () => {
    expect(refused('3/0 in')).toMatchObject({ at: 0, expected: 'a fraction' });
  });
});

describe('slips', () => {
  it.each([
    ['1,5 in', 1, /`1\.5`/],
    ['1,000', 1, /`1000`/],
    ['1,500 mm', 1, /`1\.500`.*`1500`/],
    ['max((1,5), 2)', 6, /`1\.5`/],
    ['1 , 2', 2, /decimal point/],
    ['5 MM', 2, /`mm`/],
    ['5 IN', 2, /`in`/],
    ['42 Kg', 3, /`kg`/],
    ['9 Lb', 2, /`lb`/],
    ['5 inchs', 2, /`inch`/],
    ['5 KN', 2, /`kN`/],
    ['5 cubits', 2, /units are in/],
    ['5ft2in', 1, /space behind `ft`/],
    ['raduis', 0, /`radius`/],
    ['2 raduis', 2, /`radius`/],
    ['zzz', 0, /known are radius, arc/],
    ['squrt(2)', 0, /`sqrt`/],
    ['integrate(2)', 0, /sqrt, abs/],
    ['sqrt', 0, /`sqrt\(…\)`/],
    ['in', 0, /`1 in`/],
    ['a"', 1, /behind a number/],
    ['lean°', 4, /behind a number/],
    ['5 [a]', 2, /round/],
    ['1..2', 1, /range/],
    ['4.', 1, /digit behind/],
    ['50%', 2, /`0\.25`/],
    ['radius + 2', 9, /give `2` its unit/],
    ['ratio + 2 in', 0, /give `ratio` its unit/],
    ['radius - (1 + ratio)', 9, /give `\(1 \+ ratio\)` its unit/],
    ['42 kg', 0, /`in` or `mm`/],
    ['radius * 6 deg', 0, /`1 rad`/],
    ['sqrt(-4)', 0, /negative number/],
    ['1/(1-1)', 0, /division by 0/],
  ])('%s', (source, at, hint) => {
    const mistake = refused(source);
    expect(mistake.at).toBe(at);
    expect(mistake.hint).toMatch(hint);
  });

  it.each([
    ['', 0, 'nothing'],
    ['  ', 0, 'nothing'],
    ['@', 0, 'the character `@`'],
    ['a + \u0007', 4, 'the character U+0007'],
    ['1\u200b2', 1, 'the character U+200B'],
    ['a 😀', 2, 'the character `😀`'],
    ['a +  ', 3, 'the end of the text'],
    ['(a', 0, '`(a`'],
    ['a,1', 1, '`,`'],
    ['a)', 1, '`)`'],
    ['()', 1, '`)`'],
    ['--2', 1, '`-`'],
    ['2**3', 2, '`*`'],
    ['max(,1)', 4, '`,`'],
    ['hypot(a)', 0, '1'],
    ['atan2(1, 2, 3)', 0, '3'],
    ['max(1 in, 2)', 4, 'a length and a pure number'],
    ['cos(a)', 4, 'a length'],
    ['asin(lean)', 5, 'an angle'],
    ['2^a', 2, 'a length in `2^a`'],
    ['a^ratio', 2, '`a^ratio`'],
    ['a^5', 2, '`a^5`'],
    ['a + a*a', 4, 'a length and an area in `a + a*a`'],
    ['constructor', 0, '`constructor`'],
    ['__proto__', 0, '`__proto__`'],
    ['toString(1)', 0, '`toString`'],
    ['a = 5', 2, 'the character `=`'],
  ])('%s', (source, at, found) => {
    expect(refused(source)).toMatchObject({ at, found });
  });

  it('tells how many values a function takes', () => {
    expect(refused('sqrt(1, 2)').expected).toBe('1 value for `sqrt`');
    expect(refused('atan2(1)').expected).toBe('2 values for `atan2`');
    expect(refused('hypot(1)').expected).toBe('2 to 16 values for `hypot`');
  });

  it('refuses more than 30 brackets inside each other, and reads 30', () => {
    const nested = (depth: number) => '('.repeat(depth) + '1' + ')'.repeat(depth);
    expect(compileExpression(nested(30), scope).ok).toBe(true);
    expect(mistakeOf(compileExpression(nested(31), scope)).at).toBe(30);
  });
});
