/** How far the upper chair and its back may be moved: what is altered by more is told with how far it may go. */
import { whyFarBeyond, inSIUnits } from '../design/bounds.js';
import type { DesignInSI } from '../design/design.js';
import { millimetres } from '../geometry/flaw.js';
import { distance, touching, type Point } from '../geometry/point.js';
import { movedPoint } from '../geometry/rigid-motion.js';
import { nosePlace, tailPlace } from '../geometry/running-surface.js';
import { alterationNames, alterations as kinds, type AlterationName } from '../names.js';
import { isMissing } from '../numeric/missing.js';
import { behindSeat, meetingAlong } from '../sitter/support-lines.js';
import { slopeOf, type Chair } from './chair.js';
import type { DrawingFault } from './drawing-fault.js';
import type { Standing } from './standing.js';
import { apart, legChanges, motionOfLegs, slidewayOf, type Alterations } from './upper-motion.js';

/** Of a kind of which no chair comes near: each is told. */
export const beyondAll = (alterations: Alterations): DrawingFault[] =>
  alterationNames.flatMap((name) => {
    const [kind, value] = [kinds[name], alterations[name]];
    const why = whyFarBeyond(kind, value);
    if (why === null) return [];
    return [{ path: ['alterations', name], flaw: { expected: why, found: inSIUnits(value, kind) } }];
  });

/** What is altered by too much, and by how much it may be. */
interface TooFar {
  readonly name: AlterationName;
  readonly value: number;
  readonly limit: number;
  readonly hint: string;
}

/**
 * What is moved too far, the nearest of its limits; null: nothing.
 * @param rockers a chair on them as they are altered
 */
export function movedTooFar(design: DesignInSI, standing: Standing, rockers: Chair): DrawingFault | null {
  const [nearest] = [
    throughRockers(design, standing),
    offRockers(design, standing, rockers),
    turnedOver(design, standing, rockers),
    offSeat(design),
  ]
    .filter((one) => one !== null)
    .sort((a, b) => Math.abs(a.limit) - Math.abs(b.limit));
  if (nearest === undefined) return null;
  const { name, value, limit, hint } = nearest;
  const expected = `\`${name}\` of no ${value > limit ? 'more' : 'less'} than ${millimetres(limit)}`;
  return { path: ['alterations', name], flaw: { expected, found: millimetres(value), hint } };
}

/** What moves the chair so that it is too far by so much, and how much of it is one unit of each alteration. */
interface Excess {
  readonly by: number;
  readonly shares: readonly (readonly [name: AlterationName, share: number])[];
}

/** The alteration that does most of it is told, with the value that would leave nothing too far. */
function mostOf({ by, shares }: Excess, alterations: Alterations, hint: string): TooFar {
  const doing = ([name, share]: Excess['shares'][number]): number =>
    Math.sign(by) * share * alterations[name];
  const [name, share] = shares.reduce((a, b) => (doing(b) > doing(a) ? b : a));
  const value = alterations[name];
  return { name, value, limit: value - by / share, hint };
}

/** To first order a place comes down by its share of what the legs before and behind it are shorter by. */
function throughRockers({ alterations }: DesignInSI, { feet, joints }: Standing): TooFar | null {
  const corners = feet.flatMap((foot) => foot.corners);
  const excesses = corners.map(({ corner, mayDrop }): Excess => {
    const forward = joints === null ? 0 : (corner.x - joints.back.x) / apart(joints);
    const shares = [
      ['both-legs', 1],
      ['front-legs', forward],
      ['back-legs', 1 - forward],
    ] as const;
    const raised = shares.reduce((sum, [name, share]) => sum + share * alterations[name], 0);
    return { by: Math.min(0, raised + mayDrop), shares };
  });
  const [worst] = excesses.sort((a, b) => a.by - b.by);
  if (worst === undefined || worst.by >= -touching) return null;
  return mostOf(worst, alterations, 'farther, the upper chair comes through the rockers to the floor');
}

/** The angle about C at which a place lies, 0 plumb under it, growing forward: the slide adds to it. */
function offRockers({ alterations }: DesignInSI, standing: Standing, rockers: Chair): TooFar | null {
  const along = alterations['upper-chair'];
  if (along === 0) return null;
  const { centre, radius } = slidewayOf(rockers.profile);
  const angleOf = ({ x, y }: Point): number => Math.atan2(x - centre.x, centre.y - y);
  const legs = motionOfLegs(alterations, standing);
  const feet = standing.feet.map(({ place }) => angleOf(movedPoint(place, legs)));
  const [nose, tail] = [angleOf(nosePlace(rockers)), angleOf(tailPlace(rockers))];
  // A leg that is drawn beyond an end may stay there.
  const most = radius * Math.max(0, nose - Math.max(0, ...feet));
  const least = radius * Math.min(0, tail - Math.min(0, ...feet));
  if (along <= most + touching && along >= least - touching) return null;
  const hint = 'farther, the upper chair leaves the rockers: a leg passes their end';
  return { name: 'upper-chair', value: along, limit: along > 0 ? most : least, hint };
}

/** A seat runs forward, a back up and arms forward, whatever they are turned by; without them it is turned a quarter turn at most. */
function turnedOver(
  { alterations, seat, back, arms }: DesignInSI,
  { joints }: Standing,
  { profile }: Chair,
): TooFar | null {
  const shares: [AlterationName, number][] = [];
  if (alterations['upper-chair'] !== 0) shares.push(['upper-chair', 1 / slidewayOf(profile).radius]);
  if (joints !== null) shares.push(['front-legs', 1 / apart(joints)], ['back-legs', -1 / apart(joints)]);
  const { front, back: behind } = legChanges(alterations);
  const changes = { ...alterations, 'front-legs': front, 'back-legs': behind };
  const turn = shares.reduce((sum, [name, share]) => sum + share * changes[name], 0);
  if (turn === 0) return null;
  const slopes = [
    0,
    ...(seat ? [slopeOf(seat.rear, seat.front)] : []),
    ...(back ? [slopeOf(back.foot, back.top) - quarter] : []),
    ...(arms ? [slopeOf(arms.rear, arms.front)] : []),
  ];
  const [most, least] = [quarter - Math.max(...slopes), -quarter - Math.min(...slopes)];
  const by = turn > most ? turn - most : Math.min(0, turn - least);
  if (by === 0) return null;
  const hint = 'farther, it turns the seat, the back or the arms until nobody can sit in it';
  return mostOf({ by, shares }, alterations, hint);
}

const quarter = Math.PI / 2;

/** It is moved along the seat line, and so is the place where both lines meet. */
function offSeat({ alterations, seat, back }: DesignInSI): TooFar | null {
  const by = alterations['back-rest'];
  if (by === 0 || !seat || !back) return null;
  const along = meetingAlong(seat, back);
  if (isMissing(along)) return null;
  const [least, most] = [-behindSeat - along, distance(seat.rear, seat.front) - along];
  if (by >= least && by <= most) return null;
  const hint = 'farther, nobody who sits on the seat leans on the back';
  return { name: 'back-rest', value: by, limit: by > most ? most : least, hint };
}
