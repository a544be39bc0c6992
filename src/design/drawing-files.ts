/** The drawing files that a design names: read outside, looked up here. */
import type { Drawn } from '../drawing/read/drawn.js';
import { readDrawing } from '../drawing/read/read-drawing.js';
import type { SchemaFinding } from './schema-findings.js';
import { isBlock, plainData } from './plain-data.js';
import type { WrittenPart } from './schema.js';
import { readYaml } from './yaml-text.js';

/** By the name that the design gives them: their bytes, or why they cannot be read. */
export type DrawingFiles = ReadonlyMap<string, Uint8Array | string>;

export const noDrawings: DrawingFiles = new Map();

/** The names of a design’s drawing files, each once, as far as the text can be read. */
export function drawingsNamed(text: string): string[] {
  if (!text.includes('drawing')) return [];
  const yaml = readYaml(text);
  const data = yaml.ok ? plainData(yaml.value.root).data : null;
  const parts: unknown = isBlock(data) ? data['parts'] : null;
  const names = (Array.isArray(parts) ? (parts as unknown[]) : [])
    .flatMap((part) => (isBlock(part) ? [part['outline']].flat() : []))
    .map((outline) => (isBlock(outline) && isBlock(outline['drawing']) ? outline['drawing']['file'] : null));
  return [...new Set(names.filter((name) => typeof name === 'string'))];
}

/** Drawings by name, and what is wrong with those that cannot be read. */
export interface DrawingsRead {
  readonly drawings: ReadonlyMap<string, Drawn>;
  readonly findings: readonly SchemaFinding[];
}

/** Reads what the parts of a design ask for, each file once. */
export function readDrawings(parts: readonly WrittenPart[], files: DrawingFiles): DrawingsRead {
  const drawings = new Map<string, Drawn>();
  const findings: SchemaFinding[] = [];
  const refused = new Set<string>();
  parts.forEach(({ outline }, part) => {
    [outline].flat().forEach(({ drawing }, i) => {
      if (drawing === undefined || drawings.has(drawing.file) || refused.has(drawing.file)) return;
      const read = drawnIn(drawing.file, files);
      if ('drawn' in read) {
        drawings.set(drawing.file, read.drawn);
        return;
      }
      refused.add(drawing.file);
      const path = ['parts', part, 'outline', ...(Array.isArray(outline) ? [i] : []), 'drawing', 'file'];
      findings.push(...read.refused.map((words) => ({ path, ...words })));
    });
  });
  return { drawings, findings };
}

type Words = Pick<SchemaFinding, 'expected' | 'found' | 'hint'>;

function drawnIn(name: string, files: DrawingFiles): { drawn: Drawn } | { refused: readonly Words[] } {
  const bytes = files.get(name) ?? 'a file that was not handed over';
  if (typeof bytes === 'string')
    return { refused: [{ expected: 'a drawing file that can be read', found: bytes }] };
  const read = readDrawing(bytes);
  if (read.ok) return { drawn: read.drawn };
  const refused = read.flaws.map(({ line, column, expected, found, hint }) => ({
    expected: `${expected}, in line ${line}${column === undefined ? '' : `, column ${column}`} of ${name}`,
    found,
    ...(hint !== undefined && { hint }),
  }));
  return { refused };
}
