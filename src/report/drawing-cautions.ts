/** What was taken from drawing files: how large it came out, so that a wrong unit is seen, and what was left out. */
import type { TakenFromFile } from '../chair/part-outline.js';
import type { CheckResult } from '../check-design.js';
import { leftOutWords } from '../drawing/read/left-out.js';
import { saySmoothing, sayUnsmoothed } from './smoothing-words.js';
import { formatInches, formatMillimetres, formatNumber } from '../quantity/print.js';

export function drawingCautions(result: CheckResult): string[] {
  const { parts } = result.chair;
  const taken = parts.flatMap(({ name, drawn }) => drawn.map((one) => ({ name, one })));
  const files = new Map(taken.map(({ one }) => [one.file, one]));
  return [
    ...taken.flatMap(({ name, one }) => [saySize(name, one), ...saySmoothing(name, one)]),
    ...sayUnsmoothed(result),
    ...[...files.values()].flatMap((one) => [...sayUnits(one), ...sayLeftOut(one)]),
  ];
}

function saySize(name: string, { file, box, duplicates, leftOpen }: TakenFromFile): string {
  const { left, right, foot, top } = box;
  const twice = duplicates > 0 ? [`Drawn twice and taken once: ${formatNumber(duplicates, 0)}.`] : [];
  const open = leftOpen > 0 ? [`Lines that do not close, left out: ${formatNumber(leftOpen, 0)}.`] : [];
  const size = sizeInBoth(right - left, top - foot);
  return [`${name}, from ${file}: ${size}. Is that its size?`, ...twice, ...open].join(' ');
}

export const sizeInBoth = (width: number, height: number): string =>
  `${formatMillimetres(width, 1)} by ${formatMillimetres(height, 1)}, or ${formatInches(width, 64)} by ${formatInches(height, 64)}`;

/** The design’s word counts, as files often declare what nobody meant. */
function sayUnits({ file, units: { declared, stated } }: TakenFromFile): string[] {
  if (declared === null || stated === null || declared === stated) return [];
  const [own, asked] = [declared, stated].map((metres) => formatNumber(1000 * metres, 4));
  return [`${file} says that its unit is ${own} mm long; it was read with the ${asked} mm of this design.`];
}

export const sayLeftOut = ({ file, leftOut }: Pick<TakenFromFile, 'file' | 'leftOut'>): string[] =>
  leftOut.length > 0 ? [`Left out of ${file}: ${leftOut.map(leftOutWords).join('; ')}.`] : [];
