/** Lines and columns of a file, counted only when something is wrong there. */
import type { DrawingFlaw } from './drawn.js';
import type { AttributeFlaw, SvgAttribute, SvgElement } from './svg-element.js';

/** Both from 1. A line ends with LF, CR or both. */
export function placeAt(text: string, at: number): { line: number; column: number } {
  let [line, start] = [1, 0];
  for (const { index, 0: end } of text.slice(0, at).matchAll(/\r\n?|\n/g)) {
    line += 1;
    start = index + end.length;
  }
  return { line, column: at - start + 1 };
}

export function placed(text: string, element: SvgElement, flaw: AttributeFlaw): DrawingFlaw {
  const { attribute, at, expected, found, hint } = flaw;
  return {
    ...placeAt(text, placeOf(text, element, attribute, at ?? 0)),
    expected: `${expected} for ${attribute} of ${element.name}`,
    ...{ found, ...(hint === undefined ? {} : { hint }) },
  };
}

const anyAttribute = /([^\s=<>"'/]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

/** Where the character numbered `at` of an attribute’s value stands in the file; the tag, where it has none. */
function placeOf(text: string, element: SvgElement, attribute: SvgAttribute, at: number): number {
  const next = new RegExp(anyAttribute);
  next.lastIndex = element.at;
  for (let found = next.exec(text); found !== null; found = next.exec(text)) {
    if (found[1] !== attribute) continue;
    const value = found[2] ?? found[3] ?? '';
    return next.lastIndex - 1 - value.length + writtenLength(value, at);
  }
  return element.at;
}

/** How much of the written value stands for its first characters: a line end and a reference are one of them. */
function writtenLength(value: string, count: number): number {
  let [at, counted] = [0, 0];
  for (const { 0: one } of value.matchAll(/\r\n|&[^;]*;|[^]/g)) {
    if (counted === count) break;
    at += one.length;
    counted += 1;
  }
  return at;
}
