/** Files that are damaged or hostile: refused where they go wrong, in words, and fast. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSvg } from '../../../src/drawing/read/svg.js';
import { flawsOf, svg } from './svg-drawn.js';

/** The first flaw as `line:column expected, not found`. */
const said = (text: string): string => {
  const [flaw] = flawsOf(text);
  return flaw ? `${flaw.line}:${flaw.column ?? ''} ${flaw.expected}, not ${flaw.found}` : 'taken';
};

describe('what is no SVG', () => {
  it.each([
    ['', '1:1 an SVG file, which begins with <, not nothing'],
    ['  0\nSECTION\n', '1:1 an SVG file, which begins with <, not "0 SECTION"'],
    ['\u001f\uFFFD\b\u0000', '1:1 an SVG file, which begins with <, not what is no text'],
    ['<html/>', '1:1 svg as the outermost element, not <html>'],
    [
      '<svg xmlns="urn:other"/>',
      '1:1 xmlns="http://www.w3.org/2000/svg" on the outermost element, not "urn:other"',
    ],
    ['<!-- only -->', /document must contain a root element/],
  ])('%j', (text, words) => {
    expect(said(text)).toMatch(words);
  });
});

describe('XML that is not well-formed', () => {
  it.each([
    [`${svg('')}<svg/>`, /^1:\d+ a well-formed XML file, not documents may contain only one root/],
    [svg('\n<g>'), /^2:\d+ .*unexpected close tag|^2:\d+ .*unmatched/],
    [svg('\n<path d="M0 0').slice(0, -6), /^2:\d+ /],
    ['<svg>\n<g>', '2:3 a well-formed XML file, not unclosed tag: g'],
    [svg('<path d="M0 0" d="M1 1"/>'), /duplicate attribute/],
    [svg('\n<path id="&outline;"/>'), '2:19 a well-formed XML file, not undefined entity'],
  ])('%j', (text, words) => {
    expect(said(text)).toMatch(words);
  });

  it('entities in entities', () => {
    const lol = Array.from({ length: 9 }, (_, i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`).join(
      '\n',
    );
    const text = `<!DOCTYPE svg [<!ENTITY l0 "lol">${lol}]><svg xmlns="http://www.w3.org/2000/svg"><g id="&l9;"/></svg>`;
    expect(said(text)).toMatch(/undefined entity/);
  });

  it('nested without end', () => {
    expect(said(svg('<g>'.repeat(200_000)))).toMatch(/no more than 64 elements inside each other/);
  });
});

describe('uses without end', () => {
  it('of themselves', () => {
    expect(said(svg('<g id="a"><use href="#a"/></g>'))).toMatch(
      /does not hold it in use, not one that draws itself/,
    );
    expect(said(svg('<use id="a" href="#b"/>\n<use id="b" href="#a"/>'))).toMatch(/draws itself/);
    expect(said(svg('<symbol id="s"><use href="#s"/></symbol><use href="#s"/>'))).toMatch(/draws itself/);
  });

  it('ten of ten of ten', () => {
    const level = (i: number) => `<g id="g${i}">${`<use href="#g${i - 1}"/>`.repeat(10)}</g>`;
    const bomb = Array.from({ length: 12 }, (_, i) => level(i + 1)).join('');
    const start = performance.now();
    expect(said(svg(`<defs><path id="g0" d="M0 0h1"/>${bomb}</defs><use href="#g12"/>`))).toMatch(
      /25 million characters/,
    );
    // Seconds even on a busy machine; all of it would take years.
    expect(performance.now() - start).toBeLessThan(20_000);
  });

  it('one inside the other', () => {
    const chain = Array.from({ length: 500 }, (_, i) => `<use id="u${i + 1}" href="#u${i}"/>`).join('');
    expect(said(svg(`<defs><path id="u0" d="M0 0h1"/>${chain}</defs><use href="#u500"/>`))).toMatch(
      /no more than 128/,
    );
  });
});

describe('attributes', () => {
  it.each([
    [svg('\n  <path\n d="M0 0\n L 5 x"/>'), '4:6 a number for d of path, not "x"'],
    [svg('<path d="M0 0 L 1e400 0"/>'), /finite numbers for d of path/],
    [svg('<path d="M0 0 L 1e300 0"/>'), /no more than 1000000000 units in path, not one beyond/],
    [svg('<path id="far" d="M0 0 A 1e12 1e12 0 0 0 1 1"/>'), /units in path "far"/],
    [
      svg('<g transform="scale(1e200)"><g transform="scale(1e200)"><circle r="1"/></g></g>'),
      /units in circle/,
    ],
    [svg('<rect width="1e999" height="1"/>'), /a finite length for width of rect/],
    [svg('<rect width="-1" height="1"/>'), /not negative for width of rect, not "-1"/],
    [
      svg('\n<rect width="ten" height="1"/>'),
      '2:14 a length, such as 12.5 or 30mm for width of rect, not "ten"',
    ],
    [svg('<rect width="2em" height="1"/>'), /a length in px, mm/],
    [svg('<rect width="5%" height="1"/>', ''), /a length for width of rect, not "5%"/],
    [svg('<polygon points="1 2 3"/>'), /pairs of numbers for points of polygon, not 3 numbers/],
    [svg('<polygon points="1 2 3,,4"/>'), /pairs of numbers for points of polygon, not ",,4"/],
    [svg('<g transform="rotate(45deg)"><path d="M0 0h1"/></g>'), /rotate with 1 or 3 plain numbers/],
    [svg('<g transform="translate(1) spin(3)"/>'), /in brackets for transform of g, not "spin\(3\)"/],
    [svg('<g transform="matrix(1 0 0 1)"/>'), /matrix with 6 plain numbers/],
    [svg('<g transform="scale(1e999)"/>'), /scale of finite numbers/],
    [svg('<path style="transform:rotate(3deg)" d="M0 0h1"/>'), /stated by attributes for style of path/],
    [svg('<g transform-origin="3 4" transform="rotate(3)"/>'), /stated in transform/],
    [svg('', 'viewBox="0 0 0 10"'), /four numbers/],
    [svg('', 'viewBox="0 0 10"'), /four numbers/],
    [svg('', 'viewBox="0 0 10 10" preserveAspectRatio="left"'), /xMidYMid/],
    [
      svg('', 'viewBox="0 0 10 10" width="10mm" height="20mm" preserveAspectRatio="none"'),
      /in the proportion/,
    ],
    [svg('', 'viewBox="0 0 10 10" width="1e300mm"'), /shorter than 1000 km/],
    [svg('', 'transform="rotate(3)"'), /no map for transform of svg/],
  ])('%j', (text, words) => {
    expect(said(text)).toMatch(words);
  });

  it('stop after twenty', () => {
    expect(flawsOf(svg('<path d="x"/>'.repeat(1000)))).toHaveLength(20);
  });
});

it('is never thrown at, whatever is cut from or put into a file', () => {
  const whole = svg(
    '<defs><symbol id="s" viewBox="0 0 9 9"><circle r="3"/></symbol></defs><g id="__proto__" transform="rotate(3 4 5)"><rect width="3" height="4" rx="1"/><use href="#s" x="1"/><path d="M0 0A3 4 5 0 1 6 7Q1 2 3 4T5 6z"/><polygon points="1,2 3,4 5,6"/></g>',
    'width="9mm" height="9mm" viewBox="0 0 9 9"',
  );
  const places = fc.integer({ min: 0, max: whole.length });
  const put = fc.oneof(
    fc.string({ maxLength: 4 }),
    fc.constantFrom('1e999', '-', '"', '<', '&', 'NaN', '1e200', '#s'),
  );
  fc.assert(
    fc.property(places, places, put, (a, b, words) => {
      const read = readSvg(whole.slice(0, Math.min(a, b)) + words + whole.slice(Math.max(a, b)));
      if (!read.ok) expect(read.flaws.every(({ line, expected }) => line >= 1 && expected !== '')).toBe(true);
      else expect(JSON.stringify(read.drawn.curves)).not.toMatch(/:null/);
    }),
    { numRuns: 1000 },
  );
});
