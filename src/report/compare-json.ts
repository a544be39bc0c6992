/** The JSON of a comparison: a plain object, the same for the same input. */
import type { LimitChange } from '../checks/compare-limits.js';
import type { LoadChange } from '../checks/compare-loads.js';
import type { DimensionChange } from '../checks/compare-dimensions.js';
import type { JudgedLimit } from '../checks/verdict.js';
import type { NamedValue } from '../design/dimensions.js';
import type { MassProperties } from '../mass.js';
import { jsonFactor, type MeasureKey } from '../names.js';
import { isMissing, type OrMissing } from '../numeric/missing.js';
import type { LengthUnit } from '../quantity/units.js';
import type { ComparisonObject } from './compare-schema.js';
import type { Compared } from './compared.js';
import { kindOfDimension } from '../quantity/dimension.js';
import { rounded } from './rounded.js';
import { sayReason } from './say-reason.js';
import { tool } from './tool.js';

export function comparisonJson({ old, new: now, comparison }: Compared): ComparisonObject {
  const { masses } = comparison;
  const part = (one: { count: number; mass: number } | null) =>
    one && { count: one.count, massKg: rounded(one.mass) };
  return {
    comparisonVersion: 1,
    tool,
    old: designObject(old),
    new: designObject(now),
    limits: comparison.limits.map((change) => limitObject(change, now.result.design.units)),
    loads: comparison.loads.map(loadObject),
    chair: {
      old: bodyObject(masses.old),
      new: bodyObject(masses.new),
      parts: masses.parts.map((pair) => ({
        name: (pair.new ?? pair.old).name,
        old: part(pair.old),
        new: part(pair.new),
      })),
    },
    dimensions: comparison.dimensions.map(dimensionObject),
  };
}

/** As printed; ends with a line feed. */
export const printComparisonJson = (compared: Compared): string =>
  `${JSON.stringify(comparisonJson(compared), null, 2)}\n`;

const designObject = ({ result, sha256 }: Compared['old']): ComparisonObject['old'] => ({
  name: result.design.name,
  file: result.file,
  sha256,
  kind: result.design.kind,
  verdict: result.verdict,
});

const bodyObject = ({ mass, centre, inertia }: MassProperties): ComparisonObject['chair']['old'] => ({
  massKg: rounded(mass),
  centreOfGravityM: [rounded(centre.x), rounded(centre.y)],
  inertiaKgM2: rounded(inertia),
});

function limitObject(pair: LimitChange, units: LengthUnit): ComparisonObject['limits'][number] {
  const { id, load, sitter, measure } = pair.new ?? pair.old;
  return {
    id,
    load,
    sitter,
    measure: measure ?? 'restAngleDeg',
    change: pair.change,
    old: pair.old && judgedObject(pair.old, units),
    new: pair.new && judgedObject(pair.new, units),
  };
}

function judgedObject(limit: JudgedLimit, units: LengthUnit): ComparisonObject['limits'][number]['new'] {
  const { measure, range, value, margin, verdict, reason } = limit;
  const inUnit = (number: number | null): number | null =>
    number === null || !Number.isFinite(number) ? null : inJson(measure ?? 'restAngleDeg', number);
  return {
    min: inUnit(range.min),
    max: inUnit(range.max),
    value: inUnit(value),
    margin: inUnit(margin),
    verdict,
    reason: reason === null ? null : sayReason(reason, units),
  };
}

const inJson = (measure: MeasureKey, value: number): number => rounded(value * jsonFactor(measure));

function loadObject({
  load,
  sitter,
  in: which,
  goesOver,
  measures,
}: LoadChange): ComparisonObject['loads'][number] {
  const entries = measures.map(({ measure, old, new: now, moved }) => {
    const say = (value: OrMissing<number>) => (isMissing(value) ? null : inJson(measure, value));
    const difference = isMissing(old) || isMissing(now) ? null : inJson(measure, now - old);
    return [measure, { old: say(old), new: say(now), difference, moved }] as const;
  });
  return { id: load, sitter, in: which, goesOver: { ...goesOver }, measures: Object.fromEntries(entries) };
}

function dimensionObject({ old, new: now }: DimensionChange): ComparisonObject['dimensions'][number] {
  const named = now ?? old;
  const kind = kindOfDimension(named.dimension);
  const factor = kind === 'angle' ? 180 / Math.PI : 1;
  const say = (one: NamedValue | null) =>
    one && { written: String(one.source), value: rounded(one.value * factor) };
  return { name: named.name, kind, old: say(old), new: say(now) };
}
