/**
 * `rocker: { radius, depth, nose, tail, at }`: a band of constant depth. Its bottom edge runs from tail to nose along
 * one arc or several tangent ones, its top edge along arcs about the same centres, its ends are square to the arc.
 */
import { built, millimetres, notPositive, type Built, type Flaw } from '../flaw.js';
import { fullTurn } from '../lean.js';
import { endOf, startOf, type Arc, type Line, type Loop } from '../piece.js';
import { samePlace, type Point } from '../point.js';
import { withTailWedge } from './tail-wedge.js';
import { tangentArcs, type BottomEdge, type TangentArc } from './tangent-arcs.js';

export interface RockerWord extends BottomEdge {
  readonly depth: number;
  /** How far a wedge under the tail lowers its end; 0 or left out: none. */
  readonly wedge?: number;
}

export interface Rocker {
  readonly boundary: Loop;
  /** Of the bottom edge. */
  readonly ends: { readonly nose: Point; readonly tail: Point };
}

export function rocker(word: RockerWord): Built<Rocker> {
  return built(
    numbersOf(word),
    () => {
      const sizes = sizeFlaws(word);
      if (sizes.length > 0) return sizes;
      const arcs = tangentArcs(word);
      const edge = edgeFlaws(word, arcs);
      return edge.length > 0 || bottomOf(arcs, word) !== null ? edge : [tooThick(word.wedge!)];
    },
    () => {
      const arcs = tangentArcs(word);
      return band(bottomOf(arcs, word)!, arcs, word.depth);
    },
  );
}

const bottomOf = (arcs: readonly TangentArc[], word: RockerWord): readonly TangentArc[] | null =>
  word.wedge === undefined || word.wedge === 0 ? arcs : withTailWedge(arcs, word, word.wedge);

const tooThick = (wedge: number): Flaw => ({
  expected: 'a wedge under the tail that leaves its end above the line on from where the wedge begins',
  found: `one of ${millimetres(wedge)}`,
});

function numbersOf({ arcs, depth, nose, tail, at }: RockerWord): Record<string, number> {
  const numbers: Record<string, number> = { depth, nose, tail, at };
  arcs.forEach(({ radius, until }, i) => {
    numbers[nameOf('radius', i, arcs)] = radius;
    if (until !== null) numbers[nameOf('until', i, arcs)] = until;
  });
  return numbers;
}

/** `radius`, or `radius of arc 2` where there are several. */
const nameOf = (word: string, index: number, arcs: readonly unknown[]): string =>
  arcs.length > 1 ? `${word} of arc ${index + 1}` : word;

function sizeFlaws({ arcs, depth }: RockerWord): Flaw[] {
  if (arcs.length === 0) return [{ expected: 'at least one radius', found: 'none' }];
  const radii = arcs.flatMap(({ radius }, i) => {
    const name = nameOf('radius', i, arcs);
    const flaws = notPositive({ [name]: radius });
    return flaws.length > 0 || depth < radius ? flaws : [tooDeep(name, radius, depth)];
  });
  return [...notPositive({ depth }), ...radii, ...untilFlaws(arcs)];
}

const tooDeep = (name: string, radius: number, depth: number): Flaw => ({
  expected: `a depth less than the ${name}, ${millimetres(radius)}`,
  found: millimetres(depth),
});

function untilFlaws(arcs: RockerWord['arcs']): Flaw[] {
  return arcs.flatMap(({ until }, i) => {
    const last = i === arcs.length - 1;
    if (last === (until === null)) return [];
    const expected = last ? 'no `until` on the last arc: it runs to the tail' : `an until of arc ${i + 1}`;
    return [{ expected, found: until === null ? 'none' : millimetres(until) }];
  });
}

function edgeFlaws(word: RockerWord, arcs: readonly TangentArc[]): Flaw[] {
  const unreached = arcs.flatMap((arc, i) => {
    if (!Number.isFinite(arc.centre.x)) return [];
    return [arc.noseSlope, arc.tailSlope].flatMap((slope, behind) =>
      Number.isNaN(slope) ? [outOfReach(word, i + behind, arc.radius)] : [],
    );
  });
  if (unreached.length > 0) return unreached;
  const empty = arcs.flatMap((arc, i) =>
    noLength(arcs.length > 1 ? `arc ${i + 1}` : 'an arc', lengthOf(arc)),
  );
  if (empty.length > 0) return empty;
  const turn = arcs[0]!.noseSlope - arcs.at(-1)!.tailSlope;
  if (turn < fullTurn) return [];
  const degrees = Math.round((turn * 180) / Math.PI);
  return [{ expected: 'less than one full turn from tail to nose', found: `${degrees} degrees` }];
}

/** Ends are counted from the nose: the nose is 0, the joint of arcs i and i + 1 is i, the tail the last. */
function outOfReach({ arcs, nose, tail }: RockerWord, end: number, radius: number): Flaw {
  const name = end === 0 ? 'nose' : end === arcs.length ? 'tail' : nameOf('until', end - 1, arcs);
  const value = end === 0 ? nose : (arcs[end - 1]!.until ?? tail);
  return {
    expected: `the ${name} no farther from the centre of its arc than the radius, ${millimetres(radius)}`,
    found: millimetres(value),
    hint: 'nose, tail and until are level distances; `along: curve` measures nose and tail along the edge',
  };
}

const lengthOf = ({ radius, noseSlope, tailSlope }: TangentArc): number => radius * (noseSlope - tailSlope);

function noLength(name: string, length: number): Flaw[] {
  if (length > samePlace) return [];
  return [
    {
      expected: `${name} of some length from its tail end forward to its nose end`,
      found: millimetres(length),
      hint: 'nose counts forward from `at`, tail and until backward; until grows from nose to tail',
    },
  ];
}

/** A wedge ends plumb under the tail end as drawn, of which nothing is cut off. */
function band(below: readonly TangentArc[], arcs: readonly TangentArc[], depth: number): Rocker {
  const bottom = below.toReversed().map((arc) => offset(arc, 0));
  const top = arcs.map((arc) => offset(arc, depth));
  const [tail, nose] = [startOf(bottom[0]!), endOf(bottom.at(-1)!)];
  const noseEnd: Line = { kind: 'line', from: nose, to: startOf(top[0]!) };
  const drawn = below === arcs ? tail : startOf(offset(arcs.at(-1)!, 0));
  const tailEnd: Line = { kind: 'line', from: endOf(top.at(-1)!), to: drawn };
  const ofWedge: Line[] = below === arcs ? [] : [{ kind: 'line', from: drawn, to: tail }];
  return { boundary: [...bottom, noseEnd, ...top, tailEnd, ...ofWedge], ends: { nose, tail } };
}

/** The arc `depth` above the bottom edge: along the bottom (0) from tail to nose, above it back to the tail. */
function offset({ centre, radius, noseSlope, tailSlope }: TangentArc, depth: number): Arc {
  const [from, to] = depth === 0 ? [tailSlope, noseSlope] : [noseSlope, tailSlope];
  return { kind: 'arc', centre, radius: radius - depth, start: from - Math.PI / 2, sweep: to - from };
}
