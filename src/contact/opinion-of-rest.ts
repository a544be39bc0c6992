/** Where a free body rests beside what the exact model says. */
import { isMissing } from '../numeric/missing.js';
import { g } from '../rolling/gravity.js';
import type { Released } from './opinion-at-rest.js';
import { opinionOfSwing, swingFrom } from './opinion-of-swing.js';
import { agrees, courseAlone, type Compared, type Part } from './second-opinion.js';
import { settledLean } from './settled-lean.js';

/** Radians: twice what a body in facets may settle beside the rest of the smooth runner. */
const tolerance = (0.03 * Math.PI) / 180;
/** So much a flat may tilt, radians: the steps are as short as that takes. */
const tilt = (0.03 * Math.PI) / 180;
/** It is let go so far beside to settle, radians, or half way to the nearer crest. */
const beside = (1.5 * Math.PI) / 180;
/** Or less, where the swing would not come back, but hardly less than this. */
const hardly = (0.1 * Math.PI) / 180;
/** How a chair is damped that has no swing so wide, radians a second: about an ordinary chair’s. */
const ordinaryFrequency = 3;

/** Where it settles of itself; the middle of its swings is nearer, where it has a swing. */
export function opinionOfRest(released: Released, step: number): Part {
  const swung = opinionOfSwing(released, step);
  const aside = letGoFrom(released);
  if (aside === null) return withoutRest(swung, 'the least push sends it over a crest');
  const settled = settledOf(released, aside, step);
  const [byMiddle] = swung.compared;
  if (byMiddle === undefined) return { ...swung, compared: [settled] };
  return agrees({ compared: [settled] })
    ? swung
    : { ...swung, compared: [settled, ...swung.compared.slice(1)] };
}

const withoutRest = (swung: Part, why: string): Part =>
  swung.compared.length > 0 ? swung : { ...swung, notCovered: [`rest: ${why}`, ...swung.notCovered] };

/** How far beside it is let go, radians: less than half way to a crest. null: that is next to nothing. */
function letGoFrom({ atRest: { rest, back, forward } }: Released): number | null {
  const room = [back, forward].map(({ tip }) =>
    isMissing(tip) ? Infinity : Math.abs(tip.crest - rest.lean) / 2,
  );
  const aside = Math.min(beside, ...room);
  return aside < hardly ? null : aside;
}

function settledOf(released: Released, most: number, step: number): Compared {
  const { atRest, body } = released;
  const { lean, height, flat, hang } = atRest.rest;
  const arm = body.inertia + body.mass * height ** 2;
  let aside = most;
  let swing = swingFrom(released, lean + aside);
  // It may have less room for a swing than for a lean.
  while (flat === 0 && typeof swing === 'string' && aside > hardly) {
    aside /= 2;
    swing = swingFrom(released, lean + aside);
  }
  const frequency = typeof swing === 'string' ? ordinaryFrequency : (2 * Math.PI) / swing.period;
  // On a flat one end may be sunk and the other not: by 2 g Δt² at most.
  const one = flat > 0 ? Math.min(step, Math.sqrt((tilt * flat) / (2 * g))) : step;
  const settling = { lean, arm, frequency, height, hang: flat > 0 ? null : Math.min(...hang), beside: aside };
  return {
    measure: 'restAngleDeg',
    second: settledLean(courseAlone(released, { until: 0 }), settling, one),
    exact: lean,
    tolerance: tolerance + (flat > 0 ? tilt : 0),
  };
}
