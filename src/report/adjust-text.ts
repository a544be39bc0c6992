/** An adjustment for people: what to set, what comes of it, and the line to put into the design. */
import type { Adjusted, Setting } from '../explore/adjust.js';
import type { Target } from '../explore/adjust-request.js';
import { measureIn } from '../explore/judge.js';
import type { SizeRange } from '../explore/size-range.js';
import { limitLines, sayNone } from './adjust-limits.js';
import { isChanged, placesIn } from './adjust-places.js';
import { isAlteration, sayAlteration } from './alteration-words.js';
import { measureWords, sayValue, whoOf } from './measure-words.js';
import { printable } from './printable.js';
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
      ? solutions.map((setting) => [
          ...settingLines(setting, adjusted, settings),
          ...putLines(setting, adjusted, settings),
        ])
      : [[paint('bad', wrap(whyNone(adjusted), columns)), ...jumpLines(adjusted, settings)]];
  const nearest =
    closest && adjusted.idle.length < adjusted.by.length
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
  if (idle.length === by.length) {
    const always =
      reach === null ? '' : `, and is ${sayValue(measure, reach[0], stated.design.units)} whatever that is`;
    return `Not within reach: it does not depend on ${idle.map(({ variable }) => variable.name).join(', ')}${always}.`;
  }
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

const settingLines = (setting: Setting, adjusted: Adjusted, settings: Settings): string[] => [
  ...sizeLines(setting, adjusted, settings),
  ...limitLines(setting, adjusted, settings),
];

/** Only of what was asked for: nobody is told to put in what comes closest. */
const putLines = (setting: Setting, adjusted: Adjusted, { columns }: Settings): string[] =>
  placesIn(setting, adjusted).map((place) =>
    wrap(`To put into the design: ${printable(place)}.`, columns, '', '  '),
  );

/** As it solves, and in the steps that a maker sets. */
function sizeLines(
  { exact, rounded, measures, judgement }: Setting,
  adjusted: Adjusted,
  { columns, paint }: Settings,
): string[] {
  const { by, targets, stated } = adjusted;
  const { units } = stated.design;
  const said = (values: readonly number[]): string =>
    by
      .flatMap((one, i) => (isChanged(one, values[i]!) ? [saySize(one, values[i]!, adjusted)] : []))
      .join(', ') || 'as it stands';
  const then = targets.map(({ asked }, i) => {
    const value = measures[i] ?? null;
    const said = value === null ? sayNone(judgement, asked) : sayValue(asked.measure, value, units);
    return `${measureWords[asked.measure]} ${said}`;
  });
  const comes = then.length === 0 ? '' : ` (then ${then.join(', ')})`;
  return [
    ...(exact === null ? [] : [wrap(`exactly: ${said(exact)}`, columns, '  ', '    ')]),
    paint('heading', wrap(`set: ${said(rounded)}${comes}`, columns, '  ', '    ')),
  ];
}

function saySize({ variable }: SizeRange, value: number, { stated }: Adjusted): string {
  const { unit, factor } = unitOf(variable, stated.design.units);
  const [from, to] = [variable.stated / factor, value / factor];
  if (isAlteration(variable.name)) return sayAlteration(variable.name, to, unit, from);
  return `${variable.name} ${sayInUnit(from, unit)} → ${sayInUnit(to, unit)}`;
}
