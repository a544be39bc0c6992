/** JSON design files: read as the same thing, with places; and no document makes the reader stumble. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainData } from '../../src/design/plain-data.js';
import { readDesign } from '../../src/design/read-design.js';
import { readYaml } from '../../src/design/yaml-text.js';
import { disc, mistakesIn, resolved } from './read.js';

const discInJson = {
  trueroll: 1,
  units: 'in',
  parts: [{ name: 'disc', mass: '1 kg', outline: { circle: { centre: [0, 5], radius: 5 } } }],
};

describe('a design in JSON', () => {
  it.each(['', '\t', '  '])('reads like its YAML, indented by "%s"', (indent) => {
    const text = JSON.stringify(discInJson, null, indent);
    expect(resolved(text).parts).toEqual(resolved(disc).parts);
  });

  it('tells mistakes at their places', () => {
    const text = JSON.stringify({ ...discInJson, spacing: '20 kg', kidn: 'porch' }, null, 2);
    const lines = text.split('\n');
    const lineOf = (word: string) => lines.findIndex((line) => line.includes(word)) + 1;
    expect(mistakesIn(text, 'chair.json')).toEqual([
      // Two spaces, "spacing": and a space stand before the quote of the value.
      expect.stringMatching(`^chair\\.json:${lineOf('spacing')}:15: expected a length, found a mass`),
      expect.stringMatching(`^chair\\.json:${lineOf('kidn')}:3: .*did you mean \`kind\``),
    ]);
  });
});

describe('any JSON', () => {
  it('is the same data as the platform reads', () => {
    const json = fc.jsonValue({ maxDepth: 5 });
    fc.assert(
      fc.property(json, (value) => {
        const text = JSON.stringify(value);
        // What these hold is taken as typed, by contract: `{"name": 0}` is the text 0.
        fc.pre(!/"(name|layer|id|file)":/.test(text));
        const yaml = readYaml(text);
        // Texts may hold what is no text (the reader refuses it); the rest must come out alike.
        if (!yaml.ok) return;
        expect(JSON.stringify(plainData(yaml.value.root).data)).toBe(JSON.stringify(value));
      }),
      { numRuns: 500 },
    );
  });

  it('comes to mistakes, never to an exception', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 6 }), (text) => {
        expect(readDesign(text, 'a.json').ok).toBe(false);
      }),
      { numRuns: 200 },
    );
  });

  it('in the place of any part of a design comes to an answer', () => {
    const key = fc.constantFrom(
      ...['name', 'kind', 'units', 'dimensions', 'floor', 'room', 'spacing', 'sitters', 'child', 'parts'],
      ...['extras', 'seat', 'back', 'arms', 'loads', 'limits', 'alterations', 'keep', 'errors'],
    );
    fc.assert(
      fc.property(key, fc.jsonValue({ maxDepth: 4 }), (name, value) => {
        const answer = readDesign(JSON.stringify({ ...discInJson, [name]: value }), 'a.json');
        if (!answer.ok) expect(answer.issues.length).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
  });
});

it('any text comes to mistakes, never to an exception', () => {
  const words = [
    'trueroll: 1\n',
    'parts:\n',
    '  - ',
    'name: ',
    '{ ',
    ' }',
    '[',
    ']',
    ', ',
    '\n',
    '"',
    "'",
    '&a ',
    '*a',
  ];
  const text = fc.array(fc.oneof(fc.constantFrom(...words), fc.string({ maxLength: 8 })), { maxLength: 40 });
  fc.assert(
    fc.property(text, (pieces) => {
      expect(readDesign(pieces.join(''), 'a.yaml').ok).toBe(false);
    }),
    { numRuns: 500 },
  );
});
