/** A design's values as SI numbers, for its own named values or for others. A sweep asks ten thousand times: nothing is compiled here. */
import type { DesignInSI } from './design.js';
import { notFinite } from './dimensions.js';
import { defaultFloor, floors } from './floors.js';
import { inFileOrder, type Checked, type Issue } from './issue.js';
import type { Words } from './places.js';
import type { Path } from './plain-data.js';
import { issueAt } from './issue-at.js';
import type { Design } from './read-design.js';
import { limitsInSI, loadsInSI, type RangeToSI } from './resolve-loads.js';
import { extraInSI, lineInSI, orNull, partInSI, type InSI } from './resolve-parts.js';
import { childInSI, sittersInSI } from './resolve-people.js';
import type { WrittenDesign } from './schema.js';
import { faultOfRange, faultOfValue, type Value, type ValueRange } from './value.js';

/** What a fault was found in, and what it is. */
type Fault = readonly [of: Value | ValueRange, words: Words];

const asStated: ReadonlyMap<string, number> = new Map();

/**
 * @param values SI numbers that take the place of named values; what is made of them follows.
 * @throws RangeError when the design has no value of that name, or the number is not finite.
 */
export function resolveDesign(design: Design, values = asStated): Checked<DesignInSI> {
  const names = namedValues(design, values);
  if (!names.ok) return names;
  const faults: Fault[] = [];
  const si: InSI = (value) => {
    const number = value.quantity.valueIn(names.value);
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
  const value = designInSI(design, si, rangeInSI);
  return faults.length === 0 ? { ok: true, value } : { ok: false, issues: issuesOf(faults, design) };
}

function designInSI(design: Design, si: InSI, rangeInSI: RangeToSI): DesignInSI {
  const { written, name } = design;
  return {
    name,
    kind: written.kind ?? 'adult',
    units: written.units ?? 'in',
    floor: floorInSI(written.floor, si),
    wall: orNull(written.room?.wall, si),
    spacing: orNull(written.spacing, si),
    sitters: sittersInSI(written.sitters, si),
    child: childInSI(written.child, si),
    parts: written.parts.map((part) => partInSI(part, si)),
    extras: (written.extras ?? []).map((extra) => extraInSI(extra, si)),
    seat: written.seat ? lineInSI(written.seat, ['front', 'rear'], si) : null,
    back: written.back ? lineInSI(written.back, ['foot', 'top'], si) : null,
    arms: written.arms ? lineInSI(written.arms, ['rear', 'front'], si) : null,
    loads: loadsInSI(written.loads, si),
    limits: limitsInSI(written.limits, rangeInSI),
    errors: errorsInSI(written.errors, si),
  };
}

function errorsInSI(errors: WrittenDesign['errors'] = {}, si: InSI): DesignInSI['errors'] {
  return Object.entries(errors).map(([dimension, error]) =>
    'normal' in error
      ? { dimension, spread: 'normal', size: si(error.normal) }
      : { dimension, spread: 'even', size: si(error) },
  );
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
