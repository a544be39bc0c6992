import { expect, test } from 'vitest';
import { isComfortable, roomOf, tightest } from '../../src/explore/room.js';
import { limit } from '../report/made-up.js';

const period = (value: number) => limit('seated', 'Ada', 'periodS', [1.8, 2.6], value);
const left = (value: number) => limit('leaning-back-hard', 'Ada', 'rockerLeftBackM', [2, null], value);

test('room is 1 in the middle, 0 at the ends, negative outside; with one end 1 at twice as much', () => {
  const rooms = [2.2, 1.8, 2.6, 2, 1.4].map((value) => roomOf(period(value)));
  [1, 0, 0, 0.5, -1].forEach((room, i) => {
    expect(rooms[i]).toBeCloseTo(room, 12);
  });
  expect([2, 3, 4, 9, 1].map((value) => roomOf(left(value))!)).toEqual(
    [0, 0.5, 1, 1, -0.5].map((room) => expect.closeTo(room, 12) as number),
  );
  expect(roomOf(limit('empty', null, 'restCount', [1, 1], 1))).toBeNull();
  expect(roomOf(limit('seated', 'Ada', 'periodS', [1.8, 2.6], 'no rest'))).toBeNull();
});

test('the tightest limit is the one with the least room', () => {
  expect(tightest([period(2.2), left(2.2)])).toEqual({
    id: 'leaning-back-hard/rockerLeftBack/Ada',
    room: expect.closeTo(0.1, 12) as number,
  });
  expect(tightest([])).toBeNull();
});

const judgedOn = ['seated', 'leaning-back-hard'] as const;

test('comfortable is what keeps to the middle three quarters, with half as much rocker again', () => {
  expect(isComfortable([period(1.91), left(3.01)], judgedOn)).toBe(true);
  expect(isComfortable([period(1.89), left(3.01)], judgedOn)).toBe(false);
  expect(isComfortable([period(1.91), left(2.99)], judgedOn)).toBe(false);
  // The empty chair’s slope and period are nobody’s comfort.
  const empty = limit('empty', null, 'seatSlopeDeg', [0, 9], 0.1);
  expect(isComfortable([period(1.91), empty], ['empty', ...judgedOn])).toBe(true);
  expect(isComfortable([empty], ['empty', ...judgedOn])).toBe(false);
  expect(isComfortable([limit('seated', 'Ada', 'periodS', [1.8, 2.6], 'no rest')], judgedOn)).toBe(false);
  expect(isComfortable([], judgedOn)).toBe(false);
});

test('comfortable is no chair that nobody leaned back in, or sat in', () => {
  expect(isComfortable([period(2.2)], ['empty', 'seated'])).toBe(false);
  expect(isComfortable([left(4)], ['leaning-back-hard'])).toBe(false);
});
