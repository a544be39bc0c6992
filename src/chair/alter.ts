/**
 * A design altered: what a maker changes of a chair without drawing it anew (names.ts says what there is). The rockers'
 * words change first; then the upper chair, which is everything but what the chair rolls on, moves as one body:
 *
 *     both-legs               up
 *     front-legs, back-legs   turned about the joint of the other legs by change / (level distance of the joints)
 *     upper-chair             turned about the centre of curvature of the rockers where they touch, by change / radius
 *
 * and last the back line moves forward along the seat line. Wood that is sawn off a leg, or added to it, is not weighed.
 */
import type { DesignInSI, OutlineInSI, PartInSI } from '../design/design.js';
import { minus, plus, times, distance, type Point } from '../geometry/point.js';
import { contactAt, radiusAt } from '../geometry/profile.js';
import {
  atRest,
  followedBy,
  movedPoint,
  shifted,
  turnedAbout,
  type RigidMotion,
} from '../geometry/rigid-motion.js';
import { nosePlace, tailPlace } from '../geometry/running-surface.js';
import { alterationNames } from '../names.js';
import type { Chair } from './chair.js';
import type { Standing } from './standing.js';

type Alterations = DesignInSI['alterations'];

export const isAltered = ({ alterations }: DesignInSI): boolean =>
  alterationNames.some((name) => alterations[name] !== 0);

export const ofRockers = ['rocker-radius', 'tail-end', 'nose-end', 'tail-wedge'] as const;

export const isRocker = (outline: OutlineInSI): boolean => outline.word === 'rocker' && !outline.hole;

/**
 * @param drawn the chair built as it is drawn
 * @returns the design with its parts, extras and lines where they then are; what is not altered is the same object
 */
export function altered(design: DesignInSI, drawn: Chair, standing: Standing): DesignInSI {
  const { alterations } = design;
  const motion = upperMotion(alterations, drawn, standing);
  const still = motion === atRest;
  const at = (point: Point): Point => (still ? point : movedPoint(point, motion));
  const { seat, back, arms } = design;
  const movedSeat = seat && { front: at(seat.front), rear: at(seat.rear) };
  return {
    ...design,
    parts: design.parts.map((part, i) => {
      const own = withRockers(part, alterations);
      return still || standing.rockers.has(i) ? own : { ...own, moved: motion };
    }),
    extras: [
      ...(still ? design.extras : design.extras.map((extra) => ({ ...extra, at: at(extra.at) }))),
      ...weights(alterations, drawn),
    ],
    seat: still ? seat : movedSeat,
    back: backLine(
      back && (still ? back : { foot: at(back.foot), top: at(back.top) }),
      movedSeat,
      alterations,
    ),
    arms: arms && (still ? arms : { rear: at(arms.rear), front: at(arms.front) }),
  };
}

function withRockers(part: PartInSI, alterations: Alterations): PartInSI {
  if (ofRockers.every((name) => alterations[name] === 0) || !part.outline.some(isRocker)) return part;
  return {
    ...part,
    outline: part.outline.map((word) => (isRocker(word) ? rockerAltered(word, alterations) : word)),
  };
}

function rockerAltered(word: OutlineInSI, alterations: Alterations): OutlineInSI {
  if (word.word !== 'rocker') return word;
  const by = alterations['rocker-radius'];
  return {
    ...word,
    arcs: word.arcs.map(({ radius, until }) => ({ radius: radius + by, until })),
    tail: word.tail + alterations['tail-end'],
    nose: word.nose + alterations['nose-end'],
    wedge: alterations['tail-wedge'],
  };
}

function upperMotion(alterations: Alterations, drawn: Chair, { joints }: Standing): RigidMotion {
  let motion = atRest;
  const up = alterations['both-legs'];
  if (up !== 0) motion = followedBy(motion, shifted({ x: 0, y: up }));
  const [front, rear] = [alterations['front-legs'], alterations['back-legs']];
  if (front !== 0 || rear !== 0) {
    if (joints === null) throw new RangeError('upperMotion: a chair without two pairs of legs');
    const apart = joints.front.x - joints.back.x;
    motion = followedBy(motion, turnedAbout(movedPoint(joints.back, motion), front / apart));
    motion = followedBy(motion, turnedAbout(movedPoint(joints.front, motion), -rear / apart));
  }
  const along = alterations['upper-chair'];
  if (along === 0) return motion;
  const radius = radiusAt(drawn.profile, 0);
  return followedBy(
    motion,
    turnedAbout(plus(contactAt(drawn.profile, 0), { x: 0, y: radius }), along / radius),
  );
}

function backLine(
  back: DesignInSI['back'],
  seat: DesignInSI['seat'],
  alterations: Alterations,
): DesignInSI['back'] {
  const by = alterations['back-rest'];
  if (by === 0 || !back || !seat) return back;
  const along = minus(seat.front, seat.rear);
  const forward = times(along, by / distance(seat.front, seat.rear));
  return { foot: plus(back.foot, forward), top: plus(back.top, forward) };
}

const weights = (alterations: Alterations, drawn: Chair): DesignInSI['extras'] =>
  [
    { name: 'weight at the tails', mass: alterations['tail-weight'], at: tailPlace(drawn), inertia: 0 },
    { name: 'weight at the noses', mass: alterations['nose-weight'], at: nosePlace(drawn), inertia: 0 },
  ].filter(({ mass }) => mass !== 0);
