/** Files of other sorts, and other ways to write letters. */
import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { readDrawing } from '../../../src/drawing/read/read-drawing.js';
import { circle, dxf } from './dxf-text.js';
import { svg } from './svg-drawn.js';

const drawing = dxf([circle(0, 0, 1)]);
const latin = (text: string): Uint8Array => Buffer.from(text, 'latin1');

// How they begin: the PNG specification (section 5.2), RFC 1952, ZIP’s APPNOTE 4.3.7, ISO 32000; of DWG from memory.
it.each<[string, Uint8Array]>([
  ['a packed file', gzipSync(drawing)],
  ['a packed file', latin('PK\u0003\u0004\u0014\u0000')],
  ['a DWG file', latin('AC1032\u0000\u0000\u0000')],
  ['a PDF file', latin('%PDF-1.7\n%\u00e2\u00e3\n1 0 obj')],
  ['bytes that are no text', latin('\u0089PNG\r\n\u001a\n\u0000\u0000\u0000\rIHDR')],
  ['bytes that are no text', new Uint8Array(64)],
  // Without its mark nothing tells UTF-16 from other bytes.
  ['bytes that are no text', Buffer.from(drawing, 'utf16le')],
  ['a binary one', latin('AutoCAD Binary DXF\r\n\u001a\u0000')],
])('%s is refused as that', (found, bytes) => {
  const hint = expect.stringMatching(/^write (it|the drawing) as /) as string;
  expect(readDrawing(bytes)).toMatchObject({ ok: false, flaws: [{ line: 1, found, hint }] });
});

it.each([drawing, svg('<circle r="1"/>')])('UTF-16 is read by its mark', (text) => {
  const plain = readDrawing(Buffer.from(text));
  const low = Buffer.from(`\ufeff${text}`, 'utf16le');
  expect(plain.ok).toBe(true);
  expect(readDrawing(low)).toEqual(plain);
  expect(readDrawing(Buffer.from(low).swap16())).toEqual(plain);
});
