/** What of a drawing was not taken, in words. */
import type { Flaw } from '../../geometry/flaw.js';
import { formatNumber } from '../../quantity/print.js';
import type { Drawn, LeftOut } from './drawn.js';

export const leftOutWords = ({ what, why, count, line }: LeftOut): string =>
  `${formatNumber(count, 0)} ${what}, ${why} (line ${formatNumber(line, 0)})`;

/** Reasons enough: of a drawing that was hidden as a whole there may be hundreds. */
const mostReasons = 3;

/** Of a drawing without curves. */
export function nothingDrawn({ leftOut }: Drawn): Flaw {
  const reasons = leftOut.slice(0, mostReasons).map(leftOutWords);
  const hint = reasons.length > 0 ? { hint: `left out: ${reasons.join('; ')}` } : {};
  return { expected: 'a drawing with curves', found: 'none', ...hint };
}
