/**
 * The words of the contract: loads, measures and outline words. Data only.
 * What a name means is said here once; every other room reads it from here.
 */

/** What a number counts, and so which SI unit it carries inside. */
export type Kind =
  'length' | 'mass' | 'time' | 'angle' | 'number' | 'force' | 'energy' | 'density' | 'inertia';

/** Kinds of chair; each has its own default limits. */
export const chairKinds = ['adult', 'nursing', 'child', 'porch'] as const;
export type ChairKind = (typeof chairKinds)[number];

/** How an outline may be written in a design file. */
export const outlineWords = ['rocker', 'bar', 'circle', 'rectangle', 'path', 'drawing'] as const;
export type OutlineWord = (typeof outlineWords)[number];

/**
 * What a maker may change of any chair without a named dimension for it: differences, 0 when nothing is changed. Positive
 * is longer, larger, forward or added; what each does stands in `chair/alter.ts`.
 */
export const alterations = {
  'rocker-radius': 'length',
  'tail-end': 'length',
  'nose-end': 'length',
  'tail-wedge': 'length',
  'both-legs': 'length',
  'front-legs': 'length',
  'back-legs': 'length',
  'upper-chair': 'length',
  'back-rest': 'length',
  'tail-weight': 'mass',
  'nose-weight': 'mass',
} as const satisfies Record<string, Kind>;
export type AlterationName = keyof typeof alterations;
export const alterationNames = Object.keys(alterations) as AlterationName[];

/** What can only be added. */
export const addedOnly: readonly AlterationName[] = ['tail-wedge', 'tail-weight', 'nose-weight'];

/** Everything a chair is put through. `sitter`: once for each sitter; `moving`: something moves by a script. */
export const loads = {
  empty: { sitter: false, moving: false },
  seated: { sitter: true, moving: false },
  'seated-feet-up': { sitter: true, moving: false },
  'leaning-back-hard': { sitter: true, moving: true },
  'getting-up': { sitter: true, moving: true },
  'with-a-child': { sitter: true, moving: false },
  'leaning-back-hard-with-a-child': { sitter: true, moving: true },
  'getting-up-with-a-child': { sitter: true, moving: true },
  'child-on-the-tails': { sitter: false, moving: true },
} as const satisfies Record<string, { sitter: boolean; moving: boolean }>;
export type LoadId = keyof typeof loads;
export const loadIds = Object.keys(loads) as LoadId[];

const atRest = ['empty', 'seated', 'seated-feet-up', 'with-a-child'] as const satisfies readonly LoadId[];
const empty = ['empty'] as const satisfies readonly LoadId[];
const seated = ['seated'] as const satisfies readonly LoadId[];
const hardLean = ['leaning-back-hard', 'leaning-back-hard-with-a-child'] as const satisfies readonly LoadId[];
const gettingUp = ['getting-up', 'getting-up-with-a-child'] as const satisfies readonly LoadId[];
const tails = ['child-on-the-tails'] as const satisfies readonly LoadId[];
const moving = [...hardLean, ...gettingUp, ...tails] as const satisfies readonly LoadId[];

/** One line of the measure catalogue of the contract. */
export interface MeasureName {
  /** What it is called in a design's `limits`: the JSON name without its unit ending. */
  readonly limitKey: string;
  readonly kind: Kind;
  /** Loads that have this measure. */
  readonly loads: readonly LoadId[];
}

function measure<Key extends string>(limitKey: Key, kind: Kind, of: readonly LoadId[]) {
  return { limitKey, kind, loads: of } as const;
}

/** Every measure by its JSON name, in the order of the contract. Lengths are metres, angles degrees in JSON. */
export const measures = {
  restAngleDeg: measure('restAngle', 'angle', atRest),
  seatSlopeDeg: measure('seatSlope', 'angle', atRest),
  backAngleDeg: measure('backAngle', 'angle', atRest),
  contactAtRestM: measure('contactAtRest', 'length', atRest),
  touchFromTailM: measure('touchFromTail', 'length', atRest),
  periodS: measure('period', 'time', atRest),
  periodAtSwingS: measure('periodAtSwing', 'time', atRest),
  swingDeg: measure('swing', 'angle', atRest),
  tipBackDeg: measure('tipBack', 'angle', atRest),
  tipBackEnergyJ: measure('tipBackEnergy', 'energy', atRest),
  tipBackPushN: measure('tipBackPush', 'force', atRest),
  tipForwardDeg: measure('tipForward', 'angle', atRest),
  tipForwardEnergyJ: measure('tipForwardEnergy', 'energy', atRest),
  tipForwardPushN: measure('tipForwardPush', 'force', atRest),
  rockerEndBackDeg: measure('rockerEndBack', 'angle', atRest),
  rockerEndForwardDeg: measure('rockerEndForward', 'angle', atRest),
  tipSidewaysDeg: measure('tipSideways', 'angle', atRest),
  frictionDemand: measure('frictionDemand', 'number', [...atRest, ...moving]),
  restCount: measure('restCount', 'number', empty),
  flatLongestM: measure('flatLongest', 'length', empty),
  sharpestCornerDeg: measure('sharpestCorner', 'angle', empty),
  radiusJump: measure('radiusJump', 'number', empty),
  seatFrontHeightM: measure('seatFrontHeight', 'length', seated),
  kneeHollowGapM: measure('kneeHollowGap', 'length', seated),
  seatDepthGapM: measure('seatDepthGap', 'length', seated),
  armHeightGapM: measure('armHeightGap', 'length', seated),
  footReach: measure('footReach', 'number', seated),
  sweptBackM: measure('sweptBack', 'length', [...seated, ...hardLean]),
  wallClearanceM: measure('wallClearance', 'length', [...seated, ...hardLean]),
  peakBackDeg: measure('peakBack', 'angle', [...hardLean, ...tails]),
  leftToTipBackDeg: measure('leftToTipBack', 'angle', [...hardLean, ...tails]),
  rockerLeftBackM: measure('rockerLeftBack', 'length', [...hardLean, ...tails]),
  tailLoadBorneKg: measure('tailLoadBorne', 'mass', tails),
  peakForwardDeg: measure('peakForward', 'angle', gettingUp),
  rockerLeftForwardM: measure('rockerLeftForward', 'length', gettingUp),
  leftToTipForwardDeg: measure('leftToTipForward', 'angle', gettingUp),
  kickBackDeg: measure('kickBack', 'angle', gettingUp),
  edgeLoadBorneN: measure('edgeLoadBorne', 'force', gettingUp),
  restUnderEdgeLoadDeg: measure('restUnderEdgeLoad', 'angle', gettingUp),
  minFloorForceRatio: measure('minFloorForceRatio', 'number', moving),
} as const satisfies Record<string, MeasureName>;
export type MeasureKey = keyof typeof measures;
export const measureKeys = Object.keys(measures) as MeasureKey[];

/** The measures a load has, in the order of the contract. */
export function measuresOf(load: LoadId): MeasureKey[] {
  return measureKeys.filter((key) => measures[key].loads.includes(load));
}

/** What the unit ending of a measure's JSON name makes of an SI number: SI × factor = the number printed. */
export function jsonFactor(key: MeasureKey): number {
  return measures[key].kind === 'angle' ? 180 / Math.PI : 1;
}
