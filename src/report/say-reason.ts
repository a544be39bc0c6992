/** Why a limit fails or is unknown, in a maker's words and units. */
import type { NoRest } from '../measures/no-rest.js';
import { formatLength, formatLengthUp } from '../quantity/print.js';
import type { LengthUnit } from '../quantity/units.js';

export function sayReason(reason: string | NoRest, units: LengthUnit): string {
  return typeof reason === 'string' ? reason : sayNoRest(reason, units);
}

function sayNoRest(noRest: NoRest, units: LengthUnit): string {
  const say = (length: number): string => formatLength(length, units);
  const sayUp = (length: number): string => formatLengthUp(length, units);
  switch (noRest.cause) {
    case 'no-curve':
      return 'stands on a corner or between two parts, not on the curve of a rocker: it does not rock';
    case 'too-tight':
      return (
        `the rockers are too tight: their radius, ${say(noRest.radius)}, is not greater than the height of the ` +
        `centre of gravity, ${say(noRest.height)}, so it settles nowhere. ${sayLeastRadius(noRest.leastRadius, sayUp)}`
      );
    case 'past-end': {
      const which = noRest.end === 'nose' ? 'forward past the nose' : 'back past the tail';
      const beyond = noRest.end === 'nose' ? 'ahead of' : 'behind';
      return (
        `rolls ${which} of its rockers: standing on that end its centre of gravity is still ` +
        `${say(noRest.beyond)} ${beyond} it${sayReach(noRest, say, sayUp)}`
      );
    }
  }
}

const sayLeastRadius = (radius: number, sayUp: (length: number) => string): string =>
  Number.isFinite(radius)
    ? `With the masses where they are, an arc of more than ${sayUp(radius)} would stand`
    : 'No radius would stand: the centre of gravity is beyond the end of the rockers';

/** What is true of one arc is not said where the runner is another shape, and would contradict it. */
function sayReach(
  { end, reach, leastReach }: Extract<NoRest, { cause: 'past-end' }>,
  say: (length: number) => string,
  sayUp: (length: number) => string,
): string {
  if (leastReach <= reach) return '';
  return (
    `. On the same arc the ${end} would have to reach more than ${sayUp(leastReach)} from where it touches as ` +
    `drawn, not ${say(reach)}`
  );
}
