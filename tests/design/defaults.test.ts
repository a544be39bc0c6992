/** What a design need not say. */
import { expect, it } from 'vitest';
import { floors } from '../../src/design/floors.js';
import { read, resolved, disc } from './read.js';

it('takes the file for the name, an adult’s chair, bare boards, one of each part, nobody in it', () => {
  expect(read(disc, 'chairs/cabin.yaml').name).toBe('cabin');
  expect(read(disc, '-').name).toBe('-');
  expect(resolved(disc)).toMatchObject({
    kind: 'adult',
    floor: { name: 'bare boards', friction: 0.4, rolling: 0.001 },
    wall: null,
    spacing: null,
    sitters: [],
    child: null,
    parts: [{ count: 1, side: null, runs: null, across: null }],
    extras: [],
    seat: null,
    back: null,
    arms: null,
    loads: {},
    limits: [],
  });
});

it('needs no units when every length has its own', () => {
  const text = disc.replace('units: in\n', '').replace('[0, 5], radius: 5', '[0 in, 5 in], radius: 127 mm');
  expect(resolved(text).parts[0]!.outline).toEqual([
    { hole: false, word: 'circle', centre: { x: 0, y: 0.127 }, radius: 0.127 },
  ]);
});

it('takes the kind’s standard sitters by one word', () => {
  const lines = 'seat: { front: [9, 16], rear: [-8, 14] }\nback: { foot: [-8, 15], top: [-15, 42] }\n';
  expect(resolved(`${disc}${lines}sitters: standard\n`).sitters).toBe('standard');
});

it('takes from bare boards what a floor of its own numbers leaves out', () => {
  expect(resolved(`${disc}floor: { friction: 0.3 }\n`).floor).toEqual({
    name: null,
    friction: 0.3,
    rolling: 0.001,
  });
});

it('knows floors by name, in metres', () => {
  // The table of this project's assumptions, rolling arm in millimetres.
  const table = {
    'bare boards': [0.4, 1],
    'waxed boards': [0.25, 1],
    tile: [0.3, 0.8],
    'porch boards': [0.4, 2],
    'rug on boards': [0.5, 5],
    'deep rug': [0.6, 12],
  };
  const inMillimetres = Object.entries(floors).map(([name, { friction, rolling }]) => [
    name,
    [friction, rolling * 1000],
  ]);
  expect(Object.fromEntries(inMillimetres)).toEqual(table);
  expect(resolved(`${disc}floor: deep rug\n`).floor).toEqual({
    name: 'deep rug',
    friction: 0.6,
    rolling: 0.012,
  });
});

it('reads names as they are typed', () => {
  const named = (name: string) => resolved(disc.replace('disc', name)).parts[0]!.name;
  for (const name of ['007', '0', '1e3', '1.50', 'true', 'null', '0x1F', '1_000', 'off', 'Leg, no. 2']) {
    expect(named(name)).toBe(name);
  }
  expect(named('"007"')).toBe('007');
  expect(named("'it''s'")).toBe("it's");
});
