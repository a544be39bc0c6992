/** Which groups of a drawing are parts as they are drawn, and which the lines of seat, back and arms. */
import type { Drawn } from '../drawing/read/drawn.js';
import { drawnOutlines, type Asked, type OutlinesFound } from '../drawing/read/outlines.js';
import { usuallySmoothed } from '../design/resolve-parts.js';
import { mappedPoint, scaling, type Affine } from '../geometry/affine.js';
import type { Flaw } from '../geometry/flaw.js';
import { outlineFlaws } from '../geometry/flaws.js';
import { printable } from '../report/printable.js';
import { groupsWithin, namedGroups, type NamedGroup, type NamedGroups } from './named-groups.js';
import { endsOf, lineNamed, onlyLine, type LineRead, type SeatLine } from './seat-lines.js';

/** A drawing whose units are known. */
export interface Sheet extends Drawn {
  /** Metres a unit. */
  readonly unit: number;
  /** It shows the chair from its other side, facing left. */
  readonly mirror: boolean;
}

export interface JudgedGroup {
  /** Unlike that of any other. */
  readonly name: string;
  readonly group: NamedGroup;
  /** In metres, x forward and y up, from the drawing’s [0, 0]. */
  readonly made: OutlinesFound;
  /** Why it is no part; none: it is one. Places as drawn, or in metres as above. */
  readonly flaws: readonly Flaw[];
}

export interface LineOf {
  readonly group: NamedGroup;
  /** As `made`. */
  readonly ends: LineRead['ends'];
}

export interface JudgedGroups {
  readonly groups: readonly JudgedGroup[];
  readonly lines: ReadonlyMap<SeatLine, LineOf>;
  readonly nameless: NamedGroups['nameless'];
}

export const isPart = ({ flaws }: JudgedGroup): boolean => flaws.length === 0;

/** A design has some dozen parts; a drawing of more layers is none of a chair. */
const mostGroups = 1000;

/** By layers; where all is on one that is no part, by what is in it if there are parts. */
export function judgedGroups(sheet: Sheet): JudgedGroups | Flaw {
  const all = namedGroups(sheet);
  if (all.groups.length > mostGroups)
    return { expected: `${mostGroups} layers at most`, found: String(all.groups.length) };
  const judged = judgedAs(all, sheet);
  const hasIds = sheet.curves.some(({ ids }) => ids.length > 0);
  if (!hasIds || all.groups.length > 1 || judged.groups.some(isPart)) return judged;
  const inside = groupsWithin(sheet);
  if (inside.groups.length > mostGroups || inside.groups[0]!.by === null) return judged;
  const within = judgedAs(inside, sheet);
  return within.groups.some(isPart) ? within : judged;
}

function judgedAs({ groups, nameless }: NamedGroups, sheet: Sheet): JudgedGroups {
  const lines = linesAmong(groups, sheet);
  const taken = new Set([...lines.values()].map(({ group }) => group));
  const others = named(groups.filter((group) => !taken.has(group)));
  return { groups: others.map((one) => judgedGroup(one, sheet, lines)), lines, nameless };
}

/** To x forward and y up, metres from the drawing’s [0, 0]. */
export const upright = ({ unit, mirror, yDown }: Sheet): Affine =>
  scaling(mirror ? -unit : unit, yDown ? -unit : unit);

/** The first of each name. */
function linesAmong(groups: readonly NamedGroup[], sheet: Sheet): Map<SeatLine, LineOf> {
  const lines = new Map<SeatLine, LineOf>();
  const map = upright(sheet);
  for (const group of groups) {
    const line = group.by === null ? null : lineNamed(group.name);
    if (line === null || lines.has(line)) continue;
    const only = onlyLine(group.curves, sheet.unit);
    if (only === null) continue;
    const [from, to] = [mappedPoint(only.from, map), mappedPoint(only.to, map)];
    lines.set(line, { group, ends: endsOf({ from, to }, line) });
  }
  return lines;
}

interface Named {
  readonly name: string;
  readonly group: NamedGroup;
}

/** By their layers, in one line each; what would read alike is numbered. */
function named(groups: readonly NamedGroup[]): Named[] {
  const met = new Set<string>();
  return groups.map((group) => {
    const plain = printable(group.name) || (group.by === null ? 'drawing' : 'part');
    let name = plain;
    for (let count = 2; met.has(name); count += 1) name = `${plain} (${count})`;
    met.add(name);
    return { name, group };
  });
}

/** As it lies: the chair’s own [0, 0] is not known yet. */
const asDrawn = { origin: { x: 0, y: 0 }, turn: 0, join: null, smooth: usuallySmoothed };

function judgedGroup({ name, group }: Named, sheet: Sheet, lines: JudgedGroups['lines']): JudgedGroup {
  const { unit, mirror } = sheet;
  const made = drawnOutlines(
    { ...sheet, curves: group.curves },
    { ...asDrawn, unit, mirror, ...askFor(group) },
  );
  const flaws = flawsOf(made);
  const line = flaws.length > 0 ? lineNamed(group.name) : null;
  const isNoLine = line === null ? [] : [noLine(group, line, lines.get(line), sheet)];
  return { name, group, made, flaws: [...isNoLine, ...flaws] };
}

const askFor = ({ by, name }: NamedGroup): Pick<Asked, 'layer' | 'id'> => ({
  layer: by === 'layer' ? name : null,
  id: by === 'id' ? name : null,
});

function flawsOf(made: OutlinesFound): readonly Flaw[] {
  if (!made.ok) return made.flaws;
  const judged = outlineFlaws(made.loops);
  return judged.ok ? [] : judged.flaws;
}

function noLine({ curves }: NamedGroup, line: SeatLine, taken: LineOf | undefined, { unit }: Sheet): Flaw {
  const expected = 'one straight line, or the outlines of a part';
  if (taken && onlyLine(curves, unit) !== null)
    return { expected: `one ${line} line`, found: `another on ${calling(taken.group)}` };
  const pieces = curves.reduce((count, one) => count + one.pieces.length, 0);
  return { expected, found: pieces === 1 ? 'one that is none' : `${pieces} lines or curves` };
}

/** `the layer seat`. */
export const calling = ({ by, name }: Pick<NamedGroup, 'by' | 'name'>): string =>
  by === null ? 'all that is drawn' : `the ${by} ${name}`;
