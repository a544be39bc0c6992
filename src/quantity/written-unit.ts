/** Units as makers write them behind a number: in, ", ', °, kg m², kg/m^3. */
import { powerOfDimension, sameDimension, timesDimension } from './dimension.js';
import { refuse } from './reading.js';
import {
  degreeMark,
  doubleMark,
  matchAt,
  shown,
  singleMark,
  skipSpaces,
  slash,
  wordAt,
} from './source-text.js';
import { unitOfWord, units, type Unit } from './units.js';

export interface WrittenUnit extends Unit {
  readonly end: number;
  /** Written as a mark: ' or ". */
  readonly mark: 'foot' | 'inch' | null;
}

/** The unit at the offset, spaces before it skipped; null when none stands there. */
export function readUnit(source: string, from: number): WrittenUnit | null {
  const at = skipSpaces(source, from);
  return readMark(source, at) ?? readCompoundUnit(source, at);
}

const inchHere = new RegExp(`^${doubleMark}`);
const footHere = new RegExp(`^${singleMark}`);
const degreeHere = new RegExp(`^${degreeMark}`);

function readMark(source: string, at: number): WrittenUnit | null {
  const marked = (pattern: RegExp, name: string, mark: WrittenUnit['mark']): WrittenUnit | null => {
    const match = matchAt(source, at, pattern);
    return match && { ...units.get(name)!, end: at + match[0].length, mark };
  };
  // Two single marks are inches, so the double mark is sought first.
  return marked(inchHere, 'in', 'inch') ?? marked(footHere, 'ft', 'foot') ?? marked(degreeHere, 'deg', null);
}

/** kg m², N m, kg/m3: units multiplied, then perhaps divided. */
function readCompoundUnit(source: string, at: number): WrittenUnit | null {
  let unit = readUnitWord(source, at);
  let divided = false;
  for (let next = unit && readJoined(source, unit); unit && next; next = readJoined(source, unit)) {
    // kg/m3 s: over or under the line? Left to whoever reads on, who refuses it.
    if (divided && !next.divides) break;
    divided = next.divides;
    unit = divided ? perUnit(unit, next.unit) : timesUnit(unit, next.unit);
  }
  return unit;
}

// A slash before a number divides the whole quantity: only one before a unit belongs to the unit.
const jointHere = new RegExp(`^(?:\\s*(?:(?<times>[*·⋅×])|(?<over>${slash}|÷))\\s*|\\s+)`, 'u');

function readJoined(source: string, unit: WrittenUnit): { unit: WrittenUnit; divides: boolean } | null {
  const joint = matchAt(source, unit.end, jointHere);
  const at = unit.end + (joint?.[0].length ?? 0);
  const next = joint && readUnitWord(source, at);
  if (!next) return null;
  const { times, over } = joint.groups!;
  if (times === undefined && over === undefined && sameDimension(unit.dimension, next.dimension)) {
    const word = shown(source.slice(at, next.end));
    refuse(at, 'one unit', `${word} behind another`, 'a number is missing, or one unit is too much');
  }
  return { unit: next, divides: over !== undefined };
}

function timesUnit(a: WrittenUnit, b: WrittenUnit): WrittenUnit {
  return { ...b, factor: a.factor * b.factor, dimension: timesDimension(a.dimension, b.dimension) };
}

function perUnit(a: WrittenUnit, b: WrittenUnit): WrittenUnit {
  const dimension = timesDimension(a.dimension, powerOfDimension(b.dimension, -1));
  return { ...b, factor: a.factor / b.factor, dimension };
}

const powerHere = /^(?:\s*\^\s*(?<typed>[2-4])(?![.\d])|(?<raised>[²³]))/u;

/** in, m2, m^2, m². */
function readUnitWord(source: string, at: number): WrittenUnit | null {
  const name = wordAt(source, at);
  const unit = name === null ? undefined : unitOfWord(name);
  if (name === null || !unit) return null;
  const end = at + name.length;
  // `min` before a bracket is the function, else minutes.
  if (name === 'min' && matchAt(source, end, /^\s*\(/u)) return null;
  const power = matchAt(source, end, powerHere);
  if (!power) return { ...unit, end, mark: null };
  const { typed, raised } = power.groups!;
  const exponent = Number(typed ?? raised!.normalize('NFKC'));
  const dimension = powerOfDimension(unit.dimension, exponent);
  return { factor: unit.factor ** exponent, dimension, end: end + power[0].length, mark: null };
}
