/** What was taken from drawing files: how large it came out, so that a wrong unit is seen, and what was left out. */
import type { CheckResult } from '../check-design.js';
import type { LeftOut } from '../drawing/read/drawn.js';
import { drawnOutlines } from '../drawing/read/outlines.js';
import { formatInches, formatMillimetres, formatNumber } from '../quantity/print.js';

export const drawingCautions = ({ design }: CheckResult): string[] => {
  const files = new Map<string, readonly LeftOut[]>();
  const sizes = design.parts.flatMap(({ name, outline }) =>
    outline.flatMap((word) => {
      if (word.word !== 'drawing') return [];
      const { file, drawn, asked } = word;
      const found = drawnOutlines(drawn, asked);
      if (!found.ok) return [];
      files.set(file, drawn.leftOut);
      const { left, right, foot, top } = found.box;
      const said = `${name}, from ${file}: ${size(right - left, top - foot)}. Is that its size?`;
      return [[said, ...notTaken(found.duplicates, found.leftOpen)].join(' ')];
    }),
  );
  const others = [...files].flatMap(([file, leftOut]) =>
    leftOut.length > 0 ? [sayLeftOut(file, leftOut)] : [],
  );
  return [...sizes, ...others];
};

const size = (width: number, height: number): string =>
  `${formatMillimetres(width, 1)} by ${formatMillimetres(height, 1)}, or ${formatInches(width, 64)} by ${formatInches(height, 64)}`;

function notTaken(duplicates: number, open: number): string[] {
  const twice = duplicates > 0 ? [`Drawn twice and taken once: ${formatNumber(duplicates, 0)}.`] : [];
  return open > 0 ? [...twice, `Lines that do not close, left out: ${formatNumber(open, 0)}.`] : twice;
}

const sayLeftOut = (file: string, leftOut: readonly LeftOut[]): string =>
  `Left out of ${file}: ${leftOut
    .map(
      ({ what, why, count, line }) =>
        `${formatNumber(count, 0)} ${what}, ${why} (line ${formatNumber(line, 0)})`,
    )
    .join('; ')}.`;
