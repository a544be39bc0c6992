/** The contract's JSON of one checked design: a plain object, the same for the same input. */
import type { CheckResult } from '../check-design.js';
import type { MeasuredLoad } from '../checks/judge-loads.js';
import type { JudgedLimit } from '../checks/verdict.js';
import type { Point } from '../geometry/point.js';
import { disagreementOf, type Compared, type SecondOpinion } from '../contact/second-opinion.js';
import { jsonFactor, type MeasureKey } from '../names.js';
import { isMissing } from '../numeric/missing.js';
import { assumptionsOf } from './assumptions.js';
import { cautionsOf } from './cautions.js';
import { remedyObject } from './remedy-words.js';
import { rounded } from './rounded.js';
import { sayReason } from './say-reason.js';
import type { LimitObject, LoadObject, OpinionObject, ReportObject } from './schema.js';
import { tool } from './tool.js';

/** @param sha256 digest of the file's bytes, hexadecimal; null when there is no file */
export function reportJson(result: CheckResult, sha256: string | null = null): ReportObject {
  const { design, chair } = result;
  return {
    reportVersion: 1,
    tool,
    design: { name: design.name, file: result.file, sha256, kind: design.kind },
    verdict: result.verdict,
    chair: {
      massKg: rounded(chair.body.mass),
      centreOfGravityM: place(chair.body.centre),
      inertiaKgM2: rounded(chair.body.inertia),
      parts: chair.parts.map(({ name, count, mass, centre }) => ({
        name,
        count,
        massKg: rounded(mass),
        centreOfGravityM: place(centre),
      })),
    },
    loads: result.loads.map((load) => loadObject(load, result.opinions?.get(load.record) ?? null)),
    limits: result.limits.map((limit) => limitObject(limit, result)),
    assumptions: assumptionsOf(result),
    cautions: cautionsOf(result),
  };
}

const place = ({ x, y }: Point): [number, number] => [rounded(x), rounded(y)];

function loadObject({ record, measured }: MeasuredLoad, opinion: SecondOpinion | null): LoadObject {
  const { load, roll, motion } = record;
  const entries = [...measured];
  return {
    id: load.id,
    sitter: load.sitter,
    massKg: rounded(load.body.mass),
    centreOfGravityM: place(load.body.centre),
    inertiaKgM2: rounded(load.body.inertia),
    goesOver: motion?.goesOver ?? roll.rollsOff,
    measures: Object.fromEntries(
      entries.map(([key, value]) => [key, isMissing(value) ? null : rounded(value * jsonFactor(key))]),
    ),
    missing: Object.fromEntries(
      entries.flatMap(([key, value]) => (isMissing(value) ? [[key, value.missing]] : [])),
    ),
    secondOpinion: opinion && opinionObject(opinion),
  };
}

function opinionObject({ compared, slide, lifts, notCovered }: SecondOpinion): OpinionObject {
  const each = (of: (one: Compared) => number): Partial<Record<MeasureKey, number>> =>
    Object.fromEntries(compared.map((one) => [one.measure, rounded(of(one) * jsonFactor(one.measure))]));
  return {
    restAngleDeg: null,
    periodAtSwingS: null,
    tipBackEnergyJ: null,
    ...each(({ second }) => second),
    slideM: slide === null ? null : rounded(slide),
    lifts,
    disagreement: each(disagreementOf),
    tolerance: each(({ tolerance }) => tolerance),
    notCovered: [...notCovered],
  };
}

function limitObject(limit: JudgedLimit, { design, remedies }: CheckResult): LimitObject {
  const { id, load, sitter, range, value, margin, verdict, reason, basis } = limit;
  const measure = limit.measure ?? 'restAngleDeg';
  const inUnit = (number: number | null): number | null =>
    number === null || !Number.isFinite(number) ? null : rounded(number * jsonFactor(measure));
  return {
    id,
    load,
    sitter,
    measure,
    min: inUnit(range.min),
    max: inUnit(range.max),
    value: inUnit(value),
    margin: inUnit(margin),
    verdict,
    reason: reason === null ? null : sayReason(reason, design.units),
    basis,
    remedies: (remedies.get(id) ?? []).map((remedy) => remedyObject(remedy, limit, design.units)),
  };
}

/** As printed: one object for one design, an array for several; ends with a line feed. */
export const printJson = (reports: readonly ReportObject[]): string =>
  `${JSON.stringify(reports.length === 1 ? reports[0] : reports, null, 2)}\n`;
