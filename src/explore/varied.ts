/**
 * What is varied and over which values: `radius=36 in..42 in:1/2 in` (from, to, step), `radius=36 in..42 in:13 values`,
 * `radius=36 in..42 in` (eleven), `radius=36 in, 38 in, 40 in` (a list).
 */
import type { Words } from '../design/places.js';
import type { Design } from '../design/read-design.js';
import { alterationNames } from '../names.js';
import { shown } from '../quantity/source-text.js';
import { unknownName } from './argument.js';
import { readValue } from './value-of-variable.js';
import { variablesOf, type Variable } from './variables.js';

export interface Varied {
  readonly variable: Variable;
  readonly count: number;
  /** SI. @param index from 0 */
  readonly valueAt: (index: number) => number;
}

export type Read<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly words: Words };

const form = '`name=from..to:step` or `name=a, b, c`';

export function readVaried(text: string, design: Design): Read<Varied> {
  // No value has one: an earlier one belongs to the name of a sitter.
  const at = text.lastIndexOf('=');
  if (at < 0) return wrong({ expected: form, found: shown(text) });
  const named = variableNamed(text.slice(0, at).trim(), design);
  return named.ok ? valuesOf(text.slice(at + 1).trim(), named.value, design) : named;
}

export function variableNamed(name: string, design: Design): Read<Variable> {
  const variables = variablesOf(design);
  const variable = variables.find((each) => each.name === name);
  if (variable) return { ok: true, value: variable };
  if (design.written.sitters === 'standard' && / (?:stature|mass|percentile)$/.test(name))
    return wrong({
      expected: 'a size of a sitter whom the design states',
      found: `${shown(name)} of \`sitters: standard\``,
      hint: 'write the sitters out one by one to vary them',
    });
  const own = variables.filter(({ of }) => of === null || 'sitter' in of).map((each) => each.name);
  return wrong(unknownName('a dimension, a size of a sitter or an alteration', name, own, alterationNames));
}

function valuesOf(text: string, variable: Variable, design: Design): Read<Varied> {
  const dots = text.indexOf('..');
  if (dots >= 0) return rangeOf(text, dots, variable, design);
  const values: number[] = [];
  for (const item of listed(text)) {
    const read = readValue(item, variable, design);
    if (!read.ok) return wrong(item === '' ? { expected: form, found: shown(text) } : read.mistake);
    if (values.includes(read.value))
      return wrong({ expected: 'each value once', found: `${shown(item)} again` });
    values.push(read.value);
  }
  return { ok: true, value: { variable, count: values.length, valueAt: (index) => values[index]! } };
}

/** At commas that stand in no bracket. */
function listed(text: string): string[] {
  const items: string[] = [];
  let [depth, from] = [0, 0];
  for (let at = 0; at <= text.length; at++) {
    depth += text[at] === '(' ? 1 : text[at] === ')' ? -1 : 0;
    if (at < text.length && (text[at] !== ',' || depth > 0)) continue;
    items.push(text.slice(from, at).trim());
    from = at + 1;
  }
  return items;
}

/** So many values where no step is said: ten steps. */
const usualCount = 11;

function rangeOf(text: string, dots: number, variable: Variable, design: Design): Read<Varied> {
  const colon = text.indexOf(':', dots);
  const ends = [text.slice(0, dots), text.slice(dots + 2, colon < 0 ? undefined : colon)].map((end) =>
    end.trim(),
  );
  if (ends.includes('')) return wrong({ expected: 'both ends of the range', found: shown(text) });
  const [low, high] = ends.map((end) => readValue(end, variable, design));
  if (!low!.ok) return wrong(low!.mistake);
  if (!high!.ok) return wrong(high!.mistake);
  const [from, to] = [low!.value, high!.value];
  if (from > to) return wrong({ expected: 'the lower end first', found: shown(text), hint: 'swap the ends' });
  if (colon < 0) return evenly(variable, from, to, usualCount);
  return stepped(text.slice(colon + 1).trim(), variable, from, to, design);
}

function stepped(step: string, variable: Variable, from: number, to: number, design: Design): Read<Varied> {
  const counted = /^(\d+)\s+values?$/.exec(step);
  if (counted) {
    const count = Number(counted[1]);
    return count >= 1
      ? evenly(variable, from, to, count)
      : wrong({ expected: 'one value or more', found: shown(step) });
  }
  const read = readValue(step, variable, design);
  if (!read.ok) {
    const hint = 'after the colon comes a step, such as `1/2 in`, or how many values: `13 values`';
    return wrong({ hint, ...read.mistake });
  }
  if (!(read.value > 0)) return wrong({ expected: 'a step of more than 0', found: shown(step) });
  const by = read.value;
  const count = Math.floor((to - from) / by + roundingOfStep) + 1;
  return { ok: true, value: { variable, count, valueAt: (index) => from + index * by } };
}

/** An end this share of a step beyond the last value is on it: sixteenths come back from metres rounded. */
const roundingOfStep = 1e-9;

function evenly(variable: Variable, from: number, to: number, count: number): Read<Varied> {
  const last = Math.max(1, count - 1);
  const valueAt = (index: number): number => (index === last ? to : from + ((to - from) * index) / last);
  return { ok: true, value: { variable, count: from === to ? 1 : count, valueAt } };
}

export const wrong = (words: Words): { readonly ok: false; readonly words: Words } => ({ ok: false, words });
