/** What a search may change, and what it may not touch. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readDesign } from '../../src/design/read-design.js';
import { changeableIn, valueAfter, type Changeable } from '../../src/explore/changeable.js';
import { designFunction } from '../../src/explore/design-function.js';
import type { Stage } from '../../src/explore/reaches.js';

const porch = readFileSync('fixtures/porch-rocker/design.yaml', 'utf8');

const namesIn = (text: string): string[] => changesIn(text, 'drawing').map(({ variable }) => variable.name);

function changesIn(text: string, stage: Stage): Changeable[] {
  const read = readDesign(text, 'porch.yaml');
  const built = read.ok ? designFunction(read.value, []).at([]) : null;
  if (!read.ok || !built?.ok) throw new Error('a porch rocker that cannot be built');
  return changeableIn(read.value, built, stage);
}

test('people, the floor, the room and what is asked for are given, and what they are made of; all else may change', () => {
  const given = namesIn(
    porch
      .replace(
        'dimensions:',
        'dimensions:\n  tall: 60 in\n  slowest: 1.9 s\n  shelf: 10 in\n  gap: shelf + 4 in\n  grip: 0.4',
      )
      .replace(`stature: 5' 0"`, 'stature: tall')
      .replace('floor: porch boards', 'floor: { friction: grip, rolling: 2 mm }')
      .replace('room: { wall: 14 in }', 'room: { wall: gap }')
      .replace('limits:', 'limits:\n  period: slowest .. 2.8 s'),
  );
  expect(given).toEqual(namesIn(porch));
  expect(given).toContain('radius');
});

test('what is cut off is not put back once it is cut', () => {
  const cut = `${porch}\nalterations: { front-legs: -1/4 in, tail-end: -1 in, back-rest: 1/2 in }\n`;
  for (const stage of ['cut', 'glued'] as const) {
    const ends = new Map(
      changesIn(cut, stage).map((one) => [
        one.variable.name,
        [valueAfter(one, one.least), valueAfter(one, one.greatest)].map((value) => (value / 0.0254) * 16),
      ]),
    );
    // 50 mm are 31 sixteenths, 150 mm 94.
    expect(ends.get('front-legs')!.map(Math.round)).toEqual([-31, -4]);
    expect(ends.get('tail-end')!.map(Math.round)).toEqual([-94, -16]);
    expect(ends.get('back-legs')!.map(Math.round)).toEqual([-31, 0]);
  }
  const [legs] = changesIn(cut, 'drawing').filter(({ variable }) => variable.name === 'front-legs');
  expect(valueAfter(legs!, legs!.greatest)).toBeGreaterThan(0);
});
