/** Keys that a block does not know, and what was probably meant. */
import { loadIds, measureKeys, measures, type LoadId, type MeasureKey } from '../names.js';
import { shown } from '../quantity/source-text.js';
import type { Finding, Words } from './places.js';
import { valueAt, type Path } from './plain-data.js';
import { hintFor } from './schema-words.js';

/** One mistake for each unknown key of the block at a path. */
export function unknownKeys(
  path: Path,
  keys: readonly string[],
  known: readonly string[],
  data: unknown,
): Finding[] {
  const cut = cutPathData(path, keys, data);
  if (cut) return [cut];
  return keys.map((key) => ({
    path: [...path, key],
    onKey: true,
    expected: 'a key that is known here',
    found: shown(key),
    ...(cutByComma(key, valueAt(data, [...path, key])) ??
      thickness(path, key) ??
      limitElsewhere(path, key) ??
      hintFor(key, known)),
  }));
}

type Special = Partial<Words>;

/** Inside { } a comma ends a value, so path data without quotes falls into keys without values. */
function cutPathData(path: Path, keys: readonly string[], data: unknown): Finding | undefined {
  const start = valueAt(data, [...path, 'path']);
  if (typeof start !== 'string' || keys.some((key) => valueAt(data, [...path, key]) !== null))
    return undefined;
  return {
    path: [...path, 'path'],
    expected: 'SVG path data in quotes',
    found: `${shown(start)} up to the first comma`,
    hint: 'put path data in quotes',
  };
}

function cutByComma(key: string, value: unknown): Special | undefined {
  if (value !== null || !/^[-+.]?\d/.test(key)) return undefined;
  return { hint: 'inside { } a comma ends a value: decimals have a point, `1.5 in`' };
}

function thickness(path: Path, key: string): Special | undefined {
  if (key !== 'thickness' || path[0] !== 'parts' || path.length !== 2) return undefined;
  return { hint: 'write `across` for the size across the chair: a seat’s thickness is not its size across' };
}

/** A measure under its JSON name, or under a load that does not have it. */
function limitElsewhere([section, load]: Path, key: string): Special | undefined {
  if (section !== 'limits') return undefined;
  const measure = measureKeys.find((each) => measures[each].limitKey === key);
  if (!measure && Object.hasOwn(measures, key))
    return { hint: `did you mean \`${measures[key as MeasureKey].limitKey}\`?` };
  if (!measure || !loadIds.includes(load as LoadId)) return undefined;
  return {
    expected: `a measure that \`${load!}\` has`,
    hint: `\`${key}\` is a measure of ${measures[measure].loads.join(', ')}`,
  };
}
