/** A range of wanted values: `1.8 s .. 2.6 s`, `4 deg ..`, `.. 50 mm`. */
import type { NameScope } from './expression.js';
import { compileQuantity, type Quantity, type Want } from './quantity.js';
import { readingFrom, readingOf, refuse, type Reading } from './reading.js';
import { refuseLong, shown, skipSpaces } from './source-text.js';

export interface QuantityRange {
  readonly min: Quantity | null;
  readonly max: Quantity | null;
}

export function compileRange(source: string | number, want: Want, scope: NameScope): Reading<QuantityRange> {
  return readingOf(() => {
    const text = String(source);
    refuseLong(text);
    const at = dotsAt(text);
    const min = readEnd(text, 0, at, want, scope);
    const max = readEnd(text, at + 2, text.length, want, scope);
    if (!min && !max)
      refuse(at, 'an end on at least one side of `..`', '`..` alone', 'for no limit write `off`');
    refuseReversed(text, min, max);
    return { min, max };
  });
}

const form = 'a range `a .. b`, `a ..` or `.. b`';

/** Where the two dots stand. */
function dotsAt(text: string): number {
  const at = text.indexOf('..');
  if (text.trim() === '') refuse(0, form, 'nothing');
  if (at < 0) refuse(skipSpaces(text, 0), form, shown(text), rangeHint(text));
  const more = text.slice(at + 2).search(/\.\.|^\./);
  if (more >= 0) refuse(at + 2 + more, form, `more dots in ${shown(text)}`, 'two dots, once');
  return at;
}

/** What a comparison, a dash or a single value probably means. */
function rangeHint(text: string): string {
  const value = text.replace(/^\s*[<>≤≥=]+/u, '').trim();
  if (/^\s*(?:>|≥|=>)/u.test(text)) return `at least that is \`${value} ..\``;
  if (/^\s*(?:<|≤|=<)/u.test(text)) return `at most that is \`.. ${value}\``;
  const dashed = /^(.*\S)\s+(?:-|–|—|to)\s+(\S.*)$/u.exec(value);
  if (dashed) return `from one to the other is \`${dashed[1]!} .. ${dashed[2]!}\``;
  if (/…/u.test(text)) return 'two dots `..`, not the one character `…`';
  return `at least that is \`${value} ..\`, at most that is \`.. ${value}\``;
}

function readEnd(text: string, from: number, to: number, want: Want, scope: NameScope): Quantity | null {
  const end = text.slice(from, to);
  return end.trim() === '' ? null : readingFrom(from, compileQuantity(end, want, scope));
}

/** Ends that names move are compared by whoever knows the names. */
function refuseReversed(text: string, min: Quantity | null, max: Quantity | null): void {
  if (!min || !max || min.names.length + max.names.length > 0) return;
  const [low, high] = [min, max].map(({ valueIn }) => valueIn(new Map())) as [number, number];
  if (low > high) refuse(skipSpaces(text, 0), 'the lower end first', shown(text), 'swap the ends');
}
