/** The energy to send a free body over its tails, by the least starting speed that does, beside the exact one. */
import { withinTurn } from '../geometry/lean.js';
import { isCorner, type HullElement } from '../geometry/hull-element.js';
import { elementsBetween, hasFlatBetween } from '../geometry/profile.js';
import { isMissing } from '../numeric/missing.js';
import { balancesOf } from '../rolling/balance.js';
import { g } from '../rolling/gravity.js';
import { landscapeOf } from '../rolling/landscape.js';
import type { Facets } from './faceted-hull.js';
import type { Released } from './opinion-at-rest.js';
import { courseAlone, notCovered, withoutStep, type Part } from './second-opinion.js';
import { tipSpeed } from './tip-speed.js';

/** Of the energy: 0.4 % of the speed. */
const tolerance = 0.008;
/** G so much higher or lower, metres, is noise of the engine: what it was off by where a chair rises 1.6 mm to its crest. */
const leastHeight = 1e-5;
/** Turning in one step, radians: a start faster than an ordinary chair’s is followed by shorter ones. */
const turnOfAStep = 0.012;
/** A shorter way to the crest, radians, goes over finer facets, as each is more of it; so fine at most. */
const ordinaryWay = (25 * Math.PI) / 180;
const share = { ordinary: 0.05, finest: 0.01 };
/** A corner that turns by more, radians, is come down from with a noise that wants shorter steps. */
const sharp = (2 * Math.PI) / 180;
/** Small swings: a start just at the limit hangs about the crest for one. */
const longest = 3;
/** Of a chair that has no small swing, seconds: an ordinary chair’s. */
const ordinaryPeriod = 2;
/**
 * It has gone over when it is so far past the exact crest, radians: the free body finds its own. Where another rest comes
 * soon, half way to that.
 */
const past = (3 * Math.PI) / 180;
/** Facets go on for so far, radians. */
const margin = Math.PI / 180;

/** How far beyond a crest the next rest lies, radians; infinite: none within a quarter turn. */
function nextRest({ profile, body }: Released, crest: number): number {
  const away = balancesOf(landscapeOf(profile, body.centre))
    .filter(({ kind }) => kind === 'rest')
    .map(({ lean }) => withinTurn(lean, crest) - crest);
  const least = Math.min(...away);
  return least < Math.PI / 2 ? least : Infinity;
}

const isSharp = (element: HullElement): boolean => isCorner(element) && element.to - element.from > sharp;

export function opinionOfTip(released: Released, step: number): Part {
  const { atRest, profile, body } = released;
  const { rest, back } = atRest;
  const what = 'energy to go over back';
  if (isMissing(back.tip)) return notCovered(what, back.tip.missing);
  const { crest, energy } = back.tip;
  const over = crest + Math.min(past, nextRest(released, crest) / 2);
  if (rest.flat > 0 || hasFlatBetween(profile, rest.lean, over))
    return notCovered(what, 'flats on the way take some of it');
  // At rest H' is nothing: ½ (I + m H²) θ̇²
  const arm = body.inertia + body.mass * rest.height ** 2;
  const course = courseAlone(released, {
    until: longest * (isMissing(atRest.smallPeriod) ? ordinaryPeriod : atRest.smallPeriod),
    guards: [{ from: 0, back: over, forward: -Infinity }],
    endsFalling: true,
  });
  const expected = Math.sqrt((2 * energy) / arm);
  const finer = Math.min(1, (crest - rest.lean) / ordinaryWay);
  const facet = Math.max(share.finest, share.ordinary * finer);
  const energyAt = (one: number): number => {
    const facets: Facets = { from: rest.lean - margin, to: over + margin, share: facet, step: one };
    const speed = tipSpeed(course, rest.lean, expected, facets);
    // Sixteen times the speed did not do it.
    return speed === null ? 256 * energy : (arm * speed ** 2) / 2;
  };
  // The corner that it stands on at the crest is not come down from.
  const corners = elementsBetween(profile, rest.lean, crest).slice(0, -1).some(isSharp);
  const fine = Math.min(step, turnOfAStep / expected) / (corners ? 2 : 1);
  return {
    compared: [
      {
        measure: 'tipBackEnergyJ',
        second: withoutStep(energyAt(fine), energyAt(2 * fine)),
        exact: energy,
        tolerance: tolerance * energy + leastHeight * body.mass * g,
      },
    ],
    notCovered: [],
  };
}
