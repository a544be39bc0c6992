/** What to mind: first what concerns this design, then what concerns any rocking chair. */
import type { CheckResult } from '../check-design.js';
import { supportAt } from '../geometry/profile.js';
import { tiltAt, turnOfContacts } from '../rolling/unequal-rockers.js';
import { implausible, type Implausible } from '../checks/plausibility.js';
import {
  formatDegrees,
  formatInches,
  formatKilograms,
  formatLength,
  formatMillimetres,
  formatNumber,
} from '../quantity/print.js';
import { printedStatures } from '../sitter/percentiles.js';
import type { MeasureKey } from '../names.js';
import { isImperial, type LengthUnit } from '../quantity/units.js';
import { loadWords } from './measure-words.js';
import { drawingCautions } from './drawing-cautions.js';
import { sayUnlike, surfaceCautions } from './surface-words.js';
import { movingCautions } from './moving-cautions.js';

export const cautionsOf = (result: CheckResult): string[] => [
  ...drawingCautions(result),
  ...surfaceCautions(result),
  ...drawnFloor(result),
  ...implausible(result.chair, result.design.kind).map((sign) => sayImplausible(sign, result.design.units)),
  ...otherRests(result),
  ...otherSides(result),
  ...stretched(result),
  ...roundedTips(result),
  ...porchFloor(result),
  ...unequalRockers(result),
  ...movingCautions(result),
  ...standingCautions,
];

/** Gaps want a finer rule than the parts do. */
const formatLengthFine = (length: number, units: LengthUnit): string =>
  isImperial(units) ? formatInches(length, 32) : formatMillimetres(length, 1);

function sayImplausible(sign: Implausible, units: LengthUnit): string {
  switch (sign.what) {
    case 'light':
      return `The chair weighs ${formatKilograms(sign.mass)}: lighter than most. Is a part, a \`count\` or an \`across\` missing?`;
    case 'heavy':
      return `The chair weighs ${formatKilograms(sign.mass)}: heavier than most. Is an \`across\` or a \`count\` too large?`;
    case 'heavy part':
      return `${sign.part} is ${formatNumber(100 * sign.share, 0)} % of the chair’s weight. Weigh it, or look at its \`across\`.`;
    case 'narrow seat':
      return `${sign.part} is ${formatLength(sign.across, units)} across the chair: \`across\` is its width, not its thickness.`;
    case 'gap':
      return `${sign.parts.join(' and ')} are ${formatLengthFine(sign.gap, units)} apart: were they meant to touch?`;
    case 'rocker alone':
      return `${sign.part} touches no other part: what carries the chair on its rockers?`;
    case 'loose part':
      return `${sign.part} touches no other part: what holds it?`;
    case 'one rocker':
      return `The chair runs on one ${sign.part}, though rockers are said to be some way apart: is \`count: 2\` missing?`;
    case 'rockers in one':
      return `${sign.part}: ${formatLength(sign.spacing, units)} from centre line to centre line, and each ${formatLength(sign.across, units)} across: they would be one.`;
  }
}

/** The contract's figure: a drawing whose floor lies farther from y = 0 is probably not drawn as meant. */
const drawnFloorTolerance = 0.003;

function drawnFloor({ design, chair }: CheckResult): string[] {
  const floor = -supportAt(chair.profile, 0);
  if (Math.abs(floor) <= drawnFloorTolerance) return [];
  return [
    `The drawn chair touches the floor at y = ${formatLength(floor, design.units)}, not at y = 0: ` +
      'the lowest place of the drawing was taken as the floor.',
  ];
}

function otherRests({ loads }: CheckResult): string[] {
  return loads
    .filter(({ record }) => ['empty', 'seated'].includes(record.load.id))
    .flatMap(({ record: { load, roll } }) =>
      roll.otherRests.map(
        (lean) =>
          `Off its rockers, with ${load.sitter ?? 'nobody'} in it, the chair could also settle ` +
          `${formatDegrees(Math.abs(lean))} ${lean > 0 ? 'back' : 'forward'} of the drawing.`,
      ),
    );
}

/** A chair is made for the first sitter; what suits the others less is said, not judged. */
function otherSides({ limits, design }: CheckResult): string[] {
  return limits.flatMap(({ cautioned, measure, value, sitter }) => {
    const say = measure === null ? undefined : otherSideWords[measure];
    if (!cautioned || value === null || say === undefined) return [];
    return [`For ${sitter ?? 'the sitter'} ${say(formatLength(Math.abs(value), design.units))}.`];
  });
}

const otherSideWords: Readonly<Partial<Record<MeasureKey, (length: string) => string>>> = {
  kneeHollowGapM: (gap) => `the seat is low: its front edge is ${gap} under the knee hollow`,
  seatDepthGapM: (gap) => `the seat is shallow: it ends ${gap} short of the knee hollow`,
  armHeightGapM: (gap) => `the arms are low: ${gap} under the elbow`,
};

/** Beyond the people whose proportions the tables have. */
function stretched({ people }: CheckResult): string[] {
  const names = people.persons
    .filter(({ size: { body, stature } }) => {
      const { least, greatest } = printedStatures(body);
      return stature < least || stature > greatest;
    })
    .map(({ name }) => name);
  if (names.length === 0) return [];
  return [
    `The tables of bodies are of grown people: for ${names.join(' and ')} they are a stretch. Measure and state ` +
      '`measured` where it matters.',
  ];
}

/** Leaning so far round its tip a runner has no end that was meant: its corner is rounded off. */
const roundTheTip = Math.PI / 3;

function roundedTips({ chair: { surface, parts } }: CheckResult): string[] {
  if (surface.tail.lean < roundTheTip && surface.nose.lean > -roundTheTip) return [];
  return [
    `The running surface of ${parts[surface.owner]!.name} goes round its tips, since no corner ends it: state ` +
      'its ends with `runs: { from: [x, y], to: [x, y] }`.',
  ];
}

/** 1/4 in per ft, the fall of a porch floor (common practice, no source). */
const porchFall = Math.atan(1 / 48);

/** A floor out of level by ε changes the seat's slope to the plumb by about ε ρ/(ρ - H). */
function porchFloor({ design, loads }: CheckResult): string[] {
  if (design.kind !== 'porch') return [];
  const changes = loads
    .filter(({ record }) => record.load.id === 'seated')
    .flatMap(({ record: { load, roll } }) => {
      const rest = roll.atRest?.rest;
      if (!rest || rest.flat > 0) return [];
      const hang = Math.min(...rest.hang);
      const change = (porchFall * (rest.height + hang)) / hang;
      return [`${formatDegrees(change)} for ${load.sitter ?? loadWords[load.id]}`];
    });
  if (changes.length === 0) return [];
  return [
    'On a porch floor that falls 1/4 in per ft the seat slopes more or less, by the way the chair faces: about ' +
      `${changes.join(', ')}.`,
  ];
}

/** How far it turns over a rock, and how it tilts at rest; of the first sitter, or of the empty chair. */
function unequalRockers(result: CheckResult): string[] {
  const { chair, loads, people } = result;
  const { sides, spacing } = chair;
  const load = people.persons.length > 0 ? 'seated' : 'empty';
  const of = loads.find(({ record }) => record.load.id === load)?.record;
  const rest = of?.roll.atRest?.rest;
  if (sides === null || rest === undefined || of === undefined) return [];
  const differ = sayUnlike(result) ?? [];
  if (spacing === null)
    return [
      ['The rockers are unlike: without `spacing` nothing is said of how the chair turns.', differ]
        .flat()
        .join(' '),
    ];
  const rockers = { left: sides.left.profile, right: sides.right.profile, spacing };
  const turn = turnOfContacts(rockers, rest.lean, rest.lean + of.load.swing);
  const tilt = tiltAt(rockers, rest.lean);
  const down = tilt > 0 ? 'right' : 'left';
  const tilted =
    Math.abs(tilt) < seenTilt ? '' : `; at rest it tilts ${formatHundredths(tilt)} down to the ${down}`;
  return [
    `The rockers are unlike. Leaning back ${formatDegrees(of.load.swing)} the line through the two places where it ` +
      `touches turns ${formatHundredths(turn)} towards the sitter’s ${turn > 0 ? 'left' : 'right'}, and back again on ` +
      `the way forward${tilted}. With a little slip at each rock it walks round.`,
    differ,
  ].flat();
}

/** A twentieth of a degree: less no level shows. */
const seenTilt = (0.05 * Math.PI) / 180;

/** Turning is felt finer than half a degree. */
const formatHundredths = (angle: number): string => `${formatNumber(Math.abs(angle) * (180 / Math.PI))}°`;

/** In every human report. */
export const standingCautions: readonly string[] = [
  'This is a calculation from the sizes you gave: no test, no proof of strength, and no claim to meet any standard.',
  'Load the finished chair with sandbags before anyone sits in it; then sit first with somebody standing behind.',
  'Any rocking chair goes over when it is climbed, knelt in backwards, stood on or pushed hard.',
  'Never fall asleep in it holding a baby. Rise with a child only when the chair is still and both feet are flat.',
  'The rockers crush fingers, toes and pets’ tails. Keep the floor behind it clear, and it away from steps and edges.',
  'Only the people and the floor listed here were looked at. Have strength, and a chair for sale, judged by ' +
    'somebody licensed where you live.',
];
