/** What is asked on a command line of a design, and what is wrong with it. */
import { issueOfWhole, type Issue } from '../design/issue.js';
import type { Words } from '../design/places.js';
import type { NameScope } from '../quantity/expression.js';
import { nearestWord } from '../quantity/nearest.js';
import { shown } from '../quantity/source-text.js';
import type { Design } from '../design/read-design.js';

/** An option and the text that was given with it. */
export interface Argument {
  /** `--vary`. */
  readonly option: string;
  readonly text: string;
}

export const argumentIssue = ({ option, text }: Argument, { expected, found, hint }: Words): Issue =>
  issueOfWhole(`${option} ${shown(text)}`, expected, found, hint);

/** The names that a value on the command line may use: those of the design. */
export const scopeOf = ({ dimensions }: Design): NameScope => {
  const named = new Map(dimensions.map(({ name, dimension }) => [name, dimension]));
  return { dimensionOf: (name) => named.get(name), known: [...named.keys()] };
};

/**
 * What is none of the known words: the nearest of them, or all.
 * @param besides known too, told after the others
 */
export function unknownName(
  expected: string,
  found: string,
  names: readonly string[],
  besides: readonly string[] = [],
): Words {
  const known = [...names, ...besides];
  const nearest = nearestWord(found, known);
  const few = names.slice(0, glance).join(', ') + (names.length > glance ? ' …' : '');
  const more = besides.length > 0 ? `; ${besides.join(', ')}` : '';
  const hint =
    nearest !== undefined
      ? `did you mean \`${nearest}\`?`
      : known.length > 0
        ? `there are ${few}${more}`
        : undefined;
  return { expected, found: shown(found), ...(hint !== undefined && { hint }) };
}

/** As many names as can be taken in at a glance. */
const glance = 12;
