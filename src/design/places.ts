/** From a path in the data of a design file to its line and column in the text. */
import { isMap, isNode, isScalar, isSeq } from 'yaml';
import type { LineCounter, ParsedNode, Scalar } from 'yaml';
import type { Issue } from './issue.js';
import type { Mistake } from '../quantity/reading.js';
import { keyOf, type Path } from './plain-data.js';

export interface Places {
  readonly file: string;
  readonly text: string;
  readonly root: ParsedNode | null;
  readonly lines: LineCounter;
}

/** What is wrong, and how it is put right. */
export type Words = Omit<Mistake, 'at'>;

/** A mistake at a path of the data. */
export interface Finding extends Words {
  readonly path: Path;
  /** The key itself is at fault, not its value. */
  readonly onKey?: boolean;
  /** Where in the text of the value, from 0. */
  readonly at?: number;
}

export function issueOf(places: Places, { path, onKey, at, ...words }: Finding): Issue {
  const inside = at === undefined ? 0 : offsetInside(places, path, at);
  const offset = onKey ? keyOffset(places, path) : valueOffset(places, path) + inside;
  return issueAtOffset(places, offset, words);
}

/** The issue at an offset of the text; null: of the file as a whole. */
export function issueAtOffset(
  { file, lines }: Pick<Places, 'file' | 'lines'>,
  offset: number | null,
  { expected, found, hint }: Words,
): Issue {
  const place = offset === null ? { line: null, col: null } : lines.linePos(offset);
  return {
    file,
    line: place.line,
    column: place.col,
    expected,
    found,
    ...(hint === undefined ? {} : { hint }),
  };
}

/** What is left of the line after the key at a path: `# …` there may be a value cut off. */
export function restOfLine(places: Places, path: Path): string {
  const end = nodeAt(places.root, path).key?.range?.[1] ?? 0;
  return /^[^\n\r]*/.exec(places.text.slice(end))![0];
}

interface Found {
  readonly key: Scalar | null;
  readonly node: unknown;
}

/** The deepest thing on the way to a path. An index is passed over where one thing stands without its list. */
function nodeAt(root: ParsedNode | null, path: Path): Found {
  let here: Found = { key: null, node: root };
  for (const step of path) {
    const next = stepInto(here, step);
    if (!next) break;
    here = next;
  }
  return here;
}

function stepInto({ key, node }: Found, step: string | number): Found | undefined {
  if (isSeq(node)) {
    const item = node.items[Number(step)];
    return item === undefined ? undefined : { key: null, node: item };
  }
  if (typeof step === 'number') return { key, node };
  const pair = isMap(node) ? node.items.find((each) => keyOf(each) === step) : undefined;
  return pair && { key: pair.key as Scalar, node: pair.value };
}

function keyOffset({ root }: Places, path: Path): number {
  const { key, node } = nodeAt(root, path);
  return startOf(key) ?? startOf(node) ?? 0;
}

/** Where nothing stands, its key is told. */
function valueOffset({ root }: Places, path: Path): number {
  const { key, node } = nodeAt(root, path);
  const nothing = isScalar(node) && node.value === null && node.source === '';
  return (nothing ? startOf(key) : undefined) ?? startOf(node) ?? startOf(key) ?? 0;
}

const startOf = (node: unknown): number | undefined => (isNode(node) ? node.range?.[0] : undefined);

/**
 * How far into its value a mistake stands, opening quote counted. 0 where the value is not in the text as it
 * reads: over several lines, or with marks that stand for others.
 */
function offsetInside({ root, text }: Places, path: Path, at: number): number {
  const { node } = nodeAt(root, path);
  if (!isScalar(node) || typeof node.value !== 'string' || !node.range) return 0;
  const source = text.slice(node.range[0], node.range[1]);
  const quotes = source === node.value ? 0 : source.slice(1, -1) === node.value ? 1 : null;
  return quotes === null ? 0 : at + quotes;
}
