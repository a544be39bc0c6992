/** A design's values as SI numbers, for its own named values or for others. A sweep asks ten thousand times: nothing is compiled here. */
import type { DesignInSI, PartInSI } from './design.js';
import { notFinite } from './dimensions.js';
import { defaultFloor, floors } from './floors.js';
import { inFileOrder, type Checked, type Issue } from './issue.js';
import type { Words } from './places.js';
import type { Path } from './plain-data.js';
import { issueAt } from './issue-at.js';
import { keptWhileSame } from '../kept.js';
import type { Design } from './read-design.js';
import { alterationsInSI, errorsInSI, limitsInSI, loadsInSI, type RangeToSI } from './resolve-loads.js';
import {
  extraInSI,
  lineInSI,
  orNull,
  outlinesInSI,
  partInSI,
  type Drawings,
  type InSI,
} from './resolve-parts.js';
import { childInSI, sittersInSI } from './resolve-people.js';
import type { WrittenDesign, WrittenPart } from './schema.js';
import { unitsOf } from './units-of.js';
import { faultOfRange, faultOfValue, namesWithin, type Value, type ValueRange } from './value.js';

/** What a fault was found in, and what it is. */
type Fault = readonly [of: Value | ValueRange, words: Words];

const asStated: ReadonlyMap<string, number> = new Map();

/**
 * @param values SI numbers that take the place of named values; what is made of them follows.
 * @throws RangeError when the design has no value of that name, or the number is not finite.
 */
export const resolveDesign = (design: Design, values = asStated): Checked<DesignInSI> =>
  designResolver(design)(values);

/**
 * Resolves one design for named value after named value. What uses no name that has changed since the last time comes
 * back as the very same object.
 */
export function designResolver(
  design: Design,
): (values?: ReadonlyMap<string, number>) => Checked<DesignInSI> {
  const sections = sectionsOf(design);
  return (values = asStated) => {
    const names = namedValues(design, values);
    if (!names.ok) return names;
    const faults: Fault[] = [];
    const value = sections((section) => {
      const made = section(names.value);
      faults.push(...made.faults);
      return made.value;
    });
    return faults.length === 0 ? { ok: true, value } : { ok: false, issues: issuesOf(faults, design) };
  };
}

/** Some of the design in SI for the named values, with what is wrong in it. */
type Section<T> = (names: ReadonlyMap<string, number>) => {
  readonly value: T;
  readonly faults: readonly Fault[];
};

/** Takes the value of a section. */
type Take = <T>(section: Section<T>) => T;

/** @param of what is made of it: the names in it decide whether it is made anew */
function sectionOf<T>(of: unknown, make: (si: InSI, rangeInSI: RangeToSI) => T): Section<T> {
  const used = [...new Set(namesWithin(of))];
  const kept = keptWhileSame<ReturnType<Section<T>>>();
  return (names) =>
    kept(
      used.map((name) => names.get(name)),
      () => {
        const faults: Fault[] = [];
        const si: InSI = (value) => {
          const number = value.quantity.valueIn(names);
          const words = faultOfValue(value, number);
          if (words) faults.push([value, words]);
          return number;
        };
        const rangeInSI: RangeToSI = (range) => {
          const ends = { min: orNull(range.min, si), max: orNull(range.max, si) };
          const words = faultOfRange(range, ends.min, ends.max);
          if (words) faults.push([range, words]);
          return ends;
        };
        return { value: make(si, rangeInSI), faults };
      },
    );
}

function sectionsOf(design: Design): (take: Take) => DesignInSI {
  const { written, name } = design;
  const floor = sectionOf(written.floor, (si) => floorInSI(written.floor, si));
  const room = sectionOf([written.room, written.spacing], (si) => ({
    wall: orNull(written.room?.wall, si),
    spacing: orNull(written.spacing, si),
  }));
  const sitters = sectionOf(written.sitters, (si) => sittersInSI(written.sitters, si));
  const child = sectionOf(written.child, (si) => childInSI(written.child, si));
  const parts = written.parts.map((part) => partSection(part, design.drawings));
  const extras = sectionOf(written.extras, (si) => (written.extras ?? []).map((each) => extraInSI(each, si)));
  const lines = sectionOf([written.seat, written.back, written.arms], (si) => ({
    seat: written.seat ? lineInSI(written.seat, ['front', 'rear'], si) : null,
    back: written.back ? lineInSI(written.back, ['foot', 'top'], si) : null,
    arms: written.arms ? lineInSI(written.arms, ['rear', 'front'], si) : null,
  }));
  const loads = sectionOf(written.loads, (si) => loadsInSI(written.loads, si));
  const altered = sectionOf(written.alterations, (si) => alterationsInSI(written.alterations, si));
  const limits = sectionOf(written.limits, (_, rangeInSI) => limitsInSI(written.limits, rangeInSI));
  const errors = sectionOf(written.errors, (si) => errorsInSI(written.errors, si));
  return (take) => ({
    name,
    kind: written.kind ?? 'adult',
    units: unitsOf(design),
    floor: take(floor),
    ...take(room),
    sitters: take(sitters),
    child: take(child),
    parts: parts.map((part) => part(take)),
    extras: take(extras),
    ...take(lines),
    loads: take(loads),
    limits: take(limits),
    alterations: take(altered),
    errors: take(errors),
  });
}

/** A part whose outline stays the same where only its other sizes change. */
function partSection(part: WrittenPart, drawings: Drawings): (take: Take) => PartInSI {
  const outline = sectionOf(part.outline, (si) => outlinesInSI(part, drawings, si));
  const own = sectionOf({ ...part, outline: null }, (si) => partInSI(part, si));
  const kept = keptWhileSame<PartInSI>();
  return (take) => {
    const [sizes, words] = [take(own), take(outline)];
    return kept([sizes, words], () => ({ ...sizes, outline: words }));
  };
}

/** What a floor of its own numbers leaves out is that of the default floor. */
function floorInSI(floor: WrittenDesign['floor'] = defaultFloor, si: InSI): DesignInSI['floor'] {
  if (typeof floor === 'string') return { name: floor, ...floors[floor] };
  const standard = floors[defaultFloor];
  return {
    name: null,
    friction: orNull(floor.friction, si) ?? standard.friction,
    rolling: orNull(floor.rolling, si) ?? standard.rolling,
  };
}

/** The named values, each after those it is made of. What is made of a value that is not finite is not judged. */
function namedValues(
  design: Design,
  stated: ReadonlyMap<string, number>,
): Checked<ReadonlyMap<string, number>> {
  refuseStrangers(design, stated);
  const values = new Map<string, number>();
  for (const { name, source, expression } of design.dimensions) {
    const value = stated.get(name) ?? expression.valueIn(values);
    if (!Number.isFinite(value)) {
      return { ok: false, issues: [issueAt(design, ['dimensions', name], notFinite(source))] };
    }
    values.set(name, value);
  }
  return { ok: true, value: values };
}

function refuseStrangers(design: Design, stated: ReadonlyMap<string, number>): void {
  for (const [name, value] of stated) {
    if (!design.dimensions.some((dimension) => dimension.name === name)) {
      throw new RangeError(`resolveDesign: the design has no dimension ${name}`);
    }
    if (!Number.isFinite(value)) throw new RangeError(`resolveDesign: ${name} = ${value}`);
  }
}

function issuesOf(faults: readonly Fault[], design: Design): Issue[] {
  return faults
    .map(([of, words]) => issueAt(design, pathTo(of, design.written) ?? [], words))
    .sort(inFileOrder);
}

/** Where in the design a value stands. Values do not carry their places: they are sought only when one is at fault. */
function pathTo(sought: object, within: unknown, path: Path = []): Path | undefined {
  if (within === sought) return path;
  if (typeof within !== 'object' || within === null) return undefined;
  for (const [key, value] of Object.entries(within)) {
    const found = pathTo(sought, value, [...path, Array.isArray(within) ? Number(key) : key]);
    if (found) return found;
  }
  return undefined;
}
