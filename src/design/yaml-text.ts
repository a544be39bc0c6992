/**
 * The text of a design file → YAML's own tree. Sizes are looked at before the tree is made, so no file can
 * exhaust the machine: the tokens are made without recursion, the tree with it.
 */
import { Composer, isAlias, isMap, isNode, Lexer, LineCounter, Parser, visit } from 'yaml';
import type { CST, Document, Node, ParsedNode } from 'yaml';
import { syntaxFault, type TextFault } from './syntax-fault.js';

export interface YamlText {
  readonly text: string;
  /** null: nothing but comments. */
  readonly root: ParsedNode | null;
  readonly lines: LineCounter;
}

export type YamlReading =
  | { readonly ok: true; readonly value: YamlText }
  | { readonly ok: false; readonly fault: TextFault; readonly lines: LineCounter };

/**
 * A design of a hundred parts has 20 kB, 5000 tokens, seven levels and twenty keys in a block: room enough for any
 * real one. Keys are sought and compared one with another, so they have the narrowest limit.
 */
const most = { characters: 4 * 1024 * 1024, tokens: 500_000, levels: 64, keys: 1000 };

/** The tags of the core schema; others could make dates, sets or bytes. */
const plainTags = ['str', 'int', 'float', 'bool', 'null', 'map', 'seq'].map(
  (tag) => `tag:yaml.org,2002:${tag}`,
);

const grammar = {
  version: '1.2',
  schema: 'core',
  strict: true,
  uniqueKeys: false,
  stringKeys: true,
} as const;

export function readYaml(source: string): YamlReading {
  const text = source.replace(/^\uFEFF/, '');
  const lines = linesOf(text);
  const refuse = (fault: TextFault): YamlReading => ({ ok: false, fault, lines });
  const unreadable = unreadableText(text);
  if (unreadable) return refuse(unreadable);
  const tokens = tokensOf(text);
  if (!Array.isArray(tokens)) return refuse(tokens);
  const documents = [...new Composer(grammar).compose(tokens, true, text.length)] as Document.Parsed[];
  const fault = faultIn(documents, text);
  return fault ? refuse(fault) : { ok: true, value: { text, root: documents[0]!.contents, lines } };
}

function linesOf(text: string): LineCounter {
  const lines = new LineCounter();
  for (let start = 0; start >= 0; start = text.indexOf('\n', start) + 1 || -1) lines.addNewLine(start);
  return lines;
}

function unreadableText(text: string): TextFault | undefined {
  if (text.length > most.characters) {
    return { at: null, expected: 'a design file of at most 4 MB', found: `${text.length} characters` };
  }
  const strange = /(?![\t\n\r])\p{Cc}|\uFFFD/u.exec(text);
  if (!strange) return undefined;
  const code = strange[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
  return {
    at: strange.index,
    expected: 'a text file in UTF-8',
    found: `the character U+${code}: no text, or not UTF-8`,
  };
}

/** The tokens of the text, or why there are too many of them. */
function tokensOf(text: string): CST.Token[] | TextFault {
  const parser = new Parser();
  const tokens: CST.Token[] = [];
  let count = 0;
  for (const lexeme of new Lexer().lex(text)) {
    tokens.push(...parser.next(lexeme));
    count += 1;
    if (parser.stack.length > most.levels) {
      return {
        at: parser.offset - 1,
        expected: `at most ${most.levels} levels, one inside another`,
        found: 'more',
      };
    }
    if (count > most.tokens)
      return { at: null, expected: `at most ${most.tokens} words and marks`, found: 'more' };
  }
  return [...tokens, ...parser.end()];
}

/** The first thing that keeps the text from being one plain document. */
function faultIn(documents: readonly Document.Parsed[], text: string): TextFault | undefined {
  const [first, second] = documents;
  const problem = [...first!.errors, ...first!.warnings].sort((a, b) => a.pos[0] - b.pos[0])[0];
  if (problem) return syntaxFault(problem, text, openingQuote(first!, problem.pos[0]));
  const version = first!.directives.yaml;
  if (version.explicit && version.version !== '1.2') {
    return { at: 0, expected: 'YAML 1.2', found: `YAML ${version.version}` };
  }
  if (second) {
    return { at: second.range[0], expected: 'one design in the file', found: 'a second document' };
  }
  return oddNodeIn(first!);
}

/** Where the quote opens that is not closed at an offset. */
function openingQuote(document: Document.Parsed, offset: number): number | undefined {
  let start: number | undefined;
  visit(document, {
    Scalar: (_, { range, type }) => {
      if (type?.startsWith('QUOTE') && range && range[0] < offset && offset <= range[2]) start = range[0];
    },
  });
  return start;
}

/** The first thing that is no plain tree: an alias or a tag, by which one value stands for another; or a block without end. */
function oddNodeIn(document: Document.Parsed): TextFault | undefined {
  let fault: TextFault | undefined;
  visit(document, (_, node) => {
    const words = isNode(node) ? oddityOf(node) : undefined;
    if (isNode(node) && words) fault = { at: node.range?.[0] ?? 0, ...words };
    return fault ? visit.BREAK : undefined;
  });
  return fault;
}

function oddityOf(node: Node): Omit<TextFault, 'at'> | undefined {
  if (isAlias(node)) return { expected: 'the value itself', found: `the alias *${node.source}` };
  if (node.tag !== undefined && !plainTags.includes(node.tag)) {
    const tag = node.tag.replace(/^tag:yaml.org,2002:/, '!!');
    return { expected: 'a value without a tag', found: `the tag ${tag}` };
  }
  if (!isMap(node) || node.items.length <= most.keys) return undefined;
  return { expected: `at most ${most.keys} keys in a block`, found: String(node.items.length) };
}
