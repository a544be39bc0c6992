/** What is asked of an adjustment: targets, and sizes with the ranges that they may be changed over. */
import type { DesignSource } from './stated-design.js';
import { issueOfWhole, type Checked, type Issue } from '../design/issue.js';
import type { Words } from '../design/places.js';
import type { Design } from '../design/read-design.js';
import { measures } from '../names.js';
import { kindOfDimension } from '../quantity/dimension.js';
import { compileQuantity } from '../quantity/quantity.js';
import { shown } from '../quantity/source-text.js';
import { isImperial, type LengthUnit } from '../quantity/units.js';
import { argumentIssue, scopeOf } from './argument.js';
import { measuresNamed, nameOfAsked, type AskedMeasure } from './asked-measure.js';
import { changeableIn, type Changeable } from './changeable.js';
import type { BuiltDesign } from './design-function.js';
import { makersStep, sayMakersStep } from './makers-step.js';
import { stepsIn, type SizeRange } from './size-range.js';
import { readVaried, variableNamed, wrong, type Read } from './varied.js';
import type { Variable } from './variables.js';

export interface AdjustRequest extends DesignSource {
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

interface AskedAdjustment {
  readonly targets: readonly Target[];
  readonly by: readonly SizeRange[];
}

export function readAdjustment(
  request: Pick<AdjustRequest, 'to' | 'by'>,
  design: Design,
  stated: BuiltDesign,
): Checked<AskedAdjustment> {
  const issues: Issue[] = [];
  const targets = targetsOf(request, design, stated, issues);
  const by = byOf(request, design, stated, issues);
  if (issues.length === 0 && by.length === 0)
    issues.push(issueOfWhole('--by', 'what to change, such as `--by radius`', 'nothing'));
  if (issues.length === 0 && targets.length > by.length) {
    const expected = `at least as many sizes as targets (${targets.length})`;
    issues.push(issueOfWhole('--by', expected, `${by.length}`));
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: { targets, by } };
}

function targetsOf(
  { to }: Pick<AdjustRequest, 'to'>,
  design: Design,
  stated: BuiltDesign,
  issues: Issue[],
): Target[] {
  const found: Target[] = [];
  for (const text of to) {
    const [one] = taken(issues, '--to', text, targetOf(text, design, stated));
    if (one === undefined) continue;
    const name = nameOfAsked(one.asked);
    if (found.some(({ asked }) => nameOfAsked(asked) === name))
      issues.push(
        argumentIssue({ option: '--to', text }, { expected: 'each measure once', found: `${name} again` }),
      );
    else found.push(one);
  }
  return found;
}

function taken<T>(issues: Issue[], option: string, text: string, read: Read<T>): T[] {
  if (read.ok) return [read.value];
  issues.push(argumentIssue({ option, text }, read.words));
  return [];
}

/** Without a sitter it is the first that is meant: the chair is made for him or her. */
function targetOf(text: string, design: Design, { people, design: inSI }: BuiltDesign): Read<Target> {
  const at = text.lastIndexOf('=');
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
  const reading = compileQuantity(text.slice(at + 1).trim(), { kind, units: inSI.units }, scopeOf(design));
  if (!reading.ok) return wrong(inSeconds(reading.mistake));
  const value = reading.value.valueIn(new Map(design.dimensions.map((each) => [each.name, each.value])));
  return Number.isFinite(value)
    ? { ok: true, value: { asked, value } }
    : wrong({ expected: 'a finite number', found: shown(text) });
}

/** Months are for the age of a child: no measure is as long. */
const inSeconds = (mistake: Words): Words =>
  mistake.hint === undefined ? mistake : { ...mistake, hint: mistake.hint.replace(/ or `[^`]*months`/, '') };

function byOf(
  request: Pick<AdjustRequest, 'to' | 'by'>,
  design: Design,
  stated: BuiltDesign,
  issues: Issue[],
): SizeRange[] {
  const usual = changeableIn(design, stated, 'drawing');
  if (request.by.length === 0 && request.to.length === 0)
    return usual.filter(({ variable }) => variable.of === null).map(byInReach);
  const found: SizeRange[] = [];
  for (const text of request.by) {
    const [one] = taken(issues, '--by', text, byNamed(text, design, usual, stated.design.units));
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

/** As far as it may be changed on paper. */
const byInReach = ({ variable, step, from, least, greatest }: Changeable): SizeRange => ({
  variable,
  step,
  least: Math.min(variable.stated, (from + least) * step),
  greatest: Math.max(variable.stated, (from + greatest) * step),
});

function byNamed(
  text: string,
  design: Design,
  usual: readonly Changeable[],
  units: LengthUnit,
): Read<SizeRange> {
  const bare = !text.includes('=') || variableNamed(text.trim(), design).ok;
  const read = bare ? byUsual(text.trim(), design, usual, units) : byRange(text, design, units);
  if (!read.ok) return read;
  const { variable } = read.value;
  const [first, last] = stepsIn(read.value);
  if (first <= last) return read;
  const step = sayMakersStep(variable, units);
  return wrong({
    expected: `a range for ${variable.name} that holds a whole step of ${step}`,
    found: shown(text),
  });
}

/** A range by itself: as far as it may be changed on paper, or from half to twice as much. */
function byUsual(
  name: string,
  design: Design,
  usual: readonly Changeable[],
  units: LengthUnit,
): Read<SizeRange> {
  const named = variableNamed(name, design);
  if (!named.ok) return named;
  const variable = named.value;
  const reach = usual.find((one) => one.variable.name === name);
  if (reach) return { ok: true, value: byInReach(reach) };
  const { stated } = variable;
  if (stated === 0)
    return wrong({
      expected: `a range for ${name}, such as \`${name}=${sayUsualRange(variable, units)}\``,
      found: 'none',
    });
  const ends = [0.5 * stated, 2 * stated];
  const step = makersStep(variable, units);
  return { ok: true, value: { variable, least: Math.min(...ends), greatest: Math.max(...ends), step } };
}

/** From nothing to some steps, in the units of the design. */
const sayUsualRange = ({ dimension }: Variable, units: LengthUnit): string => {
  const unit = { length: units, mass: isImperial(units) ? 'lb' : 'kg', angle: 'deg', time: 's' }[
    kindOfDimension(dimension) as 'length'
  ] as string | undefined;
  return unit === undefined ? '0..1' : `0 ${unit}..${unit === 'mm' ? 25 : 1} ${unit}`;
};

function byRange(text: string, design: Design, units: LengthUnit): Read<SizeRange> {
  const stepped = text.indexOf(':', text.indexOf('..'));
  if (text.includes('..') && stepped >= 0)
    return wrong({
      expected: 'a range without a step: sizes are set in whole steps of a maker',
      found: shown(text),
      hint: `write \`${text.slice(0, stepped).trim()}\``,
    });
  const varied = readVaried(text, design);
  if (!varied.ok) return varied;
  const { variable, count, valueAt } = varied.value;
  if (!text.includes('..') || count < 2)
    return wrong({ expected: `a range for ${variable.name}, such as \`30 in..50 in\``, found: shown(text) });
  const step = makersStep(variable, units);
  return { ok: true, value: { variable, least: valueAt(0), greatest: valueAt(count - 1), step } };
}
