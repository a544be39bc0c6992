/** Which groups of a drawing are parts as they are drawn, which the lines of seat, back and arms; layers that are neither are looked into. */
import type { DrawnCurve } from '../drawing/read/drawn.js';
import { mappedPoint } from '../geometry/affine.js';
import type { Flaw } from '../geometry/flaw.js';
import type { Line } from '../geometry/piece.js';
import { withoutInner } from './inner-parts.js';
import { calling, isPart, judgedGroup, noPart, upright, type Judged, type Sheet } from './judged.js';
import {
  groupsIn,
  indexOf,
  namedGroups,
  type Index,
  type NamedGroup,
  type NamedGroups,
} from './named-groups.js';
import { endsOf, lineNamed, onlyLine, type LineRead, type SeatLine } from './seat-lines.js';
import { toldApart, type JudgedGroup } from './told-apart.js';

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
  const groups = toldApart(withoutInner(eachOnce([...judged, ...second])));
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

const secondLine = (line: SeatLine, first: NamedGroup): Flaw => ({
  expected: `one ${line} line`,
  found: `another on ${calling(first)}`,
});
