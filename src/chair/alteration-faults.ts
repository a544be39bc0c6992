/** Which alterations a chair can have, and what is wrong with those that it has. */
import type { DesignInSI } from '../design/design.js';
import type { Flaw } from '../geometry/flaw.js';
import { radiusAt } from '../geometry/profile.js';
import { addedOnly, alterationNames, type AlterationName } from '../names.js';
import { isRocker, ofRockers, rockerAltered } from './alter.js';
import { beyondAll } from './as-far-as.js';
import type { Chair } from './chair.js';
import type { DrawingFault } from './drawing-fault.js';
import { partOutline } from './part-outline.js';
import { standingOf, type Standing } from './standing.js';

/** Which alterations this chair can have. */
export function alterationsOf(design: DesignInSI, drawn: Chair): AlterationName[] {
  const standing = standingOf(drawn);
  return alterationNames.filter((name) => whyNot(name, design, drawn, standing) === null);
}

const ofLegs = ['front-legs', 'back-legs'] as const;

function whyNot(
  name: AlterationName,
  { parts, seat, back }: DesignInSI,
  drawn: Chair,
  { joints }: Standing,
): Flaw | null {
  if (isIn(ofRockers, name) && !parts.some(({ outline }) => outline.some(isRocker)))
    return {
      expected: 'a chair with a `rocker` outline to change',
      found: 'none',
      hint: 'change the outline that it rolls on in the drawing',
    };
  if (isIn(ofLegs, name) && joints === null)
    return { expected: 'a chair with front and back legs on its rockers', found: 'none that stand apart' };
  if (name === 'back-rest' && !(seat && back))
    return { expected: 'a seat line and a back line', found: 'not both' };
  if (name === 'upper-chair' && !(radiusAt(drawn.profile, 0) > 0))
    return { expected: 'rockers that are round where they touch', found: 'a corner' };
  return null;
}

const isIn = (names: readonly AlterationName[], name: AlterationName): boolean => names.includes(name);

const lessThanNone = (name: AlterationName): Flaw => ({
  expected: `\`${name}\` of 0 or more: it can only be added`,
  found: 'less than 0',
});

/** What is altered that this chair does not have, or by more than any. */
export function alterationFaults(design: DesignInSI, drawn: Chair, standing: Standing): DrawingFault[] {
  const { alterations } = design;
  const beyond = beyondAll(alterations);
  if (beyond.length > 0) return beyond;
  return alterationNames.flatMap((name) => {
    const value = alterations[name];
    if (value === 0) return [];
    const added = value < 0 && isIn(addedOnly, name);
    const flaw = added ? lessThanNone(name) : whyNot(name, design, drawn, standing);
    return flaw === null ? [] : [{ path: ['alterations', name], flaw }];
  });
}

const movingUpper = ['both-legs', 'front-legs', 'back-legs', 'upper-chair'] as const;

/** What comes through the rockers all the same, a stretcher between legs, say: told where the first of those alterations stands. */
export function faultThrough({ alterations, parts }: DesignInSI, part: number): DrawingFault {
  const name = [...movingUpper, ...ofRockers].find((each) => alterations[each] !== 0) ?? 'both-legs';
  const flaw = {
    expected: 'an upper chair that stands on its rockers',
    found: `the part ${parts[part]!.name} reaching through them to the floor`,
    hint: 'change less, or draw that part ending higher in the rocker',
  };
  return { path: ['alterations', name], flaw };
}

/**
 * Rockers that can be built as drawn and no longer as altered: one mistake, of the alteration that does it by itself, or of
 * the first.
 */
export function faultsAltered(
  { alterations, parts }: DesignInSI,
  faults: readonly DrawingFault[],
): readonly DrawingFault[] {
  const outline = faults.find(({ path }) => path[0] === 'parts' && path[2] === 'outline');
  if (outline === undefined) return faults;
  const made = ofRockers.filter((name) => alterations[name] !== 0);
  const alone = made.find((name) =>
    parts.some((part) => {
      const words = part.outline.map((word) => rockerAltered(word, { [name]: alterations[name] }));
      return !partOutline(words).ok;
    }),
  );
  return [{ path: ['alterations', alone ?? made[0]!], flaw: outline.flaw }];
}
