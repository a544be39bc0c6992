/** Path data with long runs under one letter draws what it draws, and is told wrong at the same place. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shortRuns } from '../../../src/geometry/words/long-runs.js';
import { pathPieces } from '../../../src/geometry/words/path-pieces.js';

const numbers = (count: number): string =>
  Array.from({ length: count }, (_, i) => `${i % 7}.${i % 10}`).join(' ');

describe('a long run', () => {
  it.each([
    ['m', 2, 'l'],
    ['M', 2, 'L'],
    ['l', 2, 'l'],
    ['H', 1, 'H'],
    ['c', 6, 'c'],
    ['q', 4, 'q'],
  ])('of %s is named again', (command, takes, again) => {
    const data = `M 0 0 ${command} ${numbers(takes * 5000)}`;
    const { text } = shortRuns(data);
    expect(text.split(again).length - data.split(again).length).toBe(9);
    expect(text.replaceAll(again, '')).toBe(data.replaceAll(again, ''));
  });

  it('of arcs too, flags without blanks', () => {
    const arcs = Array.from({ length: 3000 }, () => '1 1 0 013 4').join(' ');
    const data = `M0 0a${arcs}z`;
    expect(shortRuns(data).text.split('a')).toHaveLength(7);
    const read = pathPieces(data, 1);
    expect(read.ok && read.subpaths[0]!.pieces).toHaveLength(3001);
  });

  it('of a hundred thousand places is read', () => {
    const read = pathPieces(
      `M0 0l${Array.from({ length: 100_000 }, (_, i) => `${(i % 3) + 1},1`).join(' ')}z`,
      1,
    );
    expect(read.ok && read.subpaths[0]!.pieces).toHaveLength(100_001);
  });

  it('has its mistakes where they are', () => {
    const data = `M 0 0 L ${numbers(40_000)} x`;
    expect(pathPieces(data, 1)).toMatchObject({ ok: false, flaws: [{ at: data.length - 1 }] });
    const odd = `M 0 0 L ${numbers(40_001)} Z`;
    expect(pathPieces(odd, 1)).toMatchObject({ ok: false, flaws: [{ at: odd.length - 1 }] });
  });
});

it('is bounded: what is longer is refused', () => {
  const read = pathPieces(`M0 0${' '.repeat(2_000_000)}`, 1);
  expect(read).toMatchObject({ ok: false, flaws: [{ expected: 'path data of 2000000 characters at most' }] });
});

it('places of a text lead back to the data', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 5000, max: 9000 }),
      fc.constantFrom('l', 'M', 'v', 'S'),
      (count, command) => {
        const data = `M 1 1 ${command} ${numbers(count * 4)}`;
        const { text, inData } = shortRuns(data);
        for (const at of [0, 5, Math.floor(text.length / 3), text.length - 1])
          if (text[at] !== command && text[at] !== 'L') expect(data[inData(at)]).toBe(text[at]);
      },
    ),
    { numRuns: 20 },
  );
});
