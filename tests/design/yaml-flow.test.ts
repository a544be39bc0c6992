import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { yamlFlow } from '../../src/design/yaml-flow.js';
import { plainData } from '../../src/design/plain-data.js';
import { readYaml } from '../../src/design/yaml-text.js';

function readBack(text: string): unknown {
  const yaml = readYaml(text);
  if (!yaml.ok) throw new Error(JSON.stringify(yaml.fault));
  return plainData(yaml.value.root).data;
}

const odd = [
  ...['0', '007', '1e3', '0x1F', '.inf', 'null', '~', 'true', '2026-01-01', '', ' ', ' lead', 'trail '],
  ...['__proto__', 'constructor', 'a: b', 'a:', '#x', 'a # b', "it's", '"q"', `'"`, 'a, b', '{x}', '[x]'],
  ...['- a', '? a', '!t', '&a', '*a', '%', '@', '`', '|', '>', '<<', '= x', '\\', 'a\\nb', '木', '🪑'],
  ...['a\nb', '\n', '\t', '\r\n', '\u0000', '\u0007', '\u001b[31m', '\u0085', '\u00a0', '\u2028', '\u202e'],
  ...['\ufeff', '\ufffd', '\ud83e', 'x'.repeat(300), `${'word '.repeat(60)}end`, `${'a\n'.repeat(60)}b`],
];

const unit = fc.oneof(fc.constantFrom(...odd), fc.string({ unit: 'binary' }), fc.string());

describe('a text in one line of a design file', () => {
  it.each(odd.map((text) => [JSON.stringify(text), text]))('%s', (_, text) => {
    const written = yamlFlow(text);
    expect(written).not.toMatch(/[\n\r]/);
    expect(
      readBack(`name: ${written} # a comment\nparts: [{ layer: ${written}, id: ${written} }]\n`),
    ).toEqual({
      name: text,
      parts: [{ layer: text, id: text }],
    });
  });

  it('reads back as the very same, whatever its letters', () => {
    fc.assert(
      fc.property(unit, unit, (file, layer) => {
        const value = { drawing: { file, layer, origin: [0, -1.5], mirror: true } };
        const written = yamlFlow(value);
        expect(written).not.toMatch(/[\n\r]/);
        expect(readBack(`- outline: ${written}\n`)).toEqual([{ outline: value }]);
      }),
      { numRuns: 2000 },
    );
  });

  it('says plain words plainly', () => {
    expect(yamlFlow({ drawing: { file: 'a b.dxf', layer: 'Back post', origin: [0, 0.75] } })).toBe(
      '{ drawing: { file: a b.dxf, layer: Back post, origin: [0, 0.75] } }',
    );
  });
});
