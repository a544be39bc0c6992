/** XML 1.0 as text: elements with attributes, indented; nothing that the recommendation forbids gets through. */
export interface XmlElement {
  readonly name: string;
  /** Those that are null are left out. */
  readonly attributes: Readonly<Record<string, string | number | null>>;
  readonly content: readonly XmlElement[] | string;
}

export const printXml = (root: XmlElement): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${printElement(root, '')}\n`;

function printElement({ name, attributes, content }: XmlElement, indent: string): string {
  const given = Object.entries(attributes).filter(([, value]) => value !== null);
  const start = [name, ...given.map(([key, value]) => `${key}="${inAttribute(String(value))}"`)].join(' ');
  if (content.length === 0) return `${indent}<${start}/>`;
  if (typeof content === 'string') return `${indent}<${start}>${inText(content)}</${name}>`;
  const inner = content.map((child) => printElement(child, `${indent}  `));
  return [`${indent}<${start}>`, ...inner, `${indent}</${name}>`].join('\n');
}

/** Extensible Markup Language 1.0, fifth edition, production 2: all but these may stand in a document. */
const forbidden = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu;

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** A carriage return would be read as a line feed (section 2.11). */
export const inText = (text: string): string =>
  text
    .replace(forbidden, '')
    .replace(/[&<>]/g, (sign) => entities[sign]!)
    .replaceAll('\r', '&#13;');

/** Tabs and line feeds would be read as spaces (section 3.3.3). */
const inAttribute = (text: string): string =>
  inText(text)
    .replaceAll('"', entities['"']!)
    .replace(/[\t\n]/g, (sign) => `&#${sign.charCodeAt(0)};`);
