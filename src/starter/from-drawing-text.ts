/** The design file that a drawing gives, with blanks for what no drawing can tell. */
import { yamlFlow } from '../design/yaml-flow.js';
import type { Flaw } from '../geometry/flaw.js';
import type { Point } from '../geometry/point.js';
import type { ChairKind } from '../names.js';
import { formatInches, formatMillimetres } from '../quantity/print.js';
import { isImperial, metresPer, type LengthUnit } from '../quantity/units.js';
import { sizeInBoth } from '../report/drawing-cautions.js';
import { sayMade, sayUnmade } from '../report/smoothing-words.js';
import { blank, comment } from './comment.js';
import type { DrawnPart, FromDrawing } from './from-drawing.js';
import type { Opened } from './judged-groups.js';
import { seatLines, type SeatLine } from './seat-lines.js';

export interface DesignNames {
  readonly name: string;
  /** null: it is left blank. */
  readonly kind: ChairKind | null;
  /** The sitters as they stand in the file; null: they are left blank. */
  readonly sitters: string | null;
  /** The drawing as the design names it. */
  readonly file: string;
}

export function printFromDrawing(found: FromDrawing, names: DesignNames): string {
  const { name, kind, sitters, file } = names;
  const lines = [
    comment(
      `Begun from ${file}: a part for each layer or id that holds outlines. What no drawing can tell is left blank, with the word wanted; \`trueroll check\` names the blanks that are left. Take out what is no part of the chair.`,
    ),
    '#',
    comment(
      `Side view: x forward (the way the sitter faces), y up from the floor. ${bareNumbers[found.units]}`,
    ),
    comment(whereItLies(found)),
    '',
    'trueroll: 1',
    `name: ${yamlFlow(name)}`,
    kind === null ? blank('kind', 'adult, nursing, child or porch; it chooses the limits') : `kind: ${kind}`,
    `units: ${found.units}`,
    '',
    blank(
      'spacing',
      `the rockers, centre line to centre line, e.g. ${example(found.units, '20 in', '500 mm')}`,
    ),
    sitters === null ? blank('sitters', sittersWanted) : `sitters: ${sitters}`,
    '',
    ...found.opened.map((one) => comment(sayOpened(one))),
    'parts:',
    ...found.parts.flatMap((part) => [...aboutPart(part, found), ...partLines(part, found, file), '']),
    ...found.unfinished.flatMap((part) => [
      ...aboutPart(part, found),
      ...part.flaws.map((flaw) => comment(sayFlaw(flaw), '  ')),
      ...partLines(part, found, file).map((line) => line.replace(/^ {2}/, '  # ')),
      '',
    ]),
    comment('Where the body touches, pressed down, at the middle of the chair.'),
    ...(Object.keys(seatLines) as SeatLine[]).map((line) => lineOf(line, found)),
  ];
  return `${lines.join('\n')}\n`;
}

/** What was taken in the place of a layer, and why. */
export function sayOpened({ group: { name }, flaw, beside }: Opened): string {
  const why = flaw === null ? 'has outlines of several parts' : `is no part as it is drawn (${flaw.found})`;
  const curves = beside.length === 1 ? '1 curve' : `${beside.length} curves`;
  const leftOut = `Left out of it: ${curves} without a name (line ${beside[0]?.line}); is a hole among them?`;
  return `${name} ${why}: what is in it was taken, each by its own name.${beside.length > 0 ? ` ${leftOut}` : ''}`;
}

const sittersWanted =
  'standard, which are those usual for the kind; or who it is for, e.g. [{ name: me, body: female, stature: 5\' 4", mass: 140 lb }]';

const example = (units: LengthUnit, imperial: string, metric: string): string =>
  isImperial(units) ? imperial : metric;

const bareNumbers: Readonly<Record<LengthUnit, string>> = {
  in: 'A bare number is in inches.',
  mm: 'A bare number is in millimetres.',
  cm: 'A bare number is in centimetres.',
  m: 'A bare number is in metres.',
  ft: 'A bare number is in feet.',
};

function whereItLies({ origin, units, mirror, facesLeft }: FromDrawing): string {
  const side = mirror
    ? 'The drawing shows the chair facing left: `mirror` turns it over.'
    : facesLeft
      ? 'By its seat and back lines the chair faces left in the drawing: then begin again with --mirror.'
      : 'In the drawing the chair must face right; if it faces left, begin again with --mirror.';
  return `\`origin\` is the drawing's place that lies at the chair's [0, 0]: x is the drawing's own, and y ${coordinate(origin.y, units)} is the lowest of all parts, which so stands on the floor. ${side}`;
}

/** A micrometre or a ten-thousandth of an inch. */
const digits: Readonly<Record<LengthUnit, number>> = { mm: 3, cm: 4, m: 6, in: 4, ft: 5 };

const coordinate = (metres: number, units: LengthUnit): number =>
  Number((metres / metresPer[units]).toFixed(digits[units])) + 0;

const place = ({ x, y }: Point, units: LengthUnit): readonly [number, number] => [
  coordinate(x, units),
  coordinate(y, units),
];

function aboutPart(
  { name, group, shares, box, outlines, duplicates, leftOpen, smoothing }: DrawnPart,
  found: FromDrawing,
): string[] {
  const { left, right, foot, top } = box;
  const what = group.by === null ? 'All that is drawn' : `${group.by === 'layer' ? 'Layer' : 'Id'} ${name}`;
  const lies = `The drawing's [0, 0] is ${whereFrom(-left, ['ahead of', 'behind'], 'its rear end', found.units)} and ${whereFrom(-foot, ['above', 'below'], 'its lowest place', found.units)}.`;
  const more = [
    ...(outlines > 1 ? [`${outlines} outlines.`] : []),
    ...(duplicates > 0 ? [`Drawn twice and taken once: ${duplicates}.`] : []),
    ...(leftOpen > 0 ? [`Lines that do not close, left out: ${leftOpen}.`] : []),
    ...(smoothing.lines > 0 ? [`${sayMade(smoothing)} by \`smooth\`.`] : []),
    ...(smoothing.left > 0 ? [sayUnmade(smoothing)] : []),
    ...shares.map((other) => `Some of it is on ${other} too: keep one of the two.`),
  ];
  return [comment([`${what}: ${sizeInBoth(right - left, top - foot)}.`, lies, ...more].join(' '), '  ')];
}

/** How far one place lies from another: `3/4 in below its lowest place`. */
function whereFrom(
  size: number,
  [more, less]: readonly [string, string],
  of: string,
  units: LengthUnit,
): string {
  const far = sayLength(Math.abs(size), units);
  return far === sayLength(0, units) ? `at ${of}` : `${far} ${size < 0 ? less : more} ${of}`;
}

const sayLength = (metres: number, units: LengthUnit): string =>
  isImperial(units) ? formatInches(metres, 64) : formatMillimetres(metres, 1);

const sayFlaw = ({ expected, found, hint }: Flaw): string =>
  `No part as it is drawn: expected ${expected}, found ${found}.${hint === undefined ? '' : ` Hint: ${hint}.`}`;

function partLines({ name, group, smoothing }: DrawnPart, found: FromDrawing, file: string): string[] {
  const { stated, mirror, origin, units } = found;
  const drawing = {
    file,
    ...(group.by !== null && { [group.by]: group.name }),
    ...(stated !== null && { units: stated }),
    origin: place(origin, units),
    ...(mirror && { mirror }),
    ...(smoothing.lines > 0 && { smooth: '0.1 mm' }),
  };
  return [
    `  - name: ${yamlFlow(name)}`,
    `    ${blank('count', 'how many of it stand across the chair, e.g. 2')}`,
    `    ${blank('wood', 'e.g. white ash; or in its place `mass`, one piece as weighed')}`,
    `    ${blank('across', `size of one piece across the chair, e.g. ${example(units, '1-1/4 in', '32 mm')}`)}`,
    `    outline: ${yamlFlow({ drawing })}`,
  ];
}

const wantedOfLines: Readonly<Record<SeatLine, string>> = {
  seat: '{ front: [x, y], rear: [x, y] }, or without anybody sitting in it take the line out',
  back: '{ foot: [x, y], top: [x, y] }, or without anybody sitting in it take the line out',
  arms: '{ rear: [x, y], front: [x, y] }, the top where the forearm lies; without arms take the line out',
};

function lineOf(line: SeatLine, { lines, units }: FromDrawing): string {
  const read = lines[line];
  if (!read) return blank(line, wantedOfLines[line]);
  const [first, second] = seatLines[line].ends.map(
    (end, i) => `${end}: ${yamlFlow(place(read.ends[i]!, units))}`,
  );
  return `${line}: { ${first!}, ${second!} } ${comment(`from ${read.from}`)}`;
}

/** How many a design has. */
export const blanksIn = (text: string): number => text.match(/^ *[a-z]+: # wanted: /gmu)?.length ?? 0;
