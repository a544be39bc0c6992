/** Lines and columns of a file, counted only when something is wrong there. */
import type { DrawingFlaw } from './drawn.js';
import type { AttributeFlaw, SvgAttribute, SvgElement } from './svg-element.js';

/** Both from 1, of a place in an element’s tag. A line ends with LF, CR or both. */
export function placeIn(
  text: string,
  element: SvgElement,
  at = element.at,
): { line: number; column: number } {
  const lineEnds = text.slice(element.at, at).match(/\r\n?|\n/g) ?? [];
  const lineEnd = at === 0 ? -1 : Math.max(text.lastIndexOf('\n', at - 1), text.lastIndexOf('\r', at - 1));
  return { line: element.line + lineEnds.length, column: at - lineEnd };
}

export function placed(text: string, element: SvgElement, flaw: AttributeFlaw): DrawingFlaw {
  const { attribute, at, expected, found, hint } = flaw;
  return {
    ...placeIn(text, element, placeOf(text, element, attribute, at ?? 0)),
    expected: `${expected} for ${attribute} of ${element.name}`,
    ...{ found, ...(hint === undefined ? {} : { hint }) },
  };
}

const tagStart = /<[^\s/>]+/y;
const nextAttribute = /\s+([^\s=<>"'/]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/y;

/** Where the character numbered `at` of an attribute’s value stands in the file; the tag, where it has none. */
function placeOf(text: string, element: SvgElement, attribute: SvgAttribute, at: number): number {
  const [start, next] = [new RegExp(tagStart), new RegExp(nextAttribute)];
  start.lastIndex = element.at;
  start.test(text);
  next.lastIndex = start.lastIndex;
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
