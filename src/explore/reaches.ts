/**
 * How far a chair may be altered when it is on paper, cut, or glued up. Judgement of this project: nowhere farther than
 * what a maker would still call the same chair.
 */
import type { AlterationName } from '../names.js';

export const stages = ['drawing', 'cut', 'glued'] as const;
export type Stage = (typeof stages)[number];

/** Metres, of weights kilograms. */
export type Reach = readonly [least: number, greatest: number];

/** null: not at that stage. Once parts are cut they only become shorter; once glued, nothing slides any more. */
type ByStage = Readonly<Record<Stage, Reach | null>>;

/** About a third less and half as much again of a usual radius, a good metre. Cut rockers keep theirs. */
const radius: ByStage = { drawing: [-0.4, 0.6], cut: null, glued: null };
/** Half a foot off, and a foot more on paper: a tail is seldom longer than that over the floor behind the seat. */
const end: ByStage = { drawing: [-0.15, 0.3], cut: [-0.15, 0], glued: [-0.15, 0] };
/** Up to an inch at its end: thicker is a new rocker. On paper the rocker itself is drawn otherwise. */
const wedge: ByStage = { drawing: null, cut: [0, 0.025], glued: [0, 0.025] };
/** As wide as the window of the knee hollow over the front edge is: farther it fits nobody it fitted before. */
const legs: ByStage = { drawing: [-0.05, 0.05], cut: [-0.05, 0], glued: [-0.05, 0] };
/** A hand’s breadth either way: farther the legs no longer stand where the rockers are drawn for them. */
const slid: ByStage = { drawing: [-0.1, 0.1], cut: [-0.1, 0.1], glued: null };
/** Up to nearly half of what a chair weighs: more is no trim. */
const added: ByStage = { drawing: [0, 5], cut: [0, 5], glued: [0, 5] };

const reaches: Readonly<Record<AlterationName, ByStage>> = {
  'rocker-radius': radius,
  'tail-end': end,
  'nose-end': end,
  'tail-wedge': wedge,
  'both-legs': legs,
  'front-legs': legs,
  'back-legs': legs,
  'upper-chair': slid,
  'back-rest': slid,
  'tail-weight': added,
  'nose-weight': added,
};

export const reachOf = (alteration: AlterationName, stage: Stage): Reach | null => reaches[alteration][stage];
