/** Which token may stand beside which, before anything is computed. */
import { refuse } from './reading.js';
import { dash, shown } from './source-text.js';
import { endsValue, type Token } from './tokens.js';

/** Refuses tokens that do not make one expression: only a number may stand directly before a name. */
export function checkArrangement(source: string, tokens: readonly Token[]): void {
  tokens.forEach((token, index) => {
    checkNeighbours(source, tokens[index - 1], token);
    checkDashed(source, tokens, index);
  });
  checkBrackets(source, tokens);
  if (!endsValue(tokens.at(-1))) refuse(source.trimEnd().length, 'a value', 'the end of the text');
}

const text = (source: string, { at, end }: Token): string => shown(source.slice(at, end));

function checkNeighbours(source: string, last: Token | undefined, token: Token): void {
  if (endsValue(last)) {
    if (startsValue(token) && !isFactor(last!, token)) refuseProduct(source, last!, token);
  } else if (!startsValue(token) && !isFirstSign(last, token)) {
    refuse(token.at, 'a value', text(source, token));
  }
}

const startsValue = ({ kind }: Token): boolean =>
  ['literal', 'constant', 'name', 'function', 'open'].includes(kind);

/** One sign before a value is enough. */
const isFirstSign = (last: Token | undefined, token: Token): boolean =>
  token.kind === 'sign' && (token.sign === '+' || token.sign === '-') && last?.kind !== 'sign';

/** 2 radius, 1 1/2 pi. */
const isFactor = (last: Token, token: Token): boolean =>
  last.kind === 'literal' && last.bare !== null && (token.kind === 'name' || token.kind === 'constant');

function refuseProduct(source: string, last: Token, token: Token): never {
  const numbers = last.kind === 'literal' && token.kind === 'literal';
  const hint = numbers
    ? 'a mixed number is a whole number and a fraction, `1 3/4`; for a product write `*`'
    : 'for a product write `*`';
  const found = `${text(source, last)} before ${text(source, token)}`;
  refuse(token.at, 'one of + - * / between two values', found, hint);
}

/** `2*1-1/2`: 2 × 1½ or 2 × 1 - ½? A mixed number with a dash and without a unit is read only where it stands alone. */
function checkDashed(source: string, tokens: readonly Token[], index: number): void {
  const token = tokens[index]!;
  if (token.kind !== 'literal' || token.bare !== 'dashed') return;
  const before = tokens.slice(0, index).findLast(({ kind }) => kind !== 'sign');
  if (isEdge(before, 'open') && isEdge(tokens[index + 1], 'close')) return;
  const [whole, fraction] = source.slice(token.at, token.end).split(dashAnywhere);
  const hint = `write \`${whole!} ${fraction!}\` for one number, \`${whole!} - (${fraction!})\` for a difference`;
  refuse(token.at, 'a clear sum or difference', text(source, token), hint);
}

const dashAnywhere = new RegExp(dash);
const isEdge = (token: Token | undefined, bracket: 'open' | 'close'): boolean =>
  token === undefined || token.kind === bracket || token.kind === 'comma';

/** More brackets inside each other are a slip, and would be deep recursion. */
const deepest = 30;

function checkBrackets(source: string, tokens: readonly Token[]): void {
  const opened: { readonly at: number; readonly isList: boolean }[] = [];
  tokens.forEach(({ kind, at }, index) => {
    if (kind === 'open') opened.push({ at, isList: tokens[index - 1]?.kind === 'function' });
    if (opened.length > deepest)
      refuse(at, 'a simpler expression', `${opened.length} brackets inside each other`);
    if (kind === 'comma' && !opened.at(-1)?.isList) refuseComma(source, at);
    if (kind === 'close' && !opened.pop()) refuse(at, 'a bracket `(` before', '`)`');
  });
  const unclosed = opened.at(-1);
  if (unclosed) refuse(unclosed.at, 'a bracket `)` that closes this one', shown(source.slice(unclosed.at)));
}

function refuseComma(source: string, at: number): never {
  const before = /[\d.]+$/.exec(source.slice(0, at))?.[0];
  const after = /^\d+/.exec(source.slice(at + 1))?.[0];
  if (before === undefined || after === undefined) {
    refuse(at, 'a comma only between the values of a function', '`,`', 'a decimal point is written `.`');
  }
  const thousands =
    after.length === 3 && !before.includes('.')
      ? `, a thousand and more without a mark: \`${before}${after}\``
      : '';
  const hint = `a decimal point is written \`.\`: \`${before}.${after}\`${thousands}`;
  refuse(at, 'a number without a comma', `\`${before},${after}\``, hint);
}
