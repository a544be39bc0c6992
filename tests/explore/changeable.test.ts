/** What a search may change, and what it may not touch. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readDesign } from '../../src/design/read-design.js';
import { changeableIn } from '../../src/explore/changeable.js';
import { designFunction } from '../../src/explore/design-function.js';

const porch = readFileSync('fixtures/porch-rocker/design.yaml', 'utf8');

function namesIn(text: string): string[] {
  const read = readDesign(text, 'porch.yaml');
  const built = read.ok ? designFunction(read.value, []).at([]) : null;
  if (!read.ok || !built?.ok) throw new Error('a porch rocker that cannot be built');
  return changeableIn(read.value, built, 'drawing').map(({ variable }) => variable.name);
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
