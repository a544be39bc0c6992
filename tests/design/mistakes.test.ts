/** One mistake in a design: told once, at its line and column, with what helps. */
import { describe, expect, it } from 'vitest';
import { disc, mistakesIn } from './read.js';

const sitter = '{ name: a, body: female, stature: 5\' 0", mass: 105 lb }';
const lines = 'seat: { front: [9, 16], rear: [-8, 14] }\nback: { foot: [-8, 15], top: [-15, 42] }\n';
const part = (old: string, other: string) => disc.replace(old, other);
const outline = (other: string) => part('{ circle: { centre: [0, 5], radius: 5 } }', other);
const rocker = (radius: string) => outline(`{ rocker: { radius: ${radius}, depth: 2, nose: 20, tail: 20 } }`);

/** [what, design, line:column, what is told]. */
type Row = readonly [what: string, text: string, place: string, told: RegExp];

function table(title: string, rows: readonly Row[]): void {
  describe(title, () => {
    it.each(rows)('%s', (_, text, place, told) => {
      const mistakes = mistakesIn(text);
      expect(mistakes).toEqual([mistakes[0]]);
      expect(mistakes[0]).toMatch(told);
      expect(mistakes[0]!.split(': ')[0]).toBe(`chair.yaml:${place}`);
    });
  });
}

table('keys', [
  ['an unknown one', `${disc}spaceing: 20\n`, '7:1', /found `spaceing`\. Hint: did you mean `spacing`\?/],
  [
    'one that is like none',
    part('mass', 'colour: red\n    mass'),
    '5:5',
    /found `colour`\. Hint: known are name, /,
  ],
  ['given twice', `${disc}units: mm\n`, '7:1', /expected each key once, found `units` a second time/],
  ['__proto__', `${disc}__proto__: 3\n`, '7:1', /found `__proto__`/],
  ['<<', `${disc}<<: { name: a }\n`, '7:1', /found `<<`/],
  ['misspelt and so missing', part('outline', 'outlin'), '6:5', /did you mean `outline`\?/],
  [
    'missing',
    part('  mass: 1 kg\n    outline', '  outline'),
    '4:5',
    /expected `wood`, `density` or `mass`, found none/,
  ],
  [
    'no version',
    part('trueroll: 1\n', ''),
    '1:1',
    /expected `trueroll`: 1, the version of the format, found none/,
  ],
  ['another version', part('trueroll: 1', 'trueroll: 2'), '1:11', /expected 1, .* found the number 2/],
  ['no parts', 'trueroll: 1\n', '1:1', /expected `parts`: a list of parts, found none/],
  ['a list of no parts', 'trueroll: 1\nparts: []\n', '2:8', /expected a list of parts, found an empty list/],
  [
    'thickness of a part',
    part('mass: 1 kg', 'wood: red oak\n    thickness: 1'),
    '6:5',
    /Hint: write `across`/,
  ],
  ['across missing', part('mass: 1 kg', 'wood: white ash'), '4:5', /expected `across`/],
  [
    'mass and weight',
    part('mass: 1 kg', 'mass: 1 kg\n    weight: 1 kg'),
    '6:5',
    /`mass` or `weight`, not both/,
  ],
  [
    'wood and density',
    part('mass: 1 kg', 'wood: white ash\n    density: 700 kg/m3\n    across: 1'),
    '6:5',
    /not both/,
  ],
]);

table('types, in a maker’s words', [
  ['text for a list', `${disc}extras: bolts\n`, '7:9', /expected a list of extras, found the text `bolts`/],
  [
    'list for a block',
    `${disc}seat: [1, 2]\n`,
    '7:7',
    /expected the seat line: front, rear, found a list of 2/,
  ],
  [
    'block for a value',
    `${disc}spacing: { at: 3 }\n`,
    '7:10',
    /expected a length such as .*, found a block of keys/,
  ],
  [
    'nothing for a value',
    `${disc}spacing:\n`,
    '7:1',
    /expected `spacing`: a length such as .*, found nothing$/,
  ],
  [
    'nothing for a value of a part',
    part('mass: 1 kg', 'wood:\n    across: 1'),
    '5:5',
    /expected `wood` of `disc`: a wood such as .*, found nothing$/,
  ],
  [
    'a blank that says itself what belongs there',
    `${disc}spacing: # wanted: the rockers, centre line to centre line\n`,
    '7:1',
    /expected `spacing`: .*, found a blank\. Hint: the rockers, centre line to centre line$/,
  ],
  ['true for a value', `${disc}spacing: true\n`, '7:10', /expected a length such as .*, found true/],
  ['nothing for a part', `${disc}  -\n`, '7:4', /expected a part: .*, found nothing/],
  [
    'a value cut by #',
    part('disc', '#2'),
    '4:5',
    /expected `name`: a name, found nothing\. Hint: a # begins a comment/,
  ],
  ['an empty name', part('disc', '""'), '4:11', /expected a name, found an empty text/],
  ['an unknown kind', `${disc}kind: prch\n`, '7:7', /expected one of adult, .* Hint: did you mean `porch`\?/],
  ['an unknown unit', part('units: in', 'units: miles'), '2:8', /expected one of in, mm, cm, m, ft/],
  ['an unknown floor', `${disc}floor: bare bords\n`, '7:8', /did you mean `bare boards`\?/],
  [
    'an unknown wood',
    part('mass: 1 kg', 'wood: whit ash\n    across: 1'),
    '5:11',
    /did you mean `white ash`\?/,
  ],
]);

table('values', [
  ['of another kind', `${disc}spacing: 20 kg\n`, '7:10', /expected a length, found a mass/],
  ['inside a quoted text', `${disc}spacing: "3 in + 2 kgs"\n`, '7:20', /`kgs`/],
  ['inside a list', part('[0, 5]', '[0, 5 kg]'), '6:38', /expected a length, found a mass/],
  ['over two lines: at its start', `${disc}spacing: 3 in +\n  2 kgs\n`, '7:10', /`kgs`/],
  ['no number', `${disc}spacing: .nan\n`, '7:10', /found the number NaN/],
  ['infinite', `${disc}spacing: .inf\n`, '7:10', /found the number Infinity/],
  ['negative', `${disc}spacing: -3\n`, '7:10', /expected more than 0, found `-3`/],
  [
    'negative by a sum',
    `${disc}dimensions: { gap: 3 in }\nspacing: gap - 5 in\n`,
    '8:10',
    /found `gap - 5 in`, which is -0\.0508 m/,
  ],
  ['zero mass', part('1 kg', '0 kg'), '5:11', /expected more than 0/],
  ['half a part', part('mass', 'count: 1.5\n    mass'), '5:12', /expected a whole number, 1 or more/],
  ['a count with a unit', part('mass', 'count: 2 in\n    mass'), '5:12', /expected a pure number/],
  ['a decimal comma', `${disc}spacing: 1,5 in\n`, '7:11', /decimal point .*`1\.5`/],
  [
    'a decimal comma in braces',
    `${disc}room: { wall: 1,5 in }\n`,
    '7:17',
    /found `5 in`\. Hint: .*`1\.5 in`/,
  ],
  [
    'a decimal comma in a point',
    part('[0, 5]', '[0,5, 5]'),
    '6:34',
    /expected a point .*, found a list of 3\. Hint:/,
  ],
  [
    'an unknown name',
    `${disc}dimensions: { reach: 3 in }\nspacing: raech\n`,
    '8:10',
    /did you mean `reach`\?/,
  ],
  [
    'too high a percentile',
    `${disc}${lines}sitters: [{ name: a, body: male, percentile: 101 }]\n`,
    '9:46',
    /from 0 to 100/,
  ],
  ['a mass without unit', part('1 kg', '1'), '5:11', /expected a mass/],
]);

table('units that are not stated', [
  ['bare lengths: one mistake at the first', part('units: in\n', ''), '5:35', /`units: in`/],
  [
    'in path data',
    outline('{ path: "M 0 0 L 1 0 L 1 1 Z" }').replace('units: in\n', ''),
    '5:22',
    /`units: in`/,
  ],
  [
    'in a range',
    `${part('units: in\n', '').replace('[0, 5], radius: 5', '[0 in, 5 in], radius: 5 in')}limits: { flatLongest: .. 25 }\n`,
    '6:24',
    /`units: in`/,
  ],
  ['misspelt', part('units', 'unit'), '2:1', /did you mean `units`\?/],
]);

table('named values', [
  [
    'a circle',
    `${disc}dimensions: { a: b, b: c, c: 2 * a, d: a + 1 in }\nspacing: d\n`,
    '7:18',
    /found the circle a → b → c → a/,
  ],
  ['itself', `${disc}dimensions: { a: a + 1 in }\nspacing: a\n`, '7:18', /found the circle a → a/],
  ['a unit for a name', `${disc}dimensions: { in: 3 in }\n`, '7:15', /no unit and no function, found `in`/],
  [
    'a function for a name',
    `${disc}dimensions:\n  sqrt: 3 in\n`,
    '8:3',
    /no unit and no function, found `sqrt`/,
  ],
  [
    'a hyphen',
    `${disc}dimensions: { seat-depth: 3 in }\nspacing: seat-depth\n`,
    '7:15',
    /letters and digits/,
  ],
  [
    'unreadable, used twice',
    `${disc}dimensions: { a: 3 in + 1 kg, b: a }\nspacing: b\nroom: { wall: a }\nlimits: { flatLongest: .. a }\n`,
    '7:25',
    /one kind/,
  ],
  [
    'infinite',
    `${disc}dimensions: { a: 3 in, b: a / (a - 3 in) }\nspacing: b * 1 in\n`,
    '7:27',
    /expected a finite number/,
  ],
  ['a list', `${disc}dimensions: { a: [3 in] }\nspacing: a\n`, '7:18', /expected a value such as/],
]);

table('outlines', [
  [
    'no outline',
    outline('round'),
    '6:14',
    /expected an outline, or a list of outlines, found the text `round`/,
  ],
  ['none in the list', outline('[]'), '6:14', /found an empty list/],
  ['an unknown form', outline('{ cirle: { centre: [0, 5], radius: 5 } }'), '6:16', /did you mean `circle`\?/],
  ['no form', outline('{ hole: true }'), '6:14', /expected one of rocker, .* found none/],
  [
    'two forms',
    outline('{ path: "M 0 0", bar: { from: [0, 0], to: [1, 1], width: 1 } }'),
    '6:16',
    /several are a list/,
  ],
  ['path data without quotes', outline('{ path: M 0,0 L 1,0 L 1,1 Z }'), '6:22', /put path data in quotes/],
  [
    'a drawing',
    outline('{ drawing: { file: a.dxf, layer: 0 } }'),
    '6:33',
    /a drawing file that can be read, found a file that was not handed over/,
  ],
  ['in a list', outline('[{ circle: { centre: [0, 5], radius: -1 } }]'), '6:51', /more than 0/],
  ['a radius of nothing', rocker('[]'), '6:34', /a list of arcs/],
  ['an arc without its end', rocker('[{ radius: 42 }, { radius: 60 }]'), '6:35', /expected `until`/],
  [
    'an arc’s end misspelt',
    rocker('[{ radius: 42, untl: 3 }, { radius: 60 }]'),
    '6:49',
    /did you mean `until`/,
  ],
  [
    'a last arc with an end',
    rocker('[{ radius: 42, until: 3 }, { radius: 60, until: 9 }]'),
    '6:75',
    /no `until` on the last arc/,
  ],
  ['an arc that is none', rocker('[{ radius: 42, until: 3 }, null]'), '6:61', /expected an arc/],
  [
    'a radius of another kind',
    rocker('[{ radius: 42 kg, until: 3 }, { radius: 60 }]'),
    '6:45',
    /found a mass/,
  ],
]);

table('people', [
  [
    'neither list nor standard',
    `${disc}${lines}sitters: standrd\n`,
    '9:10',
    /expected `standard`, or a list of sitters/,
  ],
  ['nowhere to sit', `${disc}sitters: [${sitter}]\n`, '7:10', /expected `seat` and `back`/],
  [
    'a name twice',
    `${disc}${lines}sitters:\n  - ${sitter}\n  - ${sitter}\n`,
    '11:13',
    /a name that no sitter before has/,
  ],
  [
    'no stature',
    `${disc}${lines}sitters: [{ name: a, body: male, weight: 9 kg }]\n`,
    '9:11',
    /expected `stature`, found none\. Hint: or a `percentile`/,
  ],
  [
    'stature and height',
    `${disc}${lines}sitters: [{ name: a, body: male, stature: 2 m, height: 2 m, mass: 9 kg }]\n`,
    '9:48',
    /`stature` or `height`, not both/,
  ],
  ['another body', `${disc}child: { body: boi, age: 9 months }\n`, '7:16', /did you mean `boy`\?/],
  ['a child of no age', `${disc}child: { body: girl }\n`, '7:8', /expected `body` and `age`, or `mass`/],
]);

table('loads and limits', [
  ['an unknown load', `${disc}loads: { getin-up: off }\n`, '7:10', /did you mean `getting-up`\?/],
  ['an unknown setting', `${disc}loads: { seated: { swng: 6 deg } }\n`, '7:20', /did you mean `swing`\?/],
  ['a setting of another load', `${disc}loads: { seated: { shove: 0.2 } }\n`, '7:20', /known are swing/],
  [
    'neither off nor settings',
    `${disc}loads: { seated: none }\n`,
    '7:18',
    /expected `off`, or settings of seated: swing/,
  ],
  ['a bare angle', `${disc}loads: { seated: { swing: 6 } }\n`, '7:27', /expected an angle/],
  ['an unknown measure', `${disc}limits: { perid: 1 s .. 2 s }\n`, '7:11', /did you mean `period`\?/],
  [
    'its JSON name',
    `${disc}limits: { seatSlopeDeg: 1 deg .. 2 deg }\n`,
    '7:11',
    /did you mean `seatSlope`\?/,
  ],
  [
    'a measure the load has not',
    `${disc}limits: { empty: { footReach: .. 1 } }\n`,
    '7:20',
    /expected a measure that `empty` has, found `footReach`\. Hint: `footReach` is a measure of seated/,
  ],
  ['a single value', `${disc}limits: { period: 2 s }\n`, '7:19', /expected a range/],
  ['ends of another kind', `${disc}limits: { period: 2 s .. 3 deg }\n`, '7:26', /expected a time/],
  ['from more to less', `${disc}limits: { period: 3 s .. 2 s }\n`, '7:19', /3 s \.\. 2 s/],
  [
    'from more to less by names',
    `${disc}dimensions: { a: 3 s }\nlimits: { period: a .. 2 s }\n`,
    '8:19',
    /from less to more/,
  ],
  ['at most, unquoted', `${disc}limits: { period: <= 2 s }\n`, '7:19', /`\.\. 2 s`/],
]);

const sized = (errors: string) =>
  `${disc}dimensions: { radius: 39 in, bare: 42, board: 6 in * 2 in, weight: 3 kg }\nerrors: ${errors}\n`;

table('errors of the shop', [
  [
    'of an unknown dimension',
    sized('{ radus: 1/32 in }'),
    '8:11',
    /found `radus`\. Hint: did you mean `radius`\?/,
  ],
  [
    'of one that is like none',
    sized('{ tail: 1 in }'),
    '8:11',
    /Hint: known are radius, bare, board, weight/,
  ],
  ['of another kind', sized('{ radius: 1 kg }'), '8:19', /expected a length, found a mass/],
  [
    'of another kind, normal',
    sized('{ weight: { normal: 1/16 in } }'),
    '8:29',
    /expected a mass, found a length/,
  ],
  [
    'with a unit for a bare number',
    sized('{ bare: 1/32 in }'),
    '8:17',
    /expected a pure number, found a length/,
  ],
  ['of nothing', sized('{ radius: 0 }'), '8:19', /expected more than 0, found `0`/],
  ['negative', sized('{ radius: -1/32 in }'), '8:19', /expected more than 0/],
  ['negative, normal', sized('{ radius: { normal: -1 } }'), '8:29', /expected more than 0/],
  ['of an area', sized('{ board: 1 in }'), '8:11', /found `board`, which is none/],
  ['of another form', sized('{ radius: { normla: 1 } }'), '8:21', /did you mean `normal`/],
  ['in a list', sized('[1/32 in]'), '8:9', /expected how far off named dimensions may be/],
  ['two lists', sized('{ radius: [1, 2] }'), '8:19', /expected how far off: `1\/32 in` either way/],
]);

describe('several mistakes of the errors', () => {
  it('are told together, and a dimension that is at fault itself once', () => {
    expect(mistakesIn(sized('{ radus: 1 in, radius: 1 kg, weight: [] }'))).toHaveLength(3);
    const broken = `${disc}dimensions: { radius: 39 inn }\nerrors: { radius: 1/32 in }\n`;
    expect(mistakesIn(broken)).toEqual([expect.stringMatching(/^chair\.yaml:7:/)]);
  });
});
