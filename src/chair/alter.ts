/**
 * A design altered: what a maker changes of a chair without drawing it anew (names.ts says what there is). The rockers'
 * words change first, as if they were drawn so; then the upper chair moves on them (upper-motion.ts), weights hang at their
 * ends, and last the back line moves forward along the seat line. Wood that is sawn off a leg, or added to it, is not
 * weighed.
 */
import type { DesignInSI, OutlineInSI, PartInSI } from '../design/design.js';
import { distance, minus, plus, times, type Point } from '../geometry/point.js';
import { atRest, movedPoint, type RigidMotion } from '../geometry/rigid-motion.js';
import { nosePlace, tailPlace } from '../geometry/running-surface.js';
import { keptByPlace, keptWhileSame } from '../kept.js';
import { alterationNames, type AlterationName } from '../names.js';
import type { Chair } from './chair.js';
import type { Standing } from './standing.js';
import { upperMotion, type Alterations } from './upper-motion.js';

export const isAltered = ({ alterations }: DesignInSI): boolean =>
  alterationNames.some((name) => alterations[name] !== 0);

export const ofRockers = ['rocker-radius', 'tail-end', 'nose-end', 'tail-wedge'] as const;

export const isRocker = (outline: OutlineInSI): boolean => outline.word === 'rocker' && !outline.hole;

/** What is made of rockers as they then are, and not as drawn. */
export const needsRockers = ({ alterations }: DesignInSI): boolean =>
  (['upper-chair', 'tail-weight', 'nose-weight'] as const).some((name) => alterations[name] !== 0);

/**
 * The design with the words of its rockers changed, for one that is mostly the same after the other; what is not changed
 * is the same object.
 */
export function rockerAlterer(): (design: DesignInSI) => DesignInSI {
  const kept = keptByPlace<PartInSI>();
  return (design) => {
    const { alterations, parts } = design;
    const changes = ofRockers.map((name) => alterations[name]);
    if (changes.every((change) => change === 0)) return design;
    const altered = parts.map((part, i) =>
      part.outline.some(isRocker)
        ? kept(i, [part, ...changes], () => ({
            ...part,
            outline: part.outline.map((word) => rockerAltered(word, alterations)),
          }))
        : part,
    );
    return { ...design, parts: altered };
  };
}

export function rockerAltered(word: OutlineInSI, alterations: Partial<Alterations>): OutlineInSI {
  if (word.word !== 'rocker' || word.hole) return word;
  const by = (name: AlterationName): number => alterations[name] ?? 0;
  return {
    ...word,
    arcs: word.arcs.map(({ radius, until }) => ({ radius: radius + by('rocker-radius'), until })),
    tail: word.tail + by('tail-end'),
    nose: word.nose + by('nose-end'),
    wedge: by('tail-wedge'),
  };
}

type Lines = Pick<DesignInSI, 'seat' | 'back' | 'arms'>;

/**
 * Alters design after design, like `rockerAlterer`.
 * @param design with its rockers altered
 * @param rockers a chair on them
 */
export function upperAlterer(): (design: DesignInSI, standing: Standing, rockers: Chair) => DesignInSI {
  const keptMotion = keptWhileSame<RigidMotion>();
  const keptPart = keptByPlace<PartInSI>();
  const keptLines = keptWhileSame<Lines>();
  return (design, standing, rockers) => {
    const { alterations, parts, extras, seat, back, arms } = design;
    const changes = moving.map((name) => alterations[name]);
    const { profile } = rockers;
    const motion = keptMotion([standing, profile, ...changes], () =>
      upperMotion(alterations, standing, profile),
    );
    const still = motion === atRest;
    const hung = weights(alterations, rockers);
    return {
      ...design,
      parts: still
        ? parts
        : parts.map((part, i) =>
            standing.rockers.has(i) ? part : keptPart(i, [part, motion], () => ({ ...part, moved: motion })),
          ),
      extras: [
        ...(still ? extras : extras.map((extra) => ({ ...extra, at: movedPoint(extra.at, motion) }))),
        ...hung,
      ],
      ...keptLines([seat, back, arms, motion, alterations['back-rest']], () => movedLines(design, motion)),
    };
  };
}

const moving = ['both-legs', 'front-legs', 'back-legs', 'upper-chair'] as const;

function movedLines({ seat, back, arms, alterations }: DesignInSI, motion: RigidMotion): Lines {
  const at = (point: Point): Point => movedPoint(point, motion);
  const moved =
    motion === atRest
      ? { seat, back, arms }
      : {
          seat: seat && { front: at(seat.front), rear: at(seat.rear) },
          back: back && { foot: at(back.foot), top: at(back.top) },
          arms: arms && { rear: at(arms.rear), front: at(arms.front) },
        };
  return { ...moved, back: backLine(moved.back, moved.seat, alterations['back-rest']) };
}

function backLine(back: Lines['back'], seat: Lines['seat'], by: number): Lines['back'] {
  if (by === 0 || !back || !seat) return back;
  const forward = times(minus(seat.front, seat.rear), by / distance(seat.front, seat.rear));
  return { foot: plus(back.foot, forward), top: plus(back.top, forward) };
}

const weights = (alterations: Alterations, rockers: Chair): DesignInSI['extras'] =>
  [
    { name: 'weight at the tails', mass: alterations['tail-weight'], at: tailPlace, inertia: 0 },
    { name: 'weight at the noses', mass: alterations['nose-weight'], at: nosePlace, inertia: 0 },
  ].flatMap(({ at, ...weight }) => (weight.mass === 0 ? [] : [{ ...weight, at: at(rockers) }]));
