/**
 * A design brought to a wanted measure: by one size every solution in its range, several measures by several sizes with
 * the least change, or by some sizes to the nearest design that meets all limits.
 */
import type { Verdict } from '../checks/verdict.js';
import type { Issue, Checked } from '../design/issue.js';
import { readDesign, type Design } from '../design/read-design.js';
import { jsonFactor, measures, type LoadId } from '../names.js';
import { isMissing } from '../numeric/missing.js';
import { compileQuantity } from '../quantity/quantity.js';
import { shown } from '../quantity/source-text.js';
import { argumentIssue, scopeOf } from './argument.js';
import { measuresNamed, type AskedMeasure } from './asked-measure.js';
import { changeableIn, type Changeable } from './changeable.js';
import { designFunction, type BuiltDesign, type DesignFunction } from './design-function.js';
import { judgeFor, type Judgement } from './judge.js';
import { makersStep } from './makers-step.js';
import { nearestPassing } from './nearest-passing.js';
import { solveOne } from './solve-one.js';
import { solveSeveral } from './solve-several.js';
import { readVaried, variableNamed, wrong, type Read } from './varied.js';
import type { Variable } from './variables.js';

export interface AdjustRequest {
  readonly text: string;
  readonly file: string;
  /** Targets, `period=2.2 s`; none: the nearest design that passes. */
  readonly to: readonly string[];
  /** Sizes, `radius` or `radius=30 in..50 in`. */
  readonly by: readonly string[];
}

export interface Target {
  readonly asked: AskedMeasure;
  /** SI. */
  readonly value: number;
}

/** A size that is changed, within a range. SI. */
export interface By {
  readonly variable: Variable;
  readonly least: number;
  readonly greatest: number;
  /** In which a maker sets it. */
  readonly step: number;
}

/** One way to set the sizes, SI. */
export interface Setting {
  /** As they solve it; null: found in whole steps. */
  readonly exact: readonly number[] | null;
  /** In whole maker's steps. */
  readonly rounded: readonly number[];
  /** Of the targets with the rounded ones; null where it has no value. */
  readonly measures: readonly (number | null)[];
  readonly judgement: Judgement | null;
}

export interface Adjusted {
  readonly design: Design;
  readonly stated: BuiltDesign;
  readonly before: Judgement;
  readonly targets: readonly Target[];
  readonly by: readonly By[];
  readonly solutions: readonly Setting[];
  /** What comes nearest where there is no solution. */
  readonly closest: Setting | null;
  /** Of one target by one size: what the measure is over the range, SI. */
  readonly reach: readonly [number, number] | null;
  /** Of one target by one size: where the measure jumps over it, SI. */
  readonly jumps: readonly number[];
}

export function adjust(
  request: AdjustRequest,
  progress: (done: number, of: number) => void = () => undefined,
): Checked<Adjusted> {
  const read = readDesign(request.text, request.file);
  if (!read.ok) return read;
  const design = read.value;
  const stated = designFunction(design, []).at([]);
  if (!stated.ok) return stated;
  const issues: Issue[] = [];
  const targets = request.to.flatMap((text) => taken(issues, '--to', text, targetOf(text, design, stated)));
  const by = byOf(request, design, stated, issues);
  if (issues.length === 0) issues.push(...mismatch(request, targets, by));
  if (issues.length > 0) return { ok: false, issues };
  const fn = designFunction(
    design,
    by.map(({ variable }) => variable),
  );
  const before = judgeFor()(stated);
  const found =
    targets.length === 0
      ? passing(fn, by, before, progress)
      : targets.length === 1 && by.length === 1
        ? byOne(fn, targets[0]!, by[0]!)
        : bySeveral(fn, targets, by);
  return { ok: true, value: { design, stated, before, targets, by, ...found } };
}

function taken<T>(issues: Issue[], option: string, text: string, read: Read<T>): T[] {
  if (read.ok) return [read.value];
  issues.push(argumentIssue({ option, text }, read.words));
  return [];
}

/** Without a sitter it is the first that is meant: the chair is made for him or her. */
function targetOf(text: string, design: Design, { people }: BuiltDesign): Read<Target> {
  const at = text.indexOf('=');
  if (at < 0) return wrong({ expected: '`measure=value`, such as `period=2.2 s`', found: shown(text) });
  const named = measuresNamed(text.slice(0, at).trim(), people);
  if (!named.ok) return named;
  const asked = named.value[0];
  if (asked === undefined)
    return wrong({
      expected: 'a measure of this design',
      found: `${shown(text)}, which needs sitters or a child`,
    });
  const { kind } = measures[asked.measure];
  const units = design.written.units ?? 'in';
  const reading = compileQuantity(text.slice(at + 1).trim(), { kind, units }, scopeOf(design));
  if (!reading.ok) return wrong(reading.mistake);
  const value = reading.value.valueIn(new Map(design.dimensions.map((each) => [each.name, each.value])));
  return Number.isFinite(value)
    ? { ok: true, value: { asked, value } }
    : wrong({ expected: 'a finite number', found: shown(text) });
}

function byOf(request: AdjustRequest, design: Design, stated: BuiltDesign, issues: Issue[]): By[] {
  const usual = changeableIn(design, stated, 'drawing');
  if (request.by.length === 0 && request.to.length === 0)
    return usual.filter(({ variable }) => variable.of === null).map(byInReach);
  const found: By[] = [];
  for (const text of request.by) {
    const [one] = taken(issues, '--by', text, byNamed(text, design, usual));
    if (one === undefined) continue;
    if (found.some(({ variable }) => variable.name === one.variable.name))
      issues.push(
        argumentIssue(
          { option: '--by', text },
          { expected: 'each size once', found: `${one.variable.name} again` },
        ),
      );
    else found.push(one);
  }
  return found;
}

const byInReach = ({ variable, step, from, least, greatest }: Changeable): By => ({
  variable,
  step,
  least: Math.min(variable.stated, (from + least) * step),
  greatest: Math.max(variable.stated, (from + greatest) * step),
});

function byNamed(text: string, design: Design, usual: readonly Changeable[]): Read<By> {
  const units = design.written.units ?? 'in';
  if (!text.includes('=')) {
    const named = variableNamed(text.trim(), design);
    if (!named.ok) return named;
    const { name, stated } = named.value;
    const reach = usual.find(({ variable }) => variable.name === name);
    if (reach) return { ok: true, value: byInReach(reach) };
    if (stated === 0)
      return wrong({ expected: `a range for ${name}, such as \`${name}=0 in..1 in\``, found: 'none' });
    const ends = [0.5 * stated, 2 * stated];
    return {
      ok: true,
      value: {
        variable: named.value,
        least: Math.min(...ends),
        greatest: Math.max(...ends),
        step: makersStep(named.value, units),
      },
    };
  }
  const varied = readVaried(text, design);
  if (!varied.ok) return varied;
  const { variable, count, valueAt } = varied.value;
  if (!text.includes('..') || count < 2)
    return wrong({ expected: `a range for ${variable.name}, such as \`30 in..50 in\``, found: shown(text) });
  return {
    ok: true,
    value: { variable, least: valueAt(0), greatest: valueAt(count - 1), step: makersStep(variable, units) },
  };
}

function mismatch({ to }: AdjustRequest, targets: readonly Target[], by: readonly By[]): Issue[] {
  const issue = (file: string, expected: string, found: string): Issue => ({
    file,
    line: null,
    column: null,
    expected,
    found,
  });
  if (by.length === 0) return [issue('--by', 'what to change, such as `--by radius`', 'nothing')];
  if (targets.length > by.length)
    return [issue('--by', `at least as many sizes as targets (${to.length})`, `${by.length}`)];
  return [];
}

type Found = Pick<Adjusted, 'solutions' | 'closest' | 'reach' | 'jumps'>;

/** What a target comes to for some values of the sizes; null: it has no value. */
function measuring(
  fn: DesignFunction,
  targets: readonly Target[],
): (values: readonly number[]) => (number | null)[] {
  const judge = judgeFor([...new Set(targets.map(({ asked }) => asked.load))] satisfies LoadId[]);
  return (values) => {
    const tried = fn.at(values);
    if (!tried.ok) return targets.map(() => null);
    const judgement = judge(tried);
    return targets.map(({ asked }) => measureIn(judgement, asked));
  };
}

export function measureIn({ loads }: Judgement, { load, sitter, measure }: AskedMeasure): number | null {
  const own = loads.find(({ record }) => record.load.id === load && record.load.sitter === sitter);
  const value = own?.measured.get(measure);
  return value === undefined || isMissing(value) ? null : value;
}

/** Whole steps, kept within the range. */
function roundedIn(value: number, { step, least, greatest }: By): number {
  const nearest = Math.round(value / step) * step;
  if (nearest > greatest + 1e-9 * step) return Math.floor(greatest / step + 1e-9) * step;
  return nearest < least - 1e-9 * step ? Math.ceil(least / step - 1e-9) * step : nearest;
}

function settingOf(
  fn: DesignFunction,
  targets: readonly Target[],
  exact: readonly number[] | null,
  steps: readonly number[],
): Setting {
  const tried = fn.at(steps);
  const judgement = tried.ok ? judgeFor()(tried) : null;
  return {
    exact,
    rounded: steps,
    measures: targets.map(({ asked }) => judgement && measureIn(judgement, asked)),
    judgement,
  };
}

function byOne(fn: DesignFunction, target: Target, by: By): Found {
  const measure = measuring(fn, [target]);
  const { solutions, jumps, reach, closest } = solveOne(
    (x) => measure([x])[0] ?? null,
    target.value,
    by.least,
    by.greatest,
  );
  const setting = (x: number): Setting => settingOf(fn, [target], [x], [roundedIn(x, by)]);
  return {
    solutions: solutions.map(setting),
    closest: solutions.length > 0 || closest === null ? null : setting(closest),
    reach,
    jumps,
  };
}

function bySeveral(fn: DesignFunction, targets: readonly Target[], by: readonly By[]): Found {
  const measure = measuring(fn, targets);
  const spans = by.map(({ least, greatest }) => greatest - least);
  const at = (z: readonly number[]): number[] =>
    by.map(({ variable }, i) => variable.stated + z[i]! * spans[i]!);
  const start = measure(at(by.map(() => 0)));
  const scales = targets.map(({ value }, i) => Math.abs(value) || Math.abs(start[i] ?? 0) || 1);
  const solved = solveSeveral(
    (z) => {
      const values = measure(at(z));
      return values.includes(null)
        ? null
        : values.map((value, i) => (value! - targets[i]!.value) / scales[i]!);
    },
    by.map(({ variable: { stated }, least, greatest }, i) => [
      (least - stated) / spans[i]!,
      (greatest - stated) / spans[i]!,
    ]),
  );
  if (solved === null) return { solutions: [], closest: null, reach: null, jumps: [] };
  const exact = at(solved.z);
  const setting = settingOf(
    fn,
    targets,
    exact,
    exact.map((value, i) => roundedIn(value, by[i]!)),
  );
  return solved.solved
    ? { solutions: [setting], closest: null, reach: null, jumps: [] }
    : { solutions: [], closest: setting, reach: null, jumps: [] };
}

function passing(
  fn: DesignFunction,
  by: readonly By[],
  before: Judgement,
  progress: (done: number, of: number) => void,
): Found {
  const verdict: Verdict = before.verdict;
  if (verdict === 'pass') {
    const stated = by.map(({ variable }) => variable.stated);
    return { solutions: [settingOf(fn, [], null, stated)], closest: null, reach: null, jumps: [] };
  }
  const { found, closest } = nearestPassing(fn, by, progress);
  const setting = (values: readonly number[]): Setting => settingOf(fn, [], null, values);
  return {
    solutions: found === null ? [] : [setting(found)],
    closest: found !== null || closest === null ? null : setting(closest),
    reach: null,
    jumps: [],
  };
}

/** In the unit of the contract. */
export const targetInJson = ({ asked, value }: Target): number => value * jsonFactor(asked.measure);
