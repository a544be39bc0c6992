/** Reads a drawing file of any kind that is known, by what is in it. */
import type { DrawingRead } from './drawn.js';
import { isBinaryDxf, readDxf } from './dxf.js';
import { readSvg } from './svg.js';

export function readDrawing(bytes: Uint8Array): DrawingRead {
  const text = textOf(bytes);
  if (!isBinaryDxf(text)) {
    const [, found] = noText.find(([begins]) => begins.test(text)) ?? [];
    if (found !== undefined) return refused(found);
  }
  return text
    .replace(/^\ufeff/, '')
    .trimStart()
    .startsWith('<')
    ? readSvg(text)
    : readDxf(text);
}

/** How files begin that cannot be read, and what they are; those of any sort with NUL are no text. */
const noText: readonly (readonly [RegExp, string])[] = [
  // A byte of 0x8b is U+2039 in windows-1252; Node 20 takes it for Latin 1.
  [/^(?:PK[\u0003\u0005]|\u001f[\u008b\u2039])/, 'a packed file'],
  [/^AC1\d\d\d\u0000/, 'a DWG file'],
  [/^%PDF-/, 'a PDF file'],
  [/^[^\u0000]{0,1000}\u0000/, 'bytes that are no text'],
];

const refused = (found: string): DrawingRead => ({
  ok: false,
  flaws: [
    {
      ...{ line: 1, expected: 'a DXF file in ASCII, or an SVG file', found },
      hint: 'write the drawing as DXF or SVG in the program that it was drawn with',
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
