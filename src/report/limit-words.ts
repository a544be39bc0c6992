/** A limit in a maker's words and units: whose, of what, what was wanted, what came out, how far off and why. */
import type { JudgedLimit } from '../checks/verdict.js';
import type { MeasureKey } from '../names.js';
import type { LengthUnit } from '../quantity/units.js';
import { sayFinely } from './fine-words.js';
import { limitedWords, sayValue, whoOf } from './measure-words.js';
import { sayReason } from './say-reason.js';

export interface LimitWords {
  readonly who: string;
  readonly what: string;
  readonly wanted: string;
  /** null: there is none. */
  readonly value: string | null;
  /** '0.2 s too much'; null when it is met or has no value. */
  readonly off: string | null;
  /** Why it fails or is unknown, where the numbers do not say. */
  readonly why: string | null;
}

export function limitWords(limit: JudgedLimit, units: LengthUnit): LimitWords {
  const { load, sitter, measure, range, value, reason } = limit;
  const who = whoOf(load, sitter);
  const why = reason === null ? null : sayReason(reason, units);
  const what = limitedWords(measure);
  if (measure === null) return { who, what, wanted: 'a rest', value: null, off: null, why };
  const say = sayBeside(measure, range, units);
  return {
    who,
    what,
    wanted: sayRange(range, say),
    value: value === null ? null : say(value),
    off: sayOff(limit, say),
    why,
  };
}

function sayOff(
  { measure, range, value, margin }: JudgedLimit,
  say: (number: number) => string,
): string | null {
  if (value === null || margin === null || margin >= 0) return null;
  const counted = measure === 'restCount';
  const over = value > (range.max ?? Infinity);
  const way = over ? (counted ? 'too many' : 'too much') : counted ? 'too few' : 'too little';
  return `${sayShort(say(-margin), say(0))} ${way}`;
}

/** A shortfall that rounds to nothing is still one. */
const sayShort = (short: string, nothing: string): string => (short === nothing ? 'a little' : short);

export function sayRange({ min, max }: JudgedLimit['range'], say: (number: number) => string): string {
  if (min !== null && max !== null) return min === max ? say(min) : `${say(min)} to ${say(max)}`;
  if (min !== null) return `at least ${say(min)}`;
  return max === null ? 'any' : `at most ${say(max)}`;
}

export const sayWanted = (measure: MeasureKey, range: JudgedLimit['range'], units: LengthUnit): string =>
  sayRange(range, sayBeside(measure, range, units));

/** Values beside a range in a maker's digits; in finer ones where both of its ends would read as one number. */
function sayBeside(
  measure: MeasureKey,
  { min, max }: JudgedLimit['range'],
  units: LengthUnit,
): (value: number) => string {
  const say = (value: number): string => sayValue(measure, value, units);
  const asOne = min !== null && max !== null && min !== max && say(min) === say(max);
  return asOne ? (value) => sayFinely(measure, value, units) : say;
}

/** All of it in one line. */
export function sayLimit(limit: JudgedLimit, units: LengthUnit): string {
  const { who, what, wanted, value, off, why } = limitWords(limit, units);
  if (limit.measure === null) return `${who}: ${why ?? ''}`;
  if (value === null) return `${who}: ${what}, wanted ${wanted}: ${why ?? ''}`;
  return `${who}: ${what}: ${value}, wanted ${wanted}${off === null ? '' : `: ${off}`}`;
}
