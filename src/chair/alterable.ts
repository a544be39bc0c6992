/** Which alterations a chair can have, and what is wrong with one that it cannot. */
import type { DesignInSI } from '../design/design.js';
import type { Flaw } from '../geometry/flaw.js';
import { radiusAt } from '../geometry/profile.js';
import { addedOnly, alterationNames, type AlterationName } from '../names.js';
import { isRocker, ofRockers } from './alter.js';
import type { Chair } from './chair.js';
import type { DrawingFault } from './drawing-fault.js';
import { standingOf, type Standing } from './standing.js';

const ofLegs = ['front-legs', 'back-legs'] as const;

/** Which alterations this chair can have. */
export const alterationsOf = (design: DesignInSI, drawn: Chair): AlterationName[] =>
  alterationNames.filter((name) => whyNot(name, design, drawn, standingOf(drawn)) === null);

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

const lessThanNone: Flaw = { expected: '0 or more: it can only be added', found: 'less than 0' };

const movingUpper: readonly AlterationName[] = ['both-legs', 'front-legs', 'back-legs', 'upper-chair'];

/** A leg that was cut, or slid, so that it comes through the rockers: told where the first of those alterations stands. */
export function faultThrough({ alterations, parts }: DesignInSI, part: number): DrawingFault {
  const name = movingUpper.find((each) => alterations[each] !== 0) ?? 'both-legs';
  const flaw = {
    expected: 'an upper chair that stands on its rockers',
    found: `the part ${parts[part]!.name} reaching through them to the floor`,
    hint: 'change less, or draw that part ending higher in the rocker',
  };
  return { path: ['alterations', name], flaw };
}

/** What is altered that this chair does not have. */
export const alterationFaults = (design: DesignInSI, drawn: Chair, standing: Standing): DrawingFault[] =>
  alterationNames.flatMap((name) => {
    const value = design.alterations[name];
    const flaw =
      value === 0
        ? null
        : value < 0 && isIn(addedOnly, name)
          ? lessThanNone
          : whyNot(name, design, drawn, standing);
    return flaw === null ? [] : [{ path: ['alterations', name], flaw }];
  });
