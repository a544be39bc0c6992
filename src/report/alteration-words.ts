/** An alteration in a maker's words: 'front legs 1/4 in shorter', '2 lb on the tails', 'front legs 1/4 in shorter → as drawn'. */
import { alterationNames, type AlterationName } from '../names.js';
import { sayInUnit } from './variable-words.js';

/** What is changed, by how much, and where. */
interface Words {
  readonly what: string;
  readonly by: (size: string, more: boolean) => string;
  readonly nothing: string;
  readonly where: string;
}

const changed = (what: string, more: string, less: string): Words => ({
  what,
  by: (size, isMore) => `${size} ${isMore ? more : less}`,
  nothing: 'as drawn',
  where: '',
});
const longer = (what: string): Words => changed(what, 'longer', 'shorter');
const moved = (what: string): Words => changed(what, 'forward', 'back');
const weight = (where: string): Words => ({ what: '', by: (size) => size, nothing: 'nothing', where });

const words: Readonly<Record<AlterationName, Words>> = {
  'rocker-radius': changed('radius of the rockers', 'larger', 'smaller'),
  'tail-end': longer('tails of the rockers'),
  'nose-end': longer('noses of the rockers'),
  'tail-wedge': {
    what: 'wedges glued under the tails,',
    by: (size) => `${size} thick at their ends`,
    nothing: 'none',
    where: '',
  },
  'both-legs': longer('all legs'),
  'front-legs': longer('front legs'),
  'back-legs': longer('back legs'),
  'upper-chair': moved('all but the rockers slid along them'),
  'back-rest': moved('back rest'),
  'tail-weight': weight('on the tails'),
  'nose-weight': weight('on the noses'),
};

/**
 * Of a chair as drawn the change by itself; of one that is altered already both, and by how much more or less.
 * @param to @param from in that unit, as changes from the drawing
 */
export function sayAlteration(name: AlterationName, to: number, unit: string, from = 0): string {
  const { what, by, nothing, where } = words[name];
  const say = (value: number): string =>
    value === 0 ? nothing : by(sayInUnit(Math.abs(value), unit), value > 0);
  const change = from === 0 ? say(to) : `${say(from)} → ${say(to)}`;
  return [what, change, where, besides(from, to, unit)].filter((word) => word !== '').join(' ');
}

/** What is done to a chair that is altered that way already: nobody cuts the whole twice. */
function besides(from: number, to: number, unit: string): string {
  if (from === 0 || to === 0 || Math.sign(to) !== Math.sign(from)) return '';
  const more = Math.abs(to) - Math.abs(from);
  return `(${sayInUnit(Math.abs(more), unit)} ${more > 0 ? 'more' : 'less'})`;
}

export const isAlteration = (name: string): name is AlterationName =>
  (alterationNames as readonly string[]).includes(name);
