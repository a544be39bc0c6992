/** Reads a drawing file of any kind that is known, by what is in it. */
import type { DrawingRead } from './drawn.js';
import { readDxf } from './dxf.js';
import { readSvg } from './svg.js';

/** The first bytes of what is never a drawing that can be read. */
const zipped = [0x50, 0x4b];

export function readDrawing(bytes: Uint8Array): DrawingRead {
  if (zipped.every((byte, i) => bytes[i] === byte)) return refused('a packed file');
  const text = textOf(bytes);
  return text
    .replace(/^\ufeff/, '')
    .trimStart()
    .startsWith('<')
    ? readSvg(text)
    : readDxf(text);
}

const refused = (found: string): DrawingRead => ({
  ok: false,
  flaws: [{ line: 1, expected: 'a DXF file in ASCII, or an SVG file', found }],
});

/** UTF-8 where it is that; older drawings have names in a codepage of one byte a letter, numbers are the same in all. */
function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
