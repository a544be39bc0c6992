/** Judge: the unit tables of mathjs, which the code here does not use (it takes its parser only). */
import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { isReservedName, lengthUnits, metresPer, unitOfWord, unitWords } from '../../src/quantity/units.js';

describe('factors', () => {
  it.each([
    ...['in', 'inches', 'ft', 'feet', 'yd', 'yards', 'mm', 'cm', 'm', 'meter'].map((word) => [
      word,
      word,
      'm',
    ]),
    ...['kg', 'g', 'lb', 'lbs', 'oz', 'ounce'].map((word) => [
      word,
      word.replace('lb', 'lbm').replace('lbms', 'lbm'),
      'kg',
    ]),
    ...['s', 'sec', 'ms', 'minutes', 'hours', 'days', 'weeks', 'months', 'years'].map((word) => [
      word,
      word,
      's',
    ]),
    ['min', 'minute', 's'],
    ...['deg', 'degrees', 'rad'].map((word) => [word, word, 'rad']),
    ...['N', 'kN', 'lbf'].map((word) => [word, word, 'N']),
    ['J', 'J', 'J'],
    ['stone', 'stone', 'kg'],
    ['m2', 'm^2', 'm^2'],
    ['in2', 'in^2', 'm^2'],
    ['in3', 'in^3', 'm^3'],
    ['cm3', 'cm^3', 'm^3'],
  ] as [string, string, string][])('%s', (word, theirs, si) => {
    expect(unitOfWord(word)!.factor / unit(1, theirs).toNumber(si)).toBeCloseTo(1, 12);
  });

  it('are exact for the inch and the foot', () => {
    expect(lengthUnits).toEqual(['in', 'mm', 'cm', 'm', 'ft']);
    expect([metresPer.in, metresPer.ft]).toEqual([0.0254, 0.3048]);
    for (const name of lengthUnits) expect(unitOfWord(name)!.factor).toBe(metresPer[name]);
  });
});

describe('reserved names', () => {
  it.each([...unitWords, 'm2', 'in3', 'sqrt', 'atan2', 'min', 'pi', 'π'])('%s', (name) => {
    expect(isReservedName(name)).toBe(true);
  });
  it.each(['radius', 'IN', 'h', 't', 'b', 'x', 'lb2', 'constructor', '__proto__', '', 'toString', 'e'])(
    'not %s',
    (name) => {
      expect(isReservedName(name)).toBe(false);
    },
  );
});
