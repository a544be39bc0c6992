/** Which groups of a drawing are parts as they are drawn, and which the lines of seat, back and arms. */
import type { Drawn, DrawnCurve } from '../drawing/read/drawn.js';
import { drawnOutlines, type Asked, type OutlinesFound } from '../drawing/read/outlines.js';
import { placeDrawn } from '../drawing/read/place-drawn.js';
import { usuallySmoothed } from '../design/resolve-parts.js';
import { mappedPoint, scaling, type Affine } from '../geometry/affine.js';
import type { Flaw } from '../geometry/flaw.js';
import { outlineFlaws } from '../geometry/flaws.js';
import type { Line } from '../geometry/piece.js';
import type { Point } from '../geometry/point.js';
import { printable } from '../report/printable.js';
import {
  groupsIn,
  indexOf,
  namedGroups,
  type Index,
  type NamedGroup,
  type NamedGroups,
} from './named-groups.js';
import { endsOf, lineNamed, onlyLine, type LineRead, type SeatLine } from './seat-lines.js';
import { withoutInner } from './within-others.js';

/** A drawing whose units are known. */
export interface Sheet extends Drawn {
  /** Metres a unit. */
  readonly unit: number;
  /** It shows the chair from its other side, facing left. */
  readonly mirror: boolean;
}

/** A group and what its curves are, taken for a part. */
export interface Judged {
  readonly group: NamedGroup;
  /** In metres, x forward and y up, from the drawing’s [0, 0]. */
  readonly made: OutlinesFound;
  /** Why it is no part, by places as drawn; none: it is one. */
  readonly flaws: readonly Flaw[];
}

export interface JudgedGroup extends Judged {
  /** Unlike that of any other. */
  readonly name: string;
  /** Other groups that have some of its curves too. */
  readonly shares: readonly string[];
}

/** A layer whose groups were taken in its place. */
export interface Opened {
  readonly group: NamedGroup;
  /** Why it is no part; null: it has outlines of several. */
  readonly flaw: Flaw | null;
  /** Curves of it that no name in it leads to. */
  readonly beside: readonly DrawnCurve[];
}

export interface LineOf {
  readonly group: NamedGroup;
  /** As `made`. */
  readonly ends: LineRead['ends'];
}

export interface JudgedGroups {
  readonly groups: readonly JudgedGroup[];
  readonly lines: ReadonlyMap<SeatLine, LineOf>;
  readonly opened: readonly Opened[];
  readonly nameless: readonly DrawnCurve[];
}

export const isPart = ({ flaws }: Judged): boolean => flaws.length === 0;

/** A design has some dozen parts; a drawing of more layers is none of a chair. */
const mostGroups = 1000;

export function judgedGroups(sheet: Sheet): JudgedGroups | Flaw {
  const index = indexOf(sheet);
  const all = namedGroups(sheet, index);
  if (all.groups.length > mostGroups) return tooMany(all.groups);
  const { judged, lone, opened } = judgedAs(all, sheet, index);
  const lines = linesAmong(lone, sheet);
  const taken = new Set([...lines.values()].map(({ group }) => group.curves));
  const second = lone
    .filter(({ group }) => !taken.has(group.curves))
    .map(({ group, line }) => noPart(group, secondLine(line, lines.get(line)!.group)));
  const groups = named(withoutInner(eachOnce([...judged, ...second])));
  return { groups, lines, opened, nameless: all.nameless };
}

/** Layers of one name in two others are one layer. */
const eachOnce = (judged: readonly Judged[]): readonly Judged[] => [
  ...new Map(judged.map((one) => [one.group.curves, one])).values(),
];

const tooMany = ({ length, 0: first }: readonly NamedGroup[]): Flaw => ({
  expected: `${mostGroups} ${first!.by}s at most`,
  found: String(length),
  hint: 'put what belongs to a part on a layer of its own, and what does not into another drawing',
});

/** A group that is one straight line and has the name of one. */
interface LoneLine {
  readonly group: NamedGroup;
  readonly line: SeatLine;
  /** As drawn. */
  readonly only: Line;
}

interface JudgedAs {
  readonly judged: readonly Judged[];
  readonly lone: readonly LoneLine[];
  readonly opened: readonly Opened[];
}

const nothing: JudgedAs = { judged: [], lone: [], opened: [] };

function judgedAs({ groups }: NamedGroups, sheet: Sheet, index: Index): JudgedAs {
  const each = groups.map((group): JudgedAs => {
    const line = group.by === null ? null : lineNamed(group.name);
    const only = line === null ? null : onlyLine(group.curves, sheet.unit);
    if (line !== null && only !== null) return { ...nothing, lone: [{ group, line, only }] };
    const one = judgedGroup(group, line, sheet);
    return openedUp(one, groups.length === 1, sheet, index) ?? { ...nothing, judged: [one] };
  });
  return {
    judged: each.flatMap(({ judged }) => judged),
    lone: each.flatMap(({ lone }) => lone),
    opened: each.flatMap(({ opened }) => opened),
  };
}

/**
 * A layer that is no part by the layers in it. By ids, which a program makes up for whatever is drawn, only where it is
 * all that there is, and if most of them are parts. null: it is better left whole.
 */
function openedUp(
  { group, made, flaws }: Judged,
  sole: boolean,
  sheet: Sheet,
  index: Index,
): JudgedAs | null {
  const solids = made.ok ? made.loops.filter(({ hole }) => !hole).length : 0;
  if (group.by !== 'layer' || (flaws.length === 0 && solids === 1)) return null;
  const within = groupsIn(group, index);
  const layers = within.groups.filter(({ by }) => by === 'layer').length;
  // Whole it has what no name in it leads to, such as its holes.
  const isBetterWhole = flaws.length === 0 && (within.nameless.length > 0 || (!sole && layers < 2));
  if (isBetterWhole || (layers === 0 && !sole) || within.groups.length > mostGroups) return null;
  const found = judgedAs(within, sheet, index);
  const parts = found.judged.filter(isPart).length;
  const good = parts + found.lone.length;
  const enough = layers > 0 ? good > 0 : good > found.judged.length - parts;
  if (!enough || (flaws.length === 0 && parts < 2)) return null;
  const opened = { group, flaw: flaws[0] ?? null, beside: within.nameless };
  return { ...found, opened: [opened, ...found.opened] };
}

/** To x forward and y up, metres from the drawing’s [0, 0]. */
export const upright = ({ unit, mirror, yDown }: Sheet): Affine =>
  scaling(mirror ? -unit : unit, yDown ? -unit : unit);

/** The first of each name. */
function linesAmong(lone: readonly LoneLine[], sheet: Sheet): Map<SeatLine, LineOf> {
  const lines = new Map<SeatLine, LineOf>();
  const map = upright(sheet);
  for (const { group, line, only } of lone) {
    const [from, to] = [mappedPoint(only.from, map), mappedPoint(only.to, map)];
    if (!lines.has(line)) lines.set(line, { group, ends: endsOf({ from, to }, line) });
  }
  return lines;
}

/** By their layers, in one line each; what would read alike is numbered. */
function named(judged: readonly Judged[]): JudgedGroup[] {
  const met = new Set<string>();
  const names = judged.map(({ group }) => {
    const plain = printable(group.name) || (group.by === null ? 'drawing' : 'part');
    let name = plain;
    for (let count = 2; met.has(name); count += 1) name = `${plain} (${count})`;
    met.add(name);
    return name;
  });
  const holders = holdersOf(judged);
  return judged.map((one, i) => {
    const others = new Set(one.group.curves.flatMap((curve) => holders.get(curve) ?? []));
    others.delete(i);
    return { ...one, name: names[i]!, shares: [...others].map((other) => names[other]!) };
  });
}

/** For each curve that several have those. */
function holdersOf(judged: readonly Judged[]): ReadonlyMap<DrawnCurve, readonly number[]> {
  const holders = new Map<DrawnCurve, number[]>();
  if (judged.length < 2) return holders;
  for (const [i, { group }] of judged.entries())
    for (const curve of group.curves) holders.set(curve, [...(holders.get(curve) ?? []), i]);
  for (const [curve, those] of holders) if (those.length < 2) holders.delete(curve);
  return holders;
}

/** As it lies: the chair’s own [0, 0] is not known yet. */
const asDrawn = { origin: { x: 0, y: 0 }, turn: 0, join: null, smooth: usuallySmoothed };

/** @param line that it has the name of, though it is none */
function judgedGroup(group: NamedGroup, line: SeatLine | null, sheet: Sheet): Judged {
  const { unit, mirror } = sheet;
  const made = drawnOutlines(
    { ...sheet, curves: group.curves },
    { ...asDrawn, unit, mirror, ...askFor(group) },
  );
  const flaws = flawsOf(made, sheet);
  return flaws.length > 0 && line !== null ? noPart(group, noLine(group)) : { group, made, flaws };
}

const askFor = ({ by, name }: NamedGroup): Pick<Asked, 'layer' | 'id'> => ({
  layer: by === 'layer' ? name : null,
  id: by === 'id' ? name : null,
});

/** By places of the drawing. */
function flawsOf(made: OutlinesFound, sheet: Sheet): readonly Flaw[] {
  if (!made.ok) return made.flaws;
  const { a, d } = upright(sheet);
  const place = ({ x, y }: Point): string => `${placeDrawn({ x: x / a, y: y / d }, sheet.unit)} as drawn`;
  const judged = outlineFlaws(made.loops, { place, drawn: true });
  return judged.ok ? [] : judged.flaws;
}

const noPart = (group: NamedGroup, ...flaws: readonly Flaw[]): Judged => ({
  ...{ group, flaws },
  made: { ok: false, flaws },
});

const secondLine = (line: SeatLine, first: NamedGroup): Flaw => ({
  expected: `one ${line} line`,
  found: `another on ${calling(first)}`,
});

function noLine({ curves }: NamedGroup): Flaw {
  const pieces = curves.reduce((count, one) => count + one.pieces.length, 0);
  return {
    expected: 'one straight line, or the outlines of a part',
    found: pieces === 1 ? 'one that is none' : `${pieces} lines or curves`,
  };
}

/** `the layer seat`. */
export const calling = ({ by, name }: Pick<NamedGroup, 'by' | 'name'>): string =>
  by === null ? 'all that is drawn' : `the ${by} ${name}`;
