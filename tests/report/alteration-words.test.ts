import { expect, test } from 'vitest';
import { alterationNames } from '../../src/names.js';
import { sayAlteration } from '../../src/report/alteration-words.js';

test('a chair as drawn is altered by so much; one that is altered already from so much to so much', () => {
  expect(sayAlteration('front-legs', -0.25, 'in')).toBe('front legs 1/4 in shorter');
  expect(sayAlteration('front-legs', 0, 'in', -0.25)).toBe('front legs 1/4 in shorter → as drawn');
  expect(sayAlteration('front-legs', 0.5, 'in', -0.25)).toBe('front legs 1/4 in shorter → 1/2 in longer');
  expect(sayAlteration('back-rest', 0, 'in', 0.5)).toBe('back rest 1/2 in forward → as drawn');
  expect(sayAlteration('front-legs', -0.5, 'in', -0.25)).toBe(
    'front legs 1/4 in shorter → 1/2 in shorter (1/4 in more)',
  );
  expect(sayAlteration('tail-weight', 1.1, 'lb', 1)).toBe('1 lb → 1.1 lb on the tails (0.1 lb more)');
  expect(sayAlteration('back-rest', 0.25, 'in', 1)).toBe(
    'back rest 1 in forward → 1/4 in forward (3/4 in less)',
  );
  expect(sayAlteration('tail-weight', 2, 'lb')).toBe('2 lb on the tails');
  expect(sayAlteration('tail-weight', 0, 'lb', 2)).toBe('2 lb → nothing on the tails');
  expect(sayAlteration('tail-wedge', 0.25, 'in')).toBe(
    'wedges glued under the tails, 1/4 in thick at their ends',
  );
  expect(sayAlteration('tail-wedge', 0, 'in', 0.25)).toBe(
    'wedges glued under the tails, 1/4 in thick at their ends → none',
  );
});

test('nothing is altered by 0', () => {
  for (const name of alterationNames)
    for (const from of [0, 1]) expect(sayAlteration(name, 0, 'in', from)).not.toMatch(/\b0\b/);
});
