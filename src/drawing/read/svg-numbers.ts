/** Numbers one after the other, as `points`, `viewBox` and the brackets of `transform` hold them: `1,2 3-4.5.6e1`. */

export interface NumberList {
  readonly numbers: readonly number[];
  /** Where something that is no number stands, characters from 0; null: nowhere. */
  readonly strayAt: number | null;
}

/** Between two numbers stand spaces, one comma with spaces around it, or nothing. Takes no longer on wrong text. */
const next = /\s*(?:,\s*)?([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?)/y;

export function numbersIn(text: string): NumberList {
  const numbers: number[] = [];
  const end = text.trimEnd().length;
  let at = 0;
  while (at < end) {
    next.lastIndex = at;
    const found = next.exec(text);
    const stray = found === null || (numbers.length === 0 && /^\s*,/.test(found[0]));
    if (stray) return { numbers, strayAt: at + /^\s*/.exec(text.slice(at))![0].length };
    numbers.push(Number(found[1]));
    at = next.lastIndex;
  }
  return { numbers, strayAt: null };
}
