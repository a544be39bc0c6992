/** An adjustment for people: what to set, what comes of it, and the line to put into the design. */
import type { Design } from '../design/read-design.js';
import type { Adjusted, Setting } from '../explore/adjust.js';
import type { Target } from '../explore/adjust-request.js';
import { measureIn } from '../explore/judge.js';
import { movesBetween } from '../explore/moves.js';
import type { SizeRange } from '../explore/size-range.js';
import type { Variable } from '../explore/variables.js';
import { settingObjectOf } from './adjust-json.js';
import { isAlteration, sayAlteration } from './alteration-words.js';
import { measureWords, sayValue, whoOf } from './measure-words.js';
import { tableLines } from './table.js';
import type { TextSettings } from './text-settings.js';
import { sayInUnit, unitOf } from './variable-words.js';
import { wrap } from './wrap.js';

type Settings = Pick<TextSettings, 'columns' | 'paint'>;

export function printAdjustment(adjusted: Adjusted, settings: Settings): string {
  const { solutions, closest, stated } = adjusted;
  const { columns, paint } = settings;
  const opening = [
    paint('heading', wrap(stated.design.name, columns)),
    ...asked(adjusted).map((text) => wrap(text, columns)),
  ];
  const found =
    solutions.length > 0
      ? solutions.map((setting) => settingLines(setting, adjusted, settings))
      : [[paint('bad', wrap(whyNone(adjusted), columns)), ...jumpLines(adjusted, settings)]];
  const nearest = closest
    ? [[paint('heading', 'What comes closest'), ...settingLines(closest, adjusted, settings)]]
    : [];
  return `${[opening, ...found, ...nearest].map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

const name = ({ asked: { load, measure, sitter } }: Target): string =>
  `${whoOf(load, sitter)}: ${measureWords[measure]}`;

function asked(adjusted: Adjusted): string[] {
  const { targets, by, before, stated } = adjusted;
  const { units } = stated.design;
  const ranges = `By ${by.map((one) => sayBy(one, adjusted)).join('; ')}.`;
  if (targets.length === 0) return ['Sought: the nearest design that meets all limits.', ranges];
  const idle = adjusted.idle.map(({ variable }) => variable.name);
  const whole = idle.length < by.length;
  const still = idle.length > 0 && whole ? [`On ${idle.join(', ')} none of that depends.`] : [];
  const wanted = targets.map((target) => {
    const now = measureIn(before, target.asked);
    const { measure } = target.asked;
    const drawn = now === null ? 'no value' : sayValue(measure, now, units);
    return `${name(target)}: ${sayValue(measure, target.value, units)} wanted, ${drawn} as the design stands.`;
  });
  return [...wanted, ranges, ...still];
}

function sayBy({ variable, least, greatest }: SizeRange, { stated }: Adjusted): string {
  const { unit, factor } = unitOf(variable, stated.design.units);
  return `${variable.name} from ${sayInUnit(least / factor, unit)} to ${sayInUnit(greatest / factor, unit)}`;
}

function whyNone({ targets, by, reach, stated, idle }: Adjusted): string {
  const [target] = targets;
  if (target === undefined)
    return 'No design within reach was found that meets all limits, by one of these sizes or two.';
  const { measure } = target.asked;
  if (idle.length === by.length)
    return `It does not depend on ${idle.map(({ variable }) => variable.name).join(', ')}.`;
  if (reach !== null) {
    const [least, greatest] = reach.map((value) => sayValue(measure, value, stated.design.units));
    return `Not within reach: it goes from ${least!} to ${greatest!} there.`;
  }
  return by.length === 1
    ? 'None was found: it has no value wherever it was looked at in that range.'
    : 'No values in these ranges were found that meet all of it.';
}

const jumpLines = ({ jumps, by, stated }: Adjusted, { columns }: Settings): string[] =>
  jumps.map((x) => {
    const { variable } = by[0]!;
    const { unit, factor } = unitOf(variable, stated.design.units);
    return wrap(
      `At ${variable.name} ${sayInUnit(x / factor, unit)} it jumps over that: the chair settles at another place.`,
      columns,
      '  ',
    );
  });

function settingLines(setting: Setting, adjusted: Adjusted, settings: Settings): string[] {
  const { columns, paint } = settings;
  const { verdict, notMet, broken, mended } = settingObjectOf(setting, adjusted);
  const limits = [
    verdict === 'pass'
      ? paint('good', 'All listed limits are met then.')
      : paint('bad', wrap(`Not met then: ${notMet.join(', ') || 'it cannot be built'}.`, columns)),
    ...(broken.length > 0 ? [wrap(`Met now and not then: ${broken.join(', ')}.`, columns)] : []),
    ...(mended.length > 0 ? [wrap(`Not met now and met then: ${mended.join(', ')}.`, columns)] : []),
  ];
  return [
    ...sizeLines(setting, adjusted, settings),
    ...limits,
    ...movedTable(setting, adjusted, settings),
    ...linesFor(setting, adjusted).map((line) => wrap(`To put into the design${line}`, columns)),
  ];
}

/** As it solves, and in the steps that a maker sets. */
function sizeLines(
  { exact, rounded, measures }: Setting,
  adjusted: Adjusted,
  { columns, paint }: Settings,
): string[] {
  const { by, targets, stated } = adjusted;
  const { units } = stated.design;
  const said = (values: readonly number[]): string =>
    by
      .flatMap((one, i) => (isChanged(one, values[i]!) ? [saySize(one, values[i]!, adjusted)] : []))
      .join(', ') || 'as it stands';
  const then = targets.map(({ asked: { measure } }, i) => {
    const value = measures[i] ?? null;
    return `${measureWords[measure]} ${value === null ? '-' : sayValue(measure, value, units)}`;
  });
  const comes = then.length === 0 ? '' : ` (then ${then.join(', ')})`;
  return [
    ...(exact === null ? [] : [wrap(`exactly: ${said(exact)}`, columns, '  ', '    ')]),
    paint('heading', wrap(`set: ${said(rounded)}${comes}`, columns, '  ', '    ')),
  ];
}

/** By more than a rounding, which is told as no change. */
const isChanged = ({ variable: { stated }, step }: SizeRange, value: number): boolean =>
  Math.abs(value - stated) > 1e-6 * step;

function saySize({ variable }: SizeRange, value: number, { stated }: Adjusted): string {
  const { unit, factor } = unitOf(variable, stated.design.units);
  const [from, to] = [variable.stated / factor, value / factor];
  if (isAlteration(variable.name)) return sayAlteration(variable.name, to, unit, from);
  return `${variable.name} ${sayInUnit(from, unit)} → ${sayInUnit(to, unit)}`;
}

/** What of the limits' measures moves by what a maker would read. */
function movedTable(
  { judgement }: Setting,
  { before, stated }: Adjusted,
  { columns, paint }: Settings,
): string[] {
  if (judgement === null) return [];
  const { units } = stated.design;
  const rows = movesBetween(before.limits, judgement.limits, units).map(
    ({ load, measure, sitter, from, by }) => ({
      label: `${whoOf(load, sitter)}: ${measureWords[measure]}`,
      cells: [sayValue(measure, from, units), sayValue(measure, from + by, units)],
    }),
  );
  return tableLines({ title: 'What moves', heads: ['now', 'then'], rows }, columns, (text) =>
    paint('heading', text),
  );
}

/** ': dimensions: { radius: 35 in }'; of a sitter's size where it goes, ', sitter shortest: mass: 87 lb'. */
function linesFor({ rounded }: Setting, { design, by, stated }: Adjusted): string[] {
  const headed = new Map<string, string[]>();
  by.forEach((one, i) => {
    if (!isChanged(one, rounded[i]!)) return;
    const { unit, factor } = unitOf(one.variable, stated.design.units);
    const { head, key } = placeOf(one.variable, design);
    const said = sayInUnit(rounded[i]! / factor, unit);
    // A length that is a pure number in the file stays one.
    const written = one.variable.perUnit === undefined ? said : said.replace(/ \D+$/, '');
    headed.set(head, [...(headed.get(head) ?? []), `${key}: ${written}`]);
  });
  return [...headed].map(([head, values]) =>
    head.startsWith(',') ? `${head}: ${values.join(', ')}` : `: ${head}: { ${values.join(', ')} }`,
  );
}

/** Under which heading of the design file a size is written, and as what: the word that the file has for it. */
function placeOf(
  { name, of }: Variable,
  { written: { sitters } }: Design,
): { readonly head: string; readonly key: string } {
  if (of === null) return { head: 'dimensions', key: name };
  if ('alteration' in of) return { head: 'alterations', key: name };
  if (sitters === undefined || sitters === 'standard') throw new RangeError(`placeOf: no sitter for ${name}`);
  const { name: sitter, height, weight } = sitters[of.sitter]!;
  const key =
    of.size === 'stature' && height !== undefined
      ? 'height'
      : of.size === 'mass' && weight !== undefined
        ? 'weight'
        : of.size;
  return { head: `, sitter ${sitter}`, key };
}
