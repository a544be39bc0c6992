import { describe, expect, it } from 'vitest';
import { indexOf, namedGroups } from '../../src/starter/named-groups.js';
import { dxf } from '../drawing/read/dxf-text.js';
import { svg } from '../drawing/read/svg-drawn.js';
import { box, drawnIn, onLayer } from './drawings.js';

const rect = (attributes = ''): string => `<rect ${attributes} width="2" height="30"/>`;
const namedIn = (text: string) => {
  const drawn = drawnIn(text);
  return namedGroups(drawn, indexOf(drawn));
};
const groupsIn = (text: string) => {
  const { groups, nameless } = namedIn(text);
  return [groups.map(({ by, name, curves }) => [by, name, curves.length]), nameless.length];
};

describe('what a drawing is asked for by', () => {
  it.each([
    [
      'layers of a DXF',
      dxf([box('a', 0, 0, 1, 1), box('0', 0, 0, 1, 1), box('a', 2, 0, 1, 1)]),
      [
        ['layer', 'a', 2],
        ['layer', '0', 1],
      ],
      0,
    ],
    [
      'a layer without a name',
      dxf([box('a', 0, 0, 1, 1), onLayer('', box('b', 0, 0, 1, 1))]),
      [['layer', 'a', 1]],
      1,
    ],
    [
      'named groups of an SVG',
      svg(`<g id="a">${rect()}</g><g id="b"><g id="c">${rect()}</g>${rect()}</g>`),
      [
        ['layer', 'a', 1],
        ['layer', 'b', 2],
      ],
      0,
    ],
    [
      'labels of groups before their ids',
      svg(`<g id="g1" ink:label="a">${rect()}</g><g id="g2" ink:label="b">${rect()}</g>`),
      [
        ['layer', 'a', 1],
        ['layer', 'b', 1],
      ],
      0,
    ],
    [
      'labels that are ids too',
      svg(
        `<g id="g1" ink:label="a">${rect('id="a"')}</g><g id="b" ink:label="b">${rect('id="r1"')}${rect('id="r2"')}</g>`,
      ),
      [
        ['layer', 'a', 1],
        ['layer', 'b', 2],
      ],
      0,
    ],
    [
      'groups within one that is around all',
      svg(`<g id="chair"><g id="a">${rect()}</g><g id="b">${rect()}</g></g>`),
      [
        ['layer', 'a', 1],
        ['layer', 'b', 1],
      ],
      0,
    ],
    [
      'labels within a group that is around unlabelled ones too',
      svg(
        `<g id="chair"><g id="g1" ink:label="a"><g id="g2">${rect()}</g></g><g id="b">${rect()}</g>${rect('id="c"')}</g>`,
      ),
      [
        ['layer', 'a', 1],
        ['layer', 'b', 1],
        ['id', 'c', 1],
      ],
      0,
    ],
    ['one group', svg(`<g id="a">${rect()}${rect('x="5"')}</g>`), [['layer', 'a', 2]], 0],
    [
      'ids where there are no groups',
      svg(`${rect('id="a"')}${rect('id="b"')}${rect()}`, 'id="all"'),
      [
        ['id', 'a', 1],
        ['id', 'b', 1],
      ],
      1,
    ],
    [
      'an id beside groups',
      svg(`<g id="a">${rect()}</g>${rect('id="b"')}`, 'id="all"'),
      [
        ['layer', 'a', 1],
        ['id', 'b', 1],
      ],
      0,
    ],
    ['nothing', svg(`${rect()}${rect('x="5"')}`, 'id="all"'), [[null, '', 2]], 0],
  ])('%s', (_, text, groups, nameless) => {
    expect(groupsIn(text)).toEqual([groups, nameless]);
  });
});
