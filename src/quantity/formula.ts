/**
 * The order of operations, left to mathjs's parser. It sees placeholders only: no number, unit or name of the text
 * reaches it, and in its answer only the nodes below have a meaning.
 */
import { create, parseDependencies, type FactoryFunctionMap } from 'mathjs/number';
import { once } from '../kept.js';
import { dimensionOf } from './dimension.js';
import {
  applied,
  constantTerm,
  difference,
  nameTerm,
  negative,
  power,
  product,
  quotient,
  sum,
  type Term,
} from './term.js';
import type { NameScope, Token } from './tokens.js';

interface SymbolNode {
  readonly type: 'SymbolNode';
  readonly name: string;
}
type Node =
  | SymbolNode
  | { readonly type: 'ParenthesisNode'; readonly content: Node }
  | { readonly type: 'FunctionNode'; readonly fn: SymbolNode; readonly args: readonly Node[] }
  | { readonly type: 'OperatorNode'; readonly fn: string; readonly args: readonly Node[] };

interface Text {
  readonly source: string;
  readonly tokens: readonly Token[];
  readonly scope: NameScope;
}

/** The term that well arranged tokens stand for. */
export function termOf(text: Text): Term {
  return walk(withoutOrder(text.tokens) ?? parsed(text.tokens), text);
}

const operations = { '+': 'add', '-': 'subtract', '*': 'multiply', '/': 'divide', '^': 'pow' } as const;

/** One value, one with a sign, or two with an operator have no order to find; most values of a design are such. */
function withoutOrder(tokens: readonly Token[]): Node | null {
  const operands = tokens.flatMap(({ kind }, index) =>
    kind === 'literal' || kind === 'constant' || kind === 'name' ? [symbol(index)] : [],
  );
  const [first, second] = tokens;
  if (tokens.length === 1) return operands[0] ?? null;
  if (tokens.length === 2 && first!.kind === 'sign' && operands.length === 1)
    return { type: 'OperatorNode', fn: first!.sign === '-' ? 'unaryMinus' : 'unaryPlus', args: operands };
  if (tokens.length === 3 && second!.kind === 'operator' && operands.length === 2)
    return { type: 'OperatorNode', fn: operations[second!.sign], args: operands };
  return null;
}

const symbol = (index: number): SymbolNode => ({ type: 'SymbolNode', name: `q${index}` });

function parsed(tokens: readonly Token[]): Node {
  return parser()(tokens.map(placeholder).join(' ')) as unknown as Node;
}

/** Made when it is first needed: to start it takes longer than to read a small design. */
const parser = once(
  // mathjs declares each of its `…Dependencies` as possibly undefined.
  () => create({ parseDependencies } as unknown as FactoryFunctionMap).parse,
);

function placeholder(token: Token, index: number): string {
  if (token.kind === 'operator' || token.kind === 'sign') return token.sign;
  return { open: '(', close: ')', comma: ',' }[token.kind as string] ?? symbol(index).name;
}

const tokenOf = ({ name }: SymbolNode, { tokens }: Text): Token => tokens[Number(name.slice(1))]!;

function walk(node: Node, text: Text): Term {
  switch (node.type) {
    case 'SymbolNode':
      return leaf(tokenOf(node, text), text.scope);
    case 'ParenthesisNode':
      return inBrackets(walk(node.content, text), text.tokens);
    case 'FunctionNode':
      return call(tokenOf(node.fn, text), node.args, text);
    case 'OperatorNode':
      return operation(node.fn, node.args, text);
    default:
      return meaningless((node as Node).type);
  }
}

function leaf(token: Token, scope: NameScope): Term {
  switch (token.kind) {
    case 'literal':
      return constantTerm(token, token.value, token.dimension);
    case 'constant':
      return constantTerm(token, token.value, dimensionOf.number);
    case 'name':
      return nameTerm(token, token.name, scope.dimensionOf(token.name)!);
    default:
      return meaningless(token.kind);
  }
}

function inBrackets(content: Term, tokens: readonly Token[]): Term {
  const open = tokens.findLast(({ kind, at }) => kind === 'open' && at < content.at)!;
  return { ...content, at: open.at, end: closeBehind(content, tokens) };
}

const closeBehind = ({ end }: Term, tokens: readonly Token[]): number =>
  tokens.find(({ kind, at }) => kind === 'close' && at >= end)!.end;

function call(token: Token, nodes: readonly Node[], text: Text): Term {
  if (token.kind !== 'function') return meaningless(token.kind);
  const args = nodes.map((node) => walk(node, text));
  return applied(token.name, args, { at: token.at, end: closeBehind(args.at(-1)!, text.tokens) });
}

function operation(fn: string, nodes: readonly Node[], text: Text): Term {
  const [a, b] = nodes.map((node) => walk(node, text));
  switch (fn) {
    case 'unaryPlus':
      return a!;
    case 'unaryMinus':
      return negative(a!);
    case 'add':
      return sum(text.source, a!, b!);
    case 'subtract':
      return difference(text.source, a!, b!);
    case 'multiply':
      return product(a!, b!);
    case 'divide':
      return quotient(a!, b!);
    case 'pow':
      return power(text.source, a!, b!);
    default:
      return meaningless(fn);
  }
}

function meaningless(what: string): never {
  throw new RangeError(`termOf: no meaning for ${what}`);
}
