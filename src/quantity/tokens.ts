/**
 * Cuts a source text into values, names, functions and signs.
 * A written quantity is one token; which token may stand beside which is checked in arrangement.ts.
 */
import { dimensionOf, type Dimension } from './dimension.js';
import { functions } from './functions.js';
import { readDivisor, readLiteral, refuseStuck, type Literal } from './literal.js';
import { refuse } from './reading.js';
import {
  characterAt,
  dash,
  degreeMark,
  doubleMark,
  matchAt,
  singleMark,
  skipSpaces,
  slash,
  wordAt,
} from './source-text.js';
import { constants } from './units.js';
import { refuseWord } from './unknown-word.js';

export type Sign = '+' | '-' | '*' | '/' | '^';

/** What a token is; `sign` stands before a value, `operator` between two. */
type TokenKind =
  | ({ readonly kind: 'literal' } & Pick<Literal, 'value' | 'dimension' | 'bare'>)
  | { readonly kind: 'constant'; readonly value: number }
  | { readonly kind: 'name' | 'function'; readonly name: string }
  | { readonly kind: 'operator' | 'sign'; readonly sign: Sign }
  | { readonly kind: 'open' | 'close' | 'comma' };
export type Token = TokenKind & { readonly at: number; readonly end: number };

/** The names an expression may use. */
export interface NameScope {
  dimensionOf(name: string): Dimension | undefined;
  /** All of them, for the one nearest to a slip. */
  readonly known: readonly string[];
}

export function tokensOf(source: string, scope: NameScope): readonly Token[] {
  const tokens: Token[] = [];
  for (let at = skipSpaces(source, 0); at < source.length; at = skipSpaces(source, tokens.at(-1)!.end)) {
    tokens.push(...readTokens(source, at, tokens, scope));
  }
  return tokens;
}

/** One token, or two for a raised digit: a power and its exponent. */
function readTokens(
  source: string,
  at: number,
  before: readonly Token[],
  scope: NameScope,
): readonly Token[] {
  const raised = matchAt(source, at, /^[²³]/u)?.[0];
  if (raised !== undefined) return raisedDigit(source, at, Number(raised.normalize('NFKC')));
  const literal = isBehindDivision(before) ? readDivisor(source, at) : readLiteral(source, at);
  if (literal) return [{ kind: 'literal', at, ...literal }];
  const word = wordAt(source, at);
  if (word !== null) return [readWord(source, at, word, scope)];
  return [readSign(source, at, before.at(-1))];
}

function raisedDigit(source: string, at: number, value: number): readonly Token[] {
  const end = at + 1;
  refuseStuck(source, at, end);
  const exponent = { kind: 'literal', value, dimension: dimensionOf.number, bare: 'whole' } as const;
  return [
    { kind: 'operator', sign: '^', at, end },
    { ...exponent, at, end },
  ];
}

function isBehindDivision(before: readonly Token[]): boolean {
  const last = before.findLast(({ kind }) => kind !== 'sign');
  return last?.kind === 'operator' && (last.sign === '/' || last.sign === '^');
}

function readWord(source: string, at: number, name: string, scope: NameScope): Token {
  const end = at + name.length;
  const value = constants.get(name);
  if (value !== undefined) return { kind: 'constant', value, at, end };
  if (functions.has(name) && matchAt(source, end, /^\s*\(/u)) return { kind: 'function', name, at, end };
  if (scope.dimensionOf(name)) return { kind: 'name', name, at, end };
  return refuseWord(source, at, name, scope.known);
}

const signs: readonly (readonly [RegExp, Sign])[] = [
  [/^\+/, '+'],
  [new RegExp(`^${dash}`), '-'],
  [/^[*×·⋅]/, '*'],
  [new RegExp(`^(?:${slash}|÷)`), '/'],
  [/^\^/, '^'],
];

function readSign(source: string, at: number, last: Token | undefined): Token {
  const end = at + 1;
  const sign = signs.find(([pattern]) => matchAt(source, at, pattern))?.[1];
  if (sign !== undefined) return { kind: endsValue(last) ? 'operator' : 'sign', sign, at, end };
  switch (source[at]) {
    case '(':
      return { kind: 'open', at, end };
    case ')':
      return { kind: 'close', at, end };
    case ',':
      return { kind: 'comma', at, end };
    default:
      return refuseCharacter(source, at);
  }
}

/** Whether a value may end with this token. */
export const endsValue = (token: Token | undefined): boolean =>
  token !== undefined && ['literal', 'constant', 'name', 'close'].includes(token.kind);

const markHere = new RegExp(`^(?:${doubleMark}|${singleMark}|${degreeMark})`);
const characterHints: readonly (readonly [RegExp, string])[] = [
  [markHere, 'a mark stands straight behind a number'],
  [/^[[\]{}]/, 'brackets are round: ( )'],
  [/^\.\./, 'a range stands only where a range is wanted'],
  [/^\./, 'a point has a digit behind it: `0.5`'],
  [/^%/, 'a share is a plain number: `0.25`'],
];

function refuseCharacter(source: string, at: number): never {
  const hint = characterHints.find(([pattern]) => matchAt(source, at, pattern))?.[1];
  refuse(at, 'a number, a name or one of + - * / ^ ( )', characterAt(source, at), hint);
}
