import { expect, test } from 'vitest';
import { judgedInSteps } from '../../src/explore/stepped-design.js';
import { read } from '../design/read.js';
import { checked, designText } from '../report/made-up.js';

test('only the loads and sitters of the goals are judged, whatever the sitters are called', () => {
  const text = designText(['a', 'b', 'a,b']);
  const { limits } = checked(text);
  const { judged, all } = judgedInSteps(read(text), []);
  const whoIn = (...sitters: string[]): (string | null)[] => {
    const goals = limits.filter(({ load, sitter }) => load === 'seated' && sitters.includes(sitter ?? ''));
    return [...new Set(judged(new Map(), goals)!.limits.map(({ sitter }) => sitter))];
  };
  expect(whoIn('a', 'b')).toEqual(['a', 'b']);
  expect(whoIn('a,b')).toEqual(['a,b']);
  expect(judged(new Map(), all)!.limits).toEqual(limits);
});
