/** An alteration in a maker's words: 'front legs 1/4 in shorter', '2 lb on the tails'. */
import { alterationNames, type AlterationName } from '../names.js';
import { sayInUnit } from './variable-words.js';

type Say = (size: string, more: boolean) => string;

const longer =
  (what: string): Say =>
  (size, more) =>
    `${what} ${size} ${more ? 'longer' : 'shorter'}`;
const moved =
  (what: string): Say =>
  (size, more) =>
    `${what} ${size} ${more ? 'forward' : 'back'}`;

const words: Readonly<Record<AlterationName, Say>> = {
  'rocker-radius': (size, more) => `radius of the rockers ${size} ${more ? 'larger' : 'smaller'}`,
  'tail-end': longer('tails of the rockers'),
  'nose-end': longer('noses of the rockers'),
  'tail-wedge': (size) => `wedges glued under the tails, ${size} thick at their ends`,
  'both-legs': longer('all legs'),
  'front-legs': longer('front legs'),
  'back-legs': longer('back legs'),
  'upper-chair': moved('all but the rockers slid along them'),
  'back-rest': moved('back rest'),
  'tail-weight': (size) => `${size} on the tails`,
  'nose-weight': (size) => `${size} on the noses`,
};

/** @param value in that unit, as a change from the drawing */
export const sayAlteration = (name: AlterationName, value: number, unit: string): string =>
  words[name](sayInUnit(Math.abs(value), unit), value > 0);

export const isAlteration = (name: string): name is AlterationName =>
  (alterationNames as readonly string[]).includes(name);
