/** Numbers of which no chair comes near: a mistake in a unit, or in an exponent. */
import type { Kind } from '../names.js';

/** Small enough that nothing made of a few of them overflows. In SI units. */
const farBeyond: Readonly<Record<Kind, number>> = {
  length: 1e6,
  mass: 1e6,
  time: 1e10,
  angle: 1e4,
  number: 1e9,
  force: 1e9,
  energy: 1e9,
  density: 1e6,
  inertia: 1e9,
};

export const siUnit: Readonly<Record<Kind, string>> = {
  length: ' m',
  mass: ' kg',
  time: ' s',
  angle: ' rad',
  number: '',
  force: ' N',
  energy: ' J',
  density: ' kg/m³',
  inertia: ' kg m²',
};

/** What a number must be that lies there, either way of 0; null: it does not. */
export function whyFarBeyond(kind: Kind, value: number): string | null {
  const most = farBeyond[kind];
  if (!(Math.abs(value) > most)) return null;
  return value < 0 ? `no less than -${most}${siUnit[kind]}` : `no more than ${most}${siUnit[kind]}`;
}

/** Six digits tell a size to the micrometre: enough to see what is wrong with it. */
export const inSIUnits = (value: number, kind: Kind): string =>
  Number.isFinite(value) ? `${Number(value.toPrecision(6))}${siUnit[kind]}` : 'no finite number';
