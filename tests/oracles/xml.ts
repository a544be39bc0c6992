/**
 * A strict reader of the XML that a report is made of, by Extensible Markup Language 1.0, fifth edition (2008): elements,
 * attributes, text, references. What it does not know (comments, CDATA, a DTD) it refuses, as it does what is not well-formed.
 */
export interface Node {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Node[];
  /** The element's own text, that of its children left out. */
  readonly text: string;
}

/** Production 2, Char: all that may stand in a document. */
const forbidden = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/u;
const declaration = /^<\?xml version="1\.0" encoding="UTF-8"\?>\s*/;
const startTag = /<([A-Za-z_][\w.-]*)((?:\s+[A-Za-z_][\w.:-]*="[^"<]*")*)\s*(\/?)>/y;
const attribute = /\s+([A-Za-z_][\w.:-]*)="([^"<]*)"/g;
const endTag = /<\/([A-Za-z_][\w.-]*)\s*>/y;
const plainText = /[^<]+/y;

/** @throws Error saying what is not well-formed. */
export function readXml(document: string): Node {
  const at = forbidden.exec(document);
  if (at) throw new Error(`U+${document.codePointAt(at.index)!.toString(16)} may not stand in a document`);
  const head = declaration.exec(document)?.[0].length ?? 0;
  const { node, end } = readElement(document, head);
  if (document.slice(end).trim() !== '') throw new Error('something stands after the root element');
  return node;
}

function readElement(document: string, from: number): { node: Node; end: number } {
  const start = matchAt(startTag, document, from);
  if (!start) throw new Error(`no element at ${from}: ${document.slice(from, from + 30)}`);
  const [tag, name, written, closed] = start;
  const attributes = attributesOf(written!);
  let at = from + tag.length;
  const children: Node[] = [];
  let text = '';
  while (closed === '') {
    const words = matchAt(plainText, document, at);
    const end = matchAt(endTag, document, at);
    if (words) {
      text += textOf(words[0]);
      at += words[0].length;
    } else if (end) {
      if (end[1] !== name) throw new Error(`</${end[1]!}> closes <${name!}>`);
      at += end[0].length;
      break;
    } else {
      const child = readElement(document, at);
      children.push(child.node);
      at = child.end;
    }
  }
  return { node: { name: name!, attributes, children, text }, end: at };
}

function matchAt(pattern: RegExp, document: string, at: number): RegExpExecArray | null {
  const sticky = new RegExp(pattern);
  sticky.lastIndex = at;
  return sticky.exec(document);
}

function attributesOf(written: string): Record<string, string> {
  const found = [...written.matchAll(attribute)].map(([, name, value]) => [name!, value!] as const);
  const names = found.map(([name]) => name);
  if (new Set(names).size < names.length) throw new Error(`an attribute stands twice in${written}`);
  // Section 3.3.3: a white space character as such is read as a space, one written as a reference is kept.
  return Object.fromEntries(found.map(([name, value]) => [name, resolved(value.replace(/[\t\n\r]/g, ' '))]));
}

function textOf(words: string): string {
  if (words.includes(']]>')) throw new Error(']]> may not stand in text');
  // Section 2.11: line ends are read as line feeds.
  return resolved(words.replace(/\r\n?/g, '\n'));
}

const predefined: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

function resolved(text: string): string {
  return text.replace(/&([^;]*;)?/g, (whole, reference: string | undefined) => {
    const word = (reference ?? '').slice(0, -1);
    const code = /^#(?:(\d+)|x([\da-f]+))$/i.exec(word);
    const sign = code
      ? String.fromCodePoint(parseInt(code[1] ?? code[2]!, code[1] === undefined ? 16 : 10))
      : predefined[word];
    if (sign === undefined || forbidden.test(sign)) throw new Error(`${whole} refers to nothing`);
    return sign;
  });
}

export const everyNode = (node: Node): Node[] => [node, ...node.children.flatMap(everyNode)];
