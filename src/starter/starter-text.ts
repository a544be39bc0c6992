/** A starter as a design file. */
import { yamlFlow } from '../design/yaml-flow.js';
import type { ChairKind } from '../names.js';
import { formatLength } from '../quantity/print.js';
import { comment } from './comment.js';
import { starterLines, starterParts, workedOut } from './starter-parts.js';
import type { FittedSize, StarterSizes } from './starter-sizes.js';
import { hardwareOf, stockLines, type StarterUnits } from './starter-stock.js';

export interface StarterNames {
  readonly name: string;
  readonly kind: ChairKind;
  readonly units: StarterUnits;
  /** Lines of the file that say who sits in it. */
  readonly people: string;
}

/** In the order in which they are written. */
const aboutSizes: Readonly<Record<FittedSize, string>> = {
  radius: 'of the bottom of the rockers',
  touch: 'the rockers touch the floor this far ahead of the back of the seat',
  noseLength: 'from there forward to the tips of the rockers, level',
  tail: 'and back to the tails',
  seatFront: 'front edge of the seat over the floor, as drawn',
  seatRise: 'so much higher is the front of the seat than its rear, as drawn',
  seatDepth: 'from the back to the front edge, level',
  backHeight: 'top of the back over the rear of the seat',
  backLean: 'so far is the top of the back behind its foot, as drawn',
  armHeight: 'top of the arms over the seat',
  spacing: 'rockers, centre line to centre line',
};

export function printStarter(sizes: StarterSizes, { name, kind, units, people }: StarterNames): string {
  const indented = (lines: readonly string[]): string => lines.map((line) => `  ${line}\n`).join('');
  const fitted = Object.entries(aboutSizes).map(
    ([size, about]) => `${size}: ${formatLength(sizes[size as FittedSize], units)} # ${about}`,
  );
  return `${comment(name)}
#
${comment(about)}
#
${comment(frame[units])}

trueroll: 1
name: ${yamlFlow(name)}
kind: ${kind}
units: ${units}

dimensions:
  # Found for the people below: worth trying out.
${indented(fitted)}
  # Stock, finished sizes.
${indented(stockLines(kind, units))}
  # Worked out of the others.
${indented(workedOut.split('\n'))}
floor: ${kind === 'porch' ? 'porch boards' : 'bare boards'}
spacing: spacing

${comment('The chair is made for the first; everybody else has to fit where it hurts.')}
${people}

parts:
${starterParts('white ash')}

extras:
  - { name: 'screws, plugs and glue', mass: ${hardwareOf(kind, units)}, at: [seatDepth / 2, seatRear] }

# Where the body touches, pressed down, at the middle of the chair.
${starterLines}
`;
}

const about =
  'A starter of straight sticks and boards, its sizes found by rolling it; change what you like and check it again. Parts are drawn from shoulder to shoulder: tenons and mortises are left out, so are the notches of seat and arms around legs and posts.';

const frame: Readonly<Record<StarterUnits, string>> = {
  in: 'Side view: x forward (the way the sitter faces), y up from the floor; x = 0 is where the seat meets the back. A bare number is in inches.',
  mm: 'Side view: x forward (the way the sitter faces), y up from the floor; x = 0 is where the seat meets the back. A bare number is in millimetres.',
};
