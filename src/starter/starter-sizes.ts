/** The sizes of a starter that are fitted to its sitters, and where the search for them begins. */
import type { ChairKind } from '../names.js';
import { shoe } from '../measures/seat-fit.js';
import type { SitterSize } from '../sitter/sitter-size.js';

/** Each a named dimension of the starter, metres; in the order in which they are tried. */
export const fittedSizes = [
  'radius',
  'touch',
  'noseLength',
  'tail',
  'seatFront',
  'seatRise',
  'backLean',
  'seatDepth',
  'armHeight',
  'backHeight',
  'spacing',
] as const;

export type FittedSize = (typeof fittedSizes)[number];
export type StarterSizes = Readonly<Record<FittedSize, number>>;

/** A chair of a kind that was found to pass for its standard sitters, metres and radians. */
interface Begun {
  /** Of the first of them: for others the rockers are larger or smaller alike. */
  readonly stature: number;
  /** Of the tallest of them: for taller people the rockers stand farther apart. */
  readonly tallest: number;
  readonly radius: number;
  readonly touch: number;
  readonly nose: number;
  readonly tail: number;
  /** The seat as drawn, front higher, and the back off plumb: radians. */
  readonly seat: number;
  readonly back: number;
  readonly spacing: number;
  /** Of buttock to knee hollow over the seat’s depth: the middle of what is wanted. */
  readonly depthGap: number;
}

const degree = Math.PI / 180;

// prettier-ignore
const begun: Readonly<Record<ChairKind, Begun>> = {
  adult: { stature: 1.524, tallest: 1.905, radius: 0.985, touch: 0.165, nose: 0.345, tail: 0.605,
    seat: 0.25 * degree, back: 14.5 * degree, spacing: 0.52, depthGap: 0.05 },
  porch: { stature: 1.524, tallest: 1.905, radius: 0.93, touch: 0.15, nose: 0.37, tail: 0.685,
    seat: 1.75 * degree, back: 15.25 * degree, spacing: 0.53, depthGap: 0.05 },
  nursing: { stature: 1.5748, tallest: 1.7526, radius: 1.03, touch: 0.175, nose: 0.365, tail: 0.67,
    seat: -1 * degree, back: 12 * degree, spacing: 0.46, depthGap: 0.05 },
  child: { stature: 1.016, tallest: 1.27, radius: 0.75, touch: 0.065, nose: 0.38, tail: 0.335,
    seat: 5.75 * degree, back: 16.25 * degree, spacing: 0.33, depthGap: 0.037 },
};

/** How much of stature the back is high over the seat (common practice: to the shoulders of most, the head of the small). */
const backShare = 0.4;
/** As settled the front edge is so much below the knee hollow, and the chair leans back by so much: where a search begins. */
const kneeGap = 0.025;
const settledLean = 7 * degree;
const elbowGap = 0.005;

/** @param sitters the chair is made for the first */
export function startingSizes(kind: ChairKind, sitters: readonly SitterSize[]): StarterSizes {
  const [first] = sitters as [SitterSize];
  const own = begun[kind];
  const scale = first.stature / own.stature;
  const statures = sitters.map(({ stature }) => stature);
  const along = first.buttockToKneeHollow - own.depthGap;
  const seatDepth = along * Math.cos(own.seat);
  const touch = own.touch * scale;
  const settled = first.kneeHollow + shoe - kneeGap;
  const backHeight = (backShare * (Math.min(...statures) + Math.max(...statures))) / 2;
  return {
    radius: own.radius * scale,
    touch,
    noseLength: own.nose * scale,
    tail: own.tail * scale,
    seatFront: settled - (seatDepth - touch) * Math.sin(settledLean),
    seatRise: along * Math.sin(own.seat),
    seatDepth,
    backHeight,
    backLean: backHeight * Math.tan(own.back),
    armHeight: first.elbowAboveSeat + elbowGap,
    spacing: own.spacing * Math.max(1, Math.max(...statures) / own.tallest),
  };
}
