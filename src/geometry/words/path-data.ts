/** The text of SVG path data (SVG 1.1, chapter 8) as absolute commands by subpath, in the data's own unit. */
import svgpath from 'svgpath';
import type { Built, Flaw } from '../flaw.js';
import type { Point } from '../point.js';
import { shortRuns } from './long-runs.js';

type Path = ReturnType<typeof svgpath>;

/** L, H, V, C, Q, A or Z with absolute places. */
export type Segment = Parameters<Parameters<Path['iterate']>[0]>[0];

export interface Command {
  readonly segment: Segment;
  /** Where the pen stands before it. */
  readonly from: Point;
}

export interface SubpathData {
  /** Never empty. */
  readonly commands: readonly Command[];
  /** Where it starts in the text, characters from 0. */
  readonly at: number;
}

/** Subpaths in order; those of a mere M, which draw nothing, are left out. */
export function readPathData(data: string): Built<{ subpaths: readonly SubpathData[] }> {
  if (data.length > mostCharacters) return { ok: false, flaws: [tooLong(data)] };
  const { text, inData } = shortRuns(data);
  const path = svgpath(text);
  // What svgpath could not read stands in `err`, which its types leave out.
  const { err } = path as unknown as { err: string };
  const flaws = syntaxFlaws(data, err, inData);
  if (flaws.length > 0) return { ok: false, flaws };
  const groups = bySubpath(path);
  // Mostly one, which starts where the data does.
  const starts = groups.length === 1 ? [data.search(/\S/)] : subpathStarts(data);
  const subpaths = groups.map((commands, i) => ({ commands, at: starts[i]! }));
  const overflows = subpaths.filter(({ commands }) => !commands.every(hasFiniteNumbers)).map(tooLarge);
  if (overflows.length > 0) return { ok: false, flaws: overflows };
  return { ok: true, subpaths: subpaths.filter(({ commands }) => commands.length > 0) };
}

/** A hundred thousand places: more is no outline of a part, and half a gigabyte to read. */
const mostCharacters = 2_000_000;

const tooLong = ({ length }: string): Flaw => ({
  expected: `path data of ${mostCharacters} characters at most`,
  found: String(length),
  at: 0,
});

function hasFiniteNumbers({ segment }: Command): boolean {
  for (let i = 1; i < segment.length; i++) if (!Number.isFinite(segment[i])) return false;
  return true;
}

const tooLarge = ({ at }: SubpathData): Flaw => ({
  expected: 'finite numbers',
  found: 'one too large to count with',
  at,
});

/** A subpath starts with M, or after a Z where the closed one started. */
function bySubpath(path: Path): Command[][] {
  const subpaths: Command[][] = [];
  let current: Command[] = [];
  let before = '';
  const plain = path.abs().unshort();
  plain.iterate((segment, _index, x, y) => {
    const moves = segment[0] === 'M';
    if (moves || before === 'Z') subpaths.push((current = []));
    if (!moves) current.push({ segment, from: { x, y } });
    before = segment[0];
  });
  return subpaths;
}

/** The same commands in the text: every letter but an exponent's is one. */
const start = /m|[a-df-ln-z](?<=z\s*.)/gi;

const subpathStarts = (data: string): number[] => Array.from(data.matchAll(start), ({ index }) => index);

const anyCommand = 'a path command (M L H V C S Q T A Z) or a number';

/** By the words svgpath uses for what it could not read. */
const expectedBy: readonly (readonly [RegExp, string])[] = [
  [/string should start/, 'path data that starts with M'],
  [/arc flag/, 'an arc flag, 0 or 1'],
  [/missed param|param should start|exponent/, 'a number'],
  [/numbers started with/, 'a number without leading zeros'],
];

function syntaxFlaws(data: string, err: string, inData: (at: number) => number): Flaw[] {
  const place = /at pos (\d+)/.exec(err)?.[1];
  const failed = err === '' ? data.length : place === undefined ? data.search(/\S/) : inData(Number(place));
  // svgpath also reads R, a curve through points, which is no command of SVG 1.1.
  const letterR = data.search(/r/i);
  if (letterR >= 0 && letterR < failed) return [flawAt(data, letterR, anyCommand)];
  if (err === '') return [];
  const expected = expectedBy.find(([pattern]) => pattern.test(err))?.[1];
  return [flawAt(data, failed, expected ?? anyCommand)];
}

const flawAt = (data: string, at: number, expected: string): Flaw => ({
  expected,
  found: textAt(data, at),
  at,
});

function textAt(data: string, at: number): string {
  const excerpt = data.slice(at).trim();
  if (excerpt === '') return 'the end of the data';
  return excerpt.length > 16 ? `"${excerpt.slice(0, 16)}…"` : `"${excerpt}"`;
}
