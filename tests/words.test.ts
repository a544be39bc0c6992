/** Words that no report and no page may say: nothing here proves that a chair harms nobody, or meets a standard. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const forbidden =
  /\bsafe(?:ly|ty|r|st)?\b|\bcertif|\bcomplian|\bcompli(?:es|ed)\b|\bguarantee|\bapproved\b|\bfoolproof\b/giu;

const textsIn = (folder: string, endings: RegExp): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name}`)
    .filter((path) => endings.test(path));

const pages = [
  'README.md',
  'CHANGELOG.md',
  ...textsIn('src', /\.ts$/u),
  ...textsIn('fixtures', /\.(?:yaml|md|json)$/u),
  ...textsIn('tests/golden', /\.(?:txt|md|xml|yaml)$/u),
];

describe('no word that promises what nobody knows', () => {
  it.each(pages)('in %s', (path) => {
    expect(readFileSync(path, 'utf8').match(forbidden) ?? []).toEqual([]);
  });

  it('is what is sought', () => {
    for (const word of ['safe', 'Safely', 'safety', 'certified', 'compliant', 'guaranteed'])
      expect(word).toMatch(forbidden);
    for (const word of ['unsafe-eval', 'certain', 'complete', 'compiled'])
      expect(word.replace('unsafe-eval', 'saffron')).not.toMatch(forbidden);
  });
});
