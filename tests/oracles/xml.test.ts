/** Cases by the clauses of Extensible Markup Language 1.0, fifth edition. */
import { describe, expect, it } from 'vitest';
import { readXml } from './xml.js';

describe('the XML reader', () => {
  it('reads elements, attributes, text and references', () => {
    const head = '<?xml version="1.0" encoding="UTF-8"?>\n';
    expect(readXml(`${head}<a x="1 &lt; 2&#10;3"><b/>&amp;<c>&#x1F4A9;\r\n</c></a>\n`)).toEqual({
      name: 'a',
      attributes: { x: '1 < 2\n3' },
      text: '&',
      children: [
        { name: 'b', attributes: {}, text: '', children: [] },
        { name: 'c', attributes: {}, text: '💩\n', children: [] },
      ],
    });
  });

  it('reads a line feed in an attribute as a space (3.3.3)', () => {
    expect(readXml('<a x="1\n2"/>').attributes).toEqual({ x: '1 2' });
  });

  it.each([
    ['no root', ''],
    ['two roots (2.1)', '<a/><b/>'],
    ['an element left open (3)', '<a><b></b>'],
    ['elements that cross (3)', '<a><b></a></b>'],
    ['an attribute twice (3.1)', '<a x="1" x="2"/>'],
    ['an attribute without quotes (3.1)', '<a x=1/>'],
    ['< in an attribute (3.1)', '<a x="<"/>'],
    ['an ampersand alone (2.4)', '<a>fish & chips</a>'],
    ['a reference without its end (4.1)', '<a>&lt</a>'],
    ['an entity nobody declared (4.1)', '<a>&nbsp;</a>'],
    ['a reference to a forbidden character (4.1)', '<a>&#7;</a>'],
    ['a control character (2.2)', '<a>\u0007</a>'],
    ['half of a surrogate pair (2.2)', '<a>\ud83d</a>'],
    [']]> in text (2.4)', '<a>]]></a>'],
  ])('refuses %s', (_, document) => {
    expect(() => readXml(document)).toThrow();
  });
});
