/**
 * Path data in which no command goes on for long without being named again: `l 1 2 3 4 …` of a million numbers takes
 * svgpath hours, which cuts the first off the list of all that are left, one after another.
 */

export interface ShortRuns {
  readonly text: string;
  /** Where in the data a place of the text was. */
  readonly inData: (at: number) => number;
}

/** Below it nothing is gained. */
const fewestCharacters = 20_000;
/** Commands in a row under one letter. */
const longest = 500;

/** How many numbers each command takes. */
const takes: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7 };

const letter = /[a-z]/iy;
const number = /[\s,]*[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/iy;
/** Of an arc: they need no blank after them. */
const flag = /[\s,]*[01]/y;
const between = /[\s,]*/y;

/** The same data; what is no path data is left as it is from there on. */
export function shortRuns(data: string): ShortRuns {
  if (data.length < fewestCharacters) return { text: data, inData: (at) => at };
  const cuts: number[] = [];
  const parts: string[] = [];
  let written = 0;
  let at = after(between, data, 0)!;
  while (at < data.length) {
    const end = after(letter, data, at);
    const command = data[at]!;
    const count = takes[command.toLowerCase()];
    if (end === null) break;
    at = end;
    // Further places of a move are lines.
    const again = command === 'm' ? 'l' : command === 'M' ? 'L' : command;
    for (let row = 1; count !== undefined; row++) {
      const next = afterNumbers(data, at, count, again.toLowerCase() === 'a');
      if (next === null) break;
      if (row > 1 && row % longest === 1) {
        parts.push(data.slice(written, at), again);
        cuts.push(at);
        written = at;
      }
      at = next;
    }
    at = after(between, data, at)!;
  }
  return {
    text: [...parts, data.slice(written)].join(''),
    inData: (place) => place - cuts.filter((cut, i) => cut + i < place).length,
  };
}

function afterNumbers(data: string, from: number, count: number, isArc: boolean): number | null {
  let at: number | null = from;
  for (let i = 0; i < count && at !== null; i++)
    at = after(isArc && (i === 3 || i === 4) ? flag : number, data, at);
  return at;
}

/** Where what is looked for ends that begins at a place; null: it does not begin there. */
function after(sticky: RegExp, data: string, at: number): number | null {
  sticky.lastIndex = at;
  return sticky.test(data) ? sticky.lastIndex : null;
}
