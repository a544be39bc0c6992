/**
 * Default limits by kind of chair: common practice or this project's judgement, no source, unless `why` says
 * "published". A design's own replace them. SI; null where a side is open.
 */
import type { DesignInSI, RangeInSI } from '../design/design.js';
import { chairKinds, type ChairKind, type LoadId, type MeasureKey } from '../names.js';

export interface DefaultLimit {
  readonly measure: MeasureKey;
  readonly load: LoadId;
  /** null: without what it is held against there is none. */
  readonly range: (design: DesignInSI, seated: SeatedFigures) => RangeInSI | null;
  /**
   * The side that is judged for others than the first sitter, for whom the chair is made; the other side is a caution
   * for them. Left out: both sides for everybody.
   */
  readonly hurtsOthers?: keyof RangeInSI;
  /** Its range comes of the chair itself, of `seated`; left out: of what the design says. */
  readonly againstSeated?: true;
  /** Why there is such a limit. */
  readonly why: string;
}

/** What a limit on another load of the same sitter is held against. */
export interface SeatedFigures {
  /** From the seated rest to the tail end of the rockers, radians; null: there is none. */
  readonly rockerEndBack: number | null;
}

type Ends = readonly [min: number | null, max: number | null];

const scaled = (value: number | null, unit: number): number | null => (value === null ? null : value * unit);

/** A range for each kind, in the order of the contract: adult, nursing, child, porch; one alone: the same for all. */
function byKind(unit: number, ...ends: readonly Ends[]): DefaultLimit['range'] {
  const ofKind = new Map<ChairKind, RangeInSI>(
    chairKinds.map((kind, i) => {
      const [min, max] = ends[i] ?? ends[0]!;
      return [kind, { min: scaled(min, unit), max: scaled(max, unit) }];
    }),
  );
  return ({ kind }) => ofKind.get(kind)!;
}

const degree = Math.PI / 180;
const millimetre = 0.001;

export const defaultLimits: readonly DefaultLimit[] = [
  {
    measure: 'seatSlopeDeg',
    load: 'empty',
    range: byKind(degree, [0, 9], [0, 8], [0, 8], [1, 11]),
    why: 'looks, and the first sitting down',
  },
  {
    measure: 'flatLongestM',
    load: 'empty',
    range: byKind(millimetre, [null, 25], [null, 25], [null, 12], [null, 25]),
    why: 'a dead spot; sanding makes half an inch',
  },
  { measure: 'radiusJump', load: 'empty', range: byKind(1, [null, 0.15]), why: 'felt as a bump' },
  {
    measure: 'restCount',
    load: 'empty',
    range: byKind(1, [1, 1]),
    why: 'more than one is a flat, a hump or a corner in use',
  },
  {
    measure: 'seatSlopeDeg',
    load: 'seated',
    range: byKind(degree, [5, 11], [4, 9], [2, 8], [6, 13]),
    why: 'flat: slides out; steep: cannot rise (17° is the most that a published magazine article allows)',
  },
  {
    measure: 'backAngleDeg',
    load: 'seated',
    range: byKind(degree, [18, 26], [14, 22], [12, 20], [20, 30]),
    why: 'upright: no rest for the back; far back: hard to rise, and to see ahead',
  },
  {
    measure: 'periodS',
    load: 'seated',
    range: byKind(1, [1.8, 2.6], [1.8, 2.5], [1.3, 2.0], [1.9, 2.8]),
    why:
      'quicker works the legs, slower wallows (published: 30 a minute was preferred of 15, 30, 45 and 60 by 50 ' +
      'elderly people in a motor-driven chair)',
  },
  {
    measure: 'tipSidewaysDeg',
    load: 'seated',
    range: byKind(degree, [15, null], [15, null], [18, null], [15, null]),
    why: 'reaching to the floor beside the chair',
  },
  {
    measure: 'frictionDemand',
    load: 'seated',
    range: ({ floor }) => ({ min: null, max: 0.7 * floor.friction }),
    why: 'seven tenths of the floor’s friction, or it walks',
  },
  {
    measure: 'kneeHollowGapM',
    load: 'seated',
    range: byKind(millimetre, [0, 50], [12, 65], [0, 40], [0, 50]),
    hurtsOthers: 'min',
    why: 'front edge as settled below the knee hollow in a 25 mm shoe',
  },
  {
    measure: 'seatDepthGapM',
    load: 'seated',
    range: byKind(millimetre, [25, 75], [25, 75], [25, 50], [25, 75]),
    hurtsOthers: 'min',
    why: 'knee hollow clear of the edge',
  },
  {
    measure: 'armHeightGapM',
    load: 'seated',
    range: byKind(millimetre, [-12, 25], [0, 25], [-12, 12], [-12, 25]),
    hurtsOthers: 'max',
    why: 'higher arms lift the shoulders, lower ones do not carry',
  },
  {
    measure: 'footReach',
    load: 'seated',
    range: byKind(1, [null, 0.95], [null, 0.92], [null, 0.95], [null, 0.95]),
    why: 'a foot still pushes at the back end of a 6° rock',
  },
  ...leaningBackHard('leaning-back-hard', [
    byKind(millimetre, [50, null], [75, null], [75, null], [50, null]),
    byKind(degree, [8, null], [10, null], [12, null], [8, null]),
  ]),
  ...leaningBackHard('leaning-back-hard-with-a-child', [
    byKind(millimetre, [75, null]),
    byKind(degree, [10, null]),
  ]),
  ...gettingUp('getting-up', byKind(millimetre, [25, null], [50, null], [40, null], [25, null])),
  ...gettingUp('getting-up-with-a-child', byKind(millimetre, [50, null])),
];

/** With a child the numbers are those of a nursing chair, whatever the kind. */
function leaningBackHard(
  load: LoadId,
  [rockerLeft, leftToTip]: readonly [DefaultLimit['range'], DefaultLimit['range']],
): DefaultLimit[] {
  return [
    {
      measure: 'wallClearanceM',
      load,
      range: byKind(millimetre, [50, null]),
      why: 'the back must not strike the wall',
    },
    { measure: 'leftToTipBackDeg', load, range: leftToTip, why: 'a second push comes' },
    {
      measure: 'rockerLeftBackM',
      load,
      range: rockerLeft,
      why: 'past its end the chair turns about a corner',
    },
  ];
}

function gettingUp(load: LoadId, range: DefaultLimit['range']): DefaultLimit[] {
  return [
    { measure: 'rockerLeftForwardM', load, range, why: 'past its end the chair turns about a corner' },
    {
      measure: 'kickBackDeg',
      load,
      againstSeated: true,
      range: (_, { rockerEndBack }) => (rockerEndBack === null ? null : { min: null, max: rockerEndBack }),
      why: 'the empty chair must not kick back past the end of its rockers, as the sitter’s rest counts it',
    },
  ];
}

/** What every default limit rests on. */
export const defaultBasis = 'common practice or this project’s judgement, no source';
