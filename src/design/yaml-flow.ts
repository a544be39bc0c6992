/** A text of any letters, or a block of them, as it stands in a design file in one line and reads back as the very same. */
import { stringify } from 'yaml';

const oneLine = {
  collectionStyle: 'flow',
  lineWidth: 0,
  doubleQuotedAsJSON: true,
  singleQuote: true,
} as const;

/** Characters that the reader refuses, and those that move a cursor or break a line where a text is shown. */
const unwritten = /[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\uFFFD\uFEFF]|[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/u;
const eachUnwritten = new RegExp(unwritten, 'gu');

type Flow = string | number | boolean | readonly Flow[] | { readonly [key: string]: Flow };

/** `{ drawing: { file: chair.dxf, layer: "0" } }`: anywhere in a file, within `{ }` too. */
export function yamlFlow(value: Flow): string {
  if (typeof value === 'string') return yamlText(value);
  if (typeof value !== 'object') return String(value);
  if (Array.isArray(value)) return `[${(value as readonly Flow[]).map(yamlFlow).join(', ')}]`;
  const pairs = Object.entries(value).map(([key, inside]) => `${key}: ${yamlFlow(inside)}`);
  return `{ ${pairs.join(', ')} }`;
}

function yamlText(text: string): string {
  if (!unwritten.test(text)) {
    // As the only one of a list: what must be in quotes within [ ] and { } is.
    const [, written] = /^\[ (.*) \]\n$/su.exec(stringify([text], oneLine)) ?? [];
    if (written !== undefined && !written.includes('\n')) return written;
  }
  return JSON.stringify(text).replace(eachUnwritten, escaped);
}

const escaped = (character: string): string =>
  `\\u${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
