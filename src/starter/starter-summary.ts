/** What a maker is told of a starter: whether it meets its limits, and if not, which it misses. */
import { limitWords } from '../report/limit-words.js';
import { sayVerdict } from '../report/verdict-words.js';
import { wrap } from '../report/wrap.js';
import type { Starter } from './starter.js';

const columns = 100;

export function summaryOfStarter({ result }: Starter): string {
  const { limits, design } = result;
  const missed = limits.filter(({ verdict }) => verdict !== 'pass');
  const lines = missed.map((limit) => {
    const { who, what, value, wanted, why } = limitWords(limit, design.units);
    return `  ${who}: ${what}: ${value ?? why ?? 'unknown'}, wanted ${wanted}`;
  });
  const said = [`${design.name}: ${sayVerdict(result)}`, ...lines, ...(missed.length > 0 ? [whatThen] : [])];
  return said.map((line) => `${wrap(line, columns, line.startsWith('  ') ? '  ' : '', '    ')}\n`).join('');
}

const whatThen =
  'No chair of this kind was found that meets them all for this sitter: this one comes closest. `trueroll check` says what to change.';
