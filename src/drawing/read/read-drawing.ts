/** Reads a drawing file of any kind that is known, by what is in it. */
import type { DrawingRead } from './drawn.js';
import { readDxf } from './dxf.js';
import { readSvg } from './svg.js';

export function readDrawing(bytes: Uint8Array): DrawingRead {
  const text = textOf(bytes);
  const found = whatElse(text);
  if (found !== undefined) return refused(found);
  return text
    .replace(/^\ufeff/, '')
    .trimStart()
    .startsWith('<')
    ? readSvg(text)
    : readDxf(text);
}

/**
 * How files begin that are no drawings, and what they are (ZIP’s APPNOTE 4.3.7, RFC 1952, ISO 32000; of DWG from memory). A
 * byte of 0x8b is U+2039 in windows-1252, in Node 20 as in Latin 1.
 */
const beginnings = [
  ['PK\u0003', 'a packed file'],
  ['\u001f\u2039', 'a packed file'],
  ['\u001f\u008b', 'a packed file'],
  ['AC10', 'a DWG file'],
  ['%PDF-', 'a PDF file'],
] as const;

function whatElse(text: string): string | undefined {
  const [, known] = beginnings.find(([begins]) => text.startsWith(begins)) ?? [];
  // Further on a name may hold one; a binary DXF has it after 18 letters, and is known by them.
  return known ?? (text.slice(0, 16).includes('\u0000') ? 'bytes that are no text' : undefined);
}

const refused = (found: string): DrawingRead => ({
  ok: false,
  flaws: [
    {
      ...{ line: 1, expected: 'a DXF file in ASCII, or an SVG file', found },
      hint: 'write the drawing as plain DXF or SVG, in UTF-8, neither packed nor binary',
    },
  ],
});

/**
 * UTF-16 where its mark says so, UTF-8 where it is that; older drawings have names in a codepage of one byte a letter,
 * numbers are the same in all.
 */
function textOf(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
