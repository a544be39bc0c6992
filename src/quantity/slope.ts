/** An angle as a carpenter gives it: `1 in 12`, one up in twelve along. */
import { refuse } from './reading.js';
import { dash, matchAt, shown, skipSpaces } from './source-text.js';
import { readFraction, readMixedNumber, readPlainNumber, type WrittenNumber } from './written-number.js';

const signHere = new RegExp(`^\\s*(?<minus>${dash})?\\+?\\s*`, 'u');
const inHere = /^\s*in\s+(?=[\d.])/u;

/** The angle in radians, atan(rise / run); null when the text is no slope. */
export function readSlope(source: string): number | null {
  const sign = matchAt(source, 0, signHere)!;
  const riseAt = sign[0].length;
  const rise = readFraction(source, riseAt) ?? readNumber(source, riseAt);
  const between = rise && matchAt(source, rise.end, inHere);
  // Along is a whole, decimal or mixed number: `1 in 3/4` is a slip for 1 3/4 in.
  const run = between && readNumber(source, rise.end + between[0].length);
  if (!run || skipSpaces(source, run.end) < source.length) return null;
  if (run.value === 0) refuse(run.at, 'a slope such as `1 in 12`', shown(source), 'plumb is `90 deg`');
  return Math.atan(rise.value / run.value) * (sign.groups!.minus === undefined ? 1 : -1);
}

const readNumber = (source: string, at: number): WrittenNumber | null =>
  readMixedNumber(source, at) ?? readPlainNumber(source, at);
