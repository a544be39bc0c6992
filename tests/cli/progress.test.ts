import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { progressOf } from '../../src/cli/progress.js';
import type { World } from '../../src/cli/world.js';

const begun = 1_000_000;
let said: string[] = [];

/** A terminal, unless it is none. */
const worldWith = (isTTY: boolean, env: World['env'] = {}): World =>
  ({
    stderr: { isTTY, columns: 80, write: (text: string) => void said.push(text) },
    env,
  }) as unknown as World;

beforeEach(() => {
  said = [];
  vi.useFakeTimers({ now: begun });
});
afterEach(() => {
  vi.useRealTimers();
});
const after = (milliseconds: number): void => void vi.setSystemTime(begun + milliseconds);

it('tells after a second how much is done and how long the rest takes at that pace', () => {
  const { done, end } = progressOf(worldWith(true), 'designs');
  after(999);
  done(10, 4000);
  expect(said).toEqual([]);
  after(1000);
  done(1000, 4000);
  expect(said.pop()).toBe('\r\u001B[K1,000 of 4,000 designs, 3 s left');
  after(1249);
  done(1200, 4000);
  expect(said).toEqual([]);
  after(100_000);
  done(2000, 4000);
  expect(said.pop()).toBe('\r\u001B[K2,000 of 4,000 designs, 2 min left');
  end();
  expect(said.pop()).toBe('\r\u001B[K');
});

it('of nothing done it tells no time', () => {
  const { done } = progressOf(worldWith(true), 'searches');
  after(5000);
  done(0, 40);
  expect(said).toEqual(['\r\u001B[K0 of 40 searches']);
});

it('tells nothing where there is no terminal, nor in CI', () => {
  for (const world of [worldWith(false), worldWith(true, { CI: 'true' })]) {
    const { done, end } = progressOf(world, 'designs');
    after(5000);
    done(1, 2);
    end();
  }
  expect(said).toEqual([]);
});
