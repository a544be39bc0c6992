/** Kinds: what is read where what is wanted. */
import { describe, expect, it } from 'vitest';
import type { Kind } from '../../src/names.js';
import { compileQuantity } from '../../src/quantity/quantity.js';
import { evaluate, read, refused, scope, valueOf } from './scope.js';

const pound = 0.45359237;

describe('each kind in its units', () => {
  it.each([
    ['mass', '42 kg', 42],
    ['mass', '7 lb 4 oz', 7.25 * pound],
    ['mass', '110 lbs', 110 * pound],
    ['mass', '11 stone 4 lb', 158 * pound],
    ['mass', '3/4 lb', 0.75 * pound],
    ['time', '1.8 s', 1.8],
    // A Julian year is 31 557 600 s.
    ['time', '9 months', 0.75 * 31_557_600],
    ['time', '2 years', 2 * 31_557_600],
    ['time', '3 weeks', 21 * 86_400],
    ['time', '1 min 30 s', 90],
    ['time', '500 ms', 0.5],
    ['angle', '6 deg', Math.PI / 30],
    ['angle', '6°', Math.PI / 30],
    ['angle', '0.1 rad', 0.1],
    ['angle', 'lean/2', 0.05],
    ['number', '0.25', 0.25],
    ['number', '1/4', 0.25],
    ['number', '10 in/ft', 10 / 12],
    ['force', '90 N', 90],
    ['force', '1.2 kN', 1200],
    ['energy', '5 J', 5],
    ['energy', '5 N m', 5],
    ['density', '700 kg/m3', 700],
    ['density', '700 kg/m³', 700],
    ['density', '700 kg / m^3', 700],
    ['density', '0.7 g/cm3', 700],
    ['inertia', '0.3 kg m²', 0.3],
    ['inertia', '0.3 kg m^2', 0.3],
    ['inertia', '0.3 kg m2', 0.3],
    ['inertia', '0.3 kg·m²', 0.3],
    ['inertia', '0.3 kg*m^2', 0.3],
    ['inertia', '2 kg * a^2', 0.5],
  ] as const)('%s: %s', (kind, source, value) => {
    expect(read(source, kind) / value).toBeCloseTo(1, 14);
  });

  it('keeps the kind and the names', () => {
    const quantity = valueOf(compileQuantity('a + radius', { kind: 'length', units: 'in' }, scope));
    expect(quantity).toMatchObject({ kind: 'length', names: ['a', 'radius'] });
  });
});

describe('slopes, where an angle is wanted', () => {
  it.each([
    ['1 in 12', 1 / 12],
    ['-1 in 12', -1 / 12],
    ['+1 in 12', 1 / 12],
    ['1.5 in 12', 1.5 / 12],
    ['1-1/2 in 12', 1.5 / 12],
    ['1 1/2 in 10.5', 1.5 / 10.5],
    ['3/4 in 12', 0.75 / 12],
    ['½ in 12', 0.5 / 12],
    ['  1  in  12  ', 1 / 12],
    ['0 in 12', 0],
  ])('%s', (source, tangent) => {
    expect(Math.tan(read(source, 'angle'))).toBeCloseTo(tangent, 15);
  });
  it.each(['1 in 3/4', '1 in 12 + 2 deg', '1 in 0', '1 in', '1 in -12', '(1 in 12)', '1 in 12 in'])(
    '%s is none',
    (source) => {
      refused(source, 'angle');
    },
  );
  it.each(['length', 'number', 'time'] as const)('and not where a %s is', (kind) => {
    expect(refused('1 in 12', kind).hint).toMatch(/slope/);
  });
});

describe('a unit is needed', () => {
  it.each([
    ['mass', 'write `42 kg` or `42 lb`'],
    ['time', 'write `42 s` or `42 months`'],
    ['angle', 'write `42 deg`, or a slope such as `1 in 12`'],
    ['force', 'write `42 N` or `42 lbf`'],
    ['energy', 'write `42 J`'],
    ['density', 'write `42 kg/m3`'],
    ['inertia', 'write `42 kg m2`'],
  ] as const)('%s', (kind: Kind, hint) => {
    expect(refused('42', kind).hint).toBe(hint);
    expect(refused(42, kind).hint).toBe(hint);
  });
  it.each(['1 3/4', '-2', '½', '1-1/2', '.5'])('with %s said again in the hint', (source) => {
    expect(refused(source, 'mass').hint).toBe(`write \`${source} kg\` or \`${source} lb\``);
    expect(read(`${source} kg`, 'mass')).toBe(evaluate(source));
  });
  it('for the result of an expression too', () => {
    expect(refused('ratio', 'mass')).toEqual({
      at: 0,
      expected: 'a mass',
      found: 'a pure number, `ratio`',
      hint: 'a mass has a unit such as `kg` or `lb`',
    });
  });
});

describe('another kind is refused', () => {
  it.each([
    ['number', '42 mm', 'a length, `42 mm`'],
    ['number', '6 deg', 'an angle, `6 deg`'],
    ['length', ' 42 kg', 'a mass, `42 kg`'],
    ['length', '2 in²', 'an area, `2 in²`'],
    ['force', '42 kg', 'a mass, `42 kg`'],
    ['mass', '42 lbf', 'a force, `42 lbf`'],
    ['energy', '2 kg m²', 'a moment of inertia, `2 kg m²`'],
    ['inertia', '2 m²/kg', 'a quantity in m²/kg, `2 m²/kg`'],
  ] as const)('%s: %s', (kind, source, found) => {
    expect(refused(source, kind)).toMatchObject({ at: source.search(/\S/), found });
  });
});
