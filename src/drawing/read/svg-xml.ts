/** The elements of an SVG file. XML that is not well-formed is refused where it first goes wrong, entities of its own too. */
import { SaxesParser, type SaxesOptions, type SaxesTagNS } from 'saxes';
import type { DrawingFlaw } from './drawn.js';
import { quoted, svgAttributes, type SvgAttribute, type SvgElement } from './svg-element.js';
import { Unreadable, untilUnreadable, type Refused } from './unreadable.js';

export type ElementsRead = { readonly ok: true; readonly root: SvgElement } | Refused;

/** Drawings nest a dozen deep; what is far deeper is meant to exhaust the reader. */
const deepest = 64;

const svgNamespace = 'http://www.w3.org/2000/svg';
const linkNamespace = 'http://www.w3.org/1999/xlink';

export function readElements(text: string): ElementsRead {
  const start = /^\uFEFF?\s*([^]{0,40})/.exec(text)?.[1] ?? '';
  if (!start.startsWith('<')) return refused(notXml(start));
  return untilUnreadable(() => ({ ok: true, root: elementsOf(text) }));
}

const refused = (flaw: DrawingFlaw): ElementsRead => ({ ok: false, flaws: [flaw] });

function notXml(start: string): DrawingFlaw {
  const plain = !/[^\t\n\r -~\u00a0-\ufffc]/.test(start);
  const hint =
    start === ''
      ? {}
      : { hint: plain ? 'is it another kind of drawing?' : 'is it compressed (svgz), or not in UTF-8?' };
  const found = plain ? quoted(start) : 'what is no text';
  return { line: 1, column: 1, expected: 'an SVG file, which begins with <', found, ...hint };
}

type Building = SvgElement & { readonly children: SvgElement[]; text: string };

function elementsOf(text: string): SvgElement {
  // A prefix without a namespace says nothing of where lines are drawn.
  const resolvePrefix = (prefix: string) => (prefix === '' ? undefined : `undeclared:${prefix}`);
  const parser = new SaxesParser<SaxesOptions & { xmlns: true }>({
    xmlns: true,
    position: true,
    resolvePrefix,
  });
  const open: Building[] = [];
  let [root, line, at]: [SvgElement | null, number, number] = [null, 1, 0];
  const here = (): { line: number; column: number } => ({
    line: parser.line,
    column: Math.max(1, parser.column),
  });
  parser.on('error', ({ message }) => {
    throw new Unreadable({ ...here(), ...wordsFor(message) });
  });
  parser.on('opentagstart', () => {
    // The name, and the one character that ends it, are read.
    const last = parser.position - 1;
    line = parser.line - (/[\r\n]/.test(text.charAt(last)) ? 1 : 0);
    at = text.lastIndexOf('<', last);
  });
  parser.on('opentag', (tag) => {
    const { name, attributes } = nameAndAttributes(tag);
    const element: Building = { name, attributes, children: [], text: '', line, at };
    if (root === null && tag.local !== 'svg') throw new Unreadable({ line, column: 1, ...notSvg(tag) });
    if (root === null && element.name !== 'svg')
      throw new Unreadable({ line, column: 1, ...otherNamespace(tag) });
    if (open.length >= deepest) throw new Unreadable({ ...here(), ...tooDeep });
    root ??= element;
    open.at(-1)?.children.push(element);
    open.push(element);
  });
  parser.on('closetag', () => open.pop());
  const keep = (words: string): void => {
    const element = open.at(-1);
    if (element?.name === 'style') element.text += words;
  };
  parser.on('text', keep);
  parser.on('cdata', keep);
  parser.write(text).close();
  return root!;
}

const tooDeep = {
  expected: `no more than ${deepest} elements inside each other`,
  found: 'more',
};

const notSvg = ({ name }: SaxesTagNS) => ({
  expected: 'svg as the outermost element',
  found: `<${name.slice(0, 40)}>`,
});

const otherNamespace = ({ uri }: SaxesTagNS) => ({
  expected: `xmlns="${svgNamespace}" on the outermost element`,
  found: quoted(uri),
});

/** By what the parser says of it. */
function wordsFor(message: string): Pick<DrawingFlaw, 'expected' | 'found' | 'hint'> {
  const found = message.replace(/^.*?\d+:\d+: /, '').replace(/\.$/, '');
  const expected = 'a well-formed XML file';
  if (/^undefined entity/.test(found))
    return {
      expected,
      found,
      hint: 'entities that a file defines itself are not read: save it as plain SVG',
    };
  if (/^unclosed tag|^unexpected end/.test(found)) return { expected, found, hint: 'is it all of the file?' };
  return { expected, found };
}

const known: ReadonlySet<string> = new Set(svgAttributes);

function nameAndAttributes(tag: SaxesTagNS): Pick<SvgElement, 'name' | 'attributes'> {
  const attributes: Partial<Record<SvgAttribute, string>> = {};
  for (const written in tag.attributes) {
    const { prefix, local, uri, value } = tag.attributes[written]!;
    // Layers are named by a label with the drawing program’s own prefix.
    const linked = prefix === 'xlink' || uri === linkNamespace;
    const name = prefix === '' || local === 'label' ? local : linked ? `xlink:${local}` : '';
    if (known.has(name)) attributes[name as SvgAttribute] = value;
  }
  const ofSvg = tag.uri === svgNamespace || tag.uri === '';
  return { name: ofSvg ? tag.local : `${tag.prefix}:${tag.local}`, attributes };
}
