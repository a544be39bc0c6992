/** What a number counts, as powers of length, mass, time and angle. */
import type { Kind } from '../names.js';

export type Dimension = readonly [length: number, mass: number, time: number, angle: number];

export const dimensionOf: Readonly<Record<Kind, Dimension>> = {
  number: [0, 0, 0, 0],
  length: [1, 0, 0, 0],
  mass: [0, 1, 0, 0],
  time: [0, 0, 1, 0],
  angle: [0, 0, 0, 1],
  force: [1, 1, -2, 0],
  energy: [2, 1, -2, 0],
  density: [-3, 1, 0, 0],
  inertia: [2, 1, 0, 0],
};

/** Powers that differ by less are equal: (x ^ (1/3)) ^ 3 comes back to x within rounding only. */
const powerTolerance = 1e-9;

export function sameDimension(a: Dimension, b: Dimension): boolean {
  return a.every((power, index) => Math.abs(power - b[index]!) < powerTolerance);
}

export const isPure = (dimension: Dimension): boolean => sameDimension(dimension, dimensionOf.number);

const kinds = Object.keys(dimensionOf) as Kind[];

/** null: an area, a speed and whatever else has no name in the contract. */
export const kindOfDimension = (dimension: Dimension): Kind | null =>
  kinds.find((kind) => sameDimension(dimension, dimensionOf[kind])) ?? null;

export function timesDimension(a: Dimension, b: Dimension): Dimension {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3]];
}

export function powerOfDimension(a: Dimension, power: number): Dimension {
  return [a[0] * power, a[1] * power, a[2] * power, a[3] * power];
}

const named: readonly (readonly [Dimension, string])[] = [
  [dimensionOf.number, 'a pure number'],
  [dimensionOf.length, 'a length'],
  [dimensionOf.mass, 'a mass'],
  [dimensionOf.time, 'a time'],
  [dimensionOf.angle, 'an angle'],
  [dimensionOf.force, 'a force'],
  [dimensionOf.energy, 'an energy'],
  [dimensionOf.density, 'a density'],
  [dimensionOf.inertia, 'a moment of inertia'],
  [[2, 0, 0, 0], 'an area'],
  [[3, 0, 0, 0], 'a volume'],
  [[1, 0, -1, 0], 'a speed'],
];

/** In words: 'a length', 'an area'; what has no name of its own by its unit: 'a quantity in m²/kg'. */
export function describeDimension(dimension: Dimension): string {
  const name = named.find(([known]) => sameDimension(known, dimension))?.[1];
  return name ?? `a quantity in ${unitText(dimension)}`;
}

/** 'a length and a pure number'. */
export function describeAll(dimensions: readonly Dimension[]): string {
  return dimensions.map(describeDimension).join(' and ');
}

function unitText([length, mass, time, angle]: Dimension): string {
  const powers = [
    { symbol: 'kg', power: mass },
    { symbol: 'm', power: length },
    { symbol: 's', power: time },
    { symbol: 'rad', power: angle },
  ].filter(({ power }) => Math.abs(power) >= powerTolerance);
  const above = powers.filter(({ power }) => power > 0).map(({ symbol, power }) => symbol + powerText(power));
  const below = powers
    .filter(({ power }) => power < 0)
    .map(({ symbol, power }) => symbol + powerText(-power));
  const top = above.length === 0 ? '1' : above.join(' ');
  if (below.length === 0) return top;
  return below.length === 1 ? `${top}/${below.join('')}` : `${top}/(${below.join(' ')})`;
}

function powerText(power: number): string {
  const rounded = Number(power.toFixed(3));
  return ['', '', '²', '³', '⁴'][rounded] ?? `^${rounded}`;
}
