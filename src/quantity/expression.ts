/** An expression such as `sqrt(radius^2 - (reach/2)^2) + 1/4 in`: its dimension, and its value for given names. */
import { checkArrangement } from './arrangement.js';
import { dimensionOf, type Dimension } from './dimension.js';
import { termOf } from './formula.js';
import { readingOf, refuse, type Reading } from './reading.js';
import { refuseLong, shown } from './source-text.js';
import { constantTerm, type Term } from './term.js';
import { tokensOf, type NameScope, type Token } from './tokens.js';

export type { NameScope } from './tokens.js';

export interface Expression {
  readonly dimension: Dimension;
  /** The names it uses, each once, in their order. */
  readonly names: readonly string[];
  /** SI; may be infinite or NaN. @throws RangeError when a name has no value. */
  readonly valueIn: (names: ReadonlyMap<string, number>) => number;
}

/** Reads a text, or a number as YAML gives it. */
export function compileExpression(source: string | number, scope: NameScope): Reading<Expression> {
  return readingOf(() => {
    if (typeof source === 'number') return expressionOf(String(source), numberTerm(source), []);
    const tokens = arrangedTokens(source, scope);
    return expressionOf(source, termOf({ source, tokens, scope }), namesOf(tokens));
  });
}

const numberTerm = (value: number): Term => constantTerm({ at: 0, end: 0 }, value, dimensionOf.number);

function arrangedTokens(source: string, scope: NameScope): readonly Token[] {
  refuseLong(source);
  if (source.trim() === '') refuse(0, 'a value', 'nothing');
  const tokens = tokensOf(source, scope);
  checkArrangement(source, tokens);
  return tokens;
}

function expressionOf(
  source: string,
  { constant, dimension, valueIn }: Term,
  names: readonly string[],
): Expression {
  if (constant) {
    const value = valueIn(new Map());
    if (!Number.isFinite(value)) refuse(0, 'a finite number', shown(source), whyNotFinite(value));
  }
  return { dimension, names, valueIn };
}

const whyNotFinite = (value: number): string =>
  Number.isNaN(value) ? 'a root of a negative number, or 0/0' : 'a division by 0, or too large a number';

function namesOf(tokens: readonly Token[]): readonly string[] {
  return [...new Set(tokens.flatMap((token) => (token.kind === 'name' ? [token.name] : [])))];
}

/** Takes any word for a name. */
const anyName: NameScope = { dimensionOf: () => dimensionOf.number, known: [] };

/** The names a text uses, before their dimensions are known; none when it cannot be read. */
export function namesIn(source: string | number): readonly string[] {
  if (typeof source === 'number') return [];
  const tokens = readingOf(() => arrangedTokens(source, anyName));
  return tokens.ok ? namesOf(tokens.value) : [];
}
