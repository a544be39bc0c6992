/** Words that cannot stand where they stand, with the word that was probably meant. */
import { functionNames, functions } from './functions.js';
import { nearestWord } from './nearest.js';
import { refuse } from './reading.js';
import { matchAt, shown } from './source-text.js';
import { unitOfWord, unitWords } from './units.js';

/** Refuses a word that is neither a known name, nor a function before its bracket, nor a unit behind its number. */
export function refuseWord(source: string, at: number, word: string, known: readonly string[]): never {
  if (unitOfWord(word)) refuseLoneUnit(source, at, word);
  if (functions.has(word)) {
    refuse(at, 'a value', `the function ${shown(word)} without its bracket`, `write \`${word}(…)\``);
  }
  if (matchAt(source, at + word.length, /^\s*\(/u)) refuseFunction(at, word);
  const behindNumber = /\d\s*$/u.test(source.slice(0, at));
  const expected = behindNumber ? 'a unit or a name of this design' : 'a name of this design';
  refuse(at, expected, shown(word), wordHint(word, behindNumber, known));
}

function refuseLoneUnit(source: string, at: number, unit: string): never {
  const before = source.slice(0, at).trimEnd();
  const hint =
    before === '' ? `write \`1 ${unit}\`` : `a unit stands straight behind a number: \`1 ${unit}\``;
  const product = /[\p{L}\p{Nd})]$/u.test(before) ? `; for a product write \`* 1 ${unit}\`` : '';
  refuse(at, 'a value', `the unit ${shown(unit)} without a number`, hint + product);
}

function refuseFunction(at: number, word: string): never {
  const name = nearestWord(word, functionNames);
  const hint = name === undefined ? `there are ${functionNames.join(', ')}` : `did you mean \`${name}\`?`;
  refuse(at, 'a function', shown(word), hint);
}

function wordHint(word: string, behindNumber: boolean, known: readonly string[]): string | undefined {
  const glued = /^(\p{L}+)\d/u.exec(word)?.[1];
  if (behindNumber && glued !== undefined && unitOfWord(glued)) return `leave a space behind \`${glued}\``;
  const words = behindNumber ? [...unitWords, ...known] : [...known, ...functionNames, ...unitWords];
  const nearest = nearestWord(word, words);
  if (nearest !== undefined) return `did you mean \`${nearest}\`?`;
  if (behindNumber) return 'units are in, ft, mm, cm, m, kg, g, lb, oz, s, deg, N, J';
  if (known.length === 0) return undefined;
  return `known are ${known.slice(0, 8).join(', ')}${known.length > 8 ? ' …' : ''}`;
}
