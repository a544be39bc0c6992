/** What a maker is told when a drawing has been made a design: sizes, so that a wrong unit is seen, and what was not taken. */
import { boxAroundBoxes, type Box } from '../geometry/box.js';
import { sayLeftOut, sizeInBoth } from '../report/drawing-cautions.js';
import { printable } from '../report/printable.js';
import { sayUnmade } from '../report/smoothing-words.js';
import { wrap } from '../report/wrap.js';
import type { DrawnPart, FromDrawing } from './from-drawing.js';
import { sayOpened } from './from-drawing-text.js';
import { seatLines, type SeatLine } from './seat-lines.js';

const columns = 100;

/** Of what was not taken: a drawing of nothing but notes says so often enough. */
const mostTold = 12;

/** @param drawing as typed @param blanks that are left in the design */
export function summaryOfDrawing(found: FromDrawing, drawing: string, blanks: number): string {
  const { parts, unfinished, lines, opened, nameless, leftOut, facesLeft, mirror } = found;
  const read = (Object.keys(seatLines) as SeatLine[]).filter((line) => lines[line] !== undefined);
  const said = [
    `${drawing}: ${count(parts.length, 'part')}; all of it ${sayBox(boxAroundBoxes(parts.map(({ box }) => box)))}. Is that its size?`,
    ...parts.map((part) => `  ${part.name}: ${sayBox(part.box)}${outlinesOf(part)}`),
    ...opened.map(sayOpened),
    ...severalIn(found),
    ...(read.length > 0 ? [`Lines read: ${read.join(', ')}.`] : []),
    ...unfinished
      .slice(0, mostTold)
      .map(
        ({ name, flaws: [flaw] }) =>
          `Not taken, only a comment: ${name}. Expected ${flaw!.expected}, found ${flaw!.found}.`,
      ),
    ...(unfinished.length > mostTold
      ? [`Not taken too, comments with the reason in the design: ${unfinished.length - mostTold} more.`]
      : []),
    ...parts.flatMap(({ name, smoothing }) =>
      smoothing.left > 0 ? [`${name}: ${sayUnmade(smoothing)}`] : [],
    ),
    ...[...parts, ...unfinished].flatMap(({ name, shares }) =>
      shares.map((other) => `Some of ${name} is on ${other} too: keep one of the two.`),
    ),
    ...(facesLeft && !mirror
      ? ['By its seat and back lines the chair faces left: begin again with --mirror.']
      : []),
    ...(nameless.length > 0
      ? [
          `Left out: ${count(nameless.length, 'curve')} on no layer and without an id (line ${nameless[0]!.line}).`,
        ]
      : []),
    ...sayLeftOut({ file: drawing, leftOut }),
    `${count(blanks, 'blank')} to fill in, marked \`# wanted\`; \`trueroll check\` names those that are left.`,
  ];
  return said.map((line) => `${wrap(printable(line), columns, indentOf(line), '    ')}\n`).join('');
}

/** All on one layer, as many drawings have it. */
function severalIn({ parts, unfinished }: FromDrawing): string[] {
  const [only, ...others] = [...parts, ...unfinished];
  if (others.length > 0 || only!.outlines === 1) return [];
  return ['All of it is one part so far: where it is several, put each on a layer of its own.'];
}

const indentOf = (line: string): string => /^ */.exec(line)![0];

const count = (number: number, what: string): string => `${number} ${what}${number === 1 ? '' : 's'}`;

const outlinesOf = ({ outlines }: DrawnPart): string => (outlines > 1 ? `, ${outlines} outlines` : '');

const sayBox = ({ left, right, foot, top }: Box): string => sizeInBoth(right - left, top - foot);
