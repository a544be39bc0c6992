/**
 * A measure as it is named on a command line, like the limits of a design: `period` (on the load it is judged on),
 * `seated/period`, `seated/period/shortest`.
 */
import type { People } from '../loads/people.js';
import type { Words } from '../design/places.js';
import { loadsMeant } from '../checks/limit.js';
import { loadIds, loads, measureKeys, measures, type LoadId, type MeasureKey } from '../names.js';
import { unknownName } from './argument.js';
import { wrong, type Read } from './varied.js';

export interface AskedMeasure {
  readonly measure: MeasureKey;
  readonly load: LoadId;
  /** null: of a load without a sitter, or when nobody sits. */
  readonly sitter: string | null;
}

/** One for each sitter and load that is meant. */
export function measuresNamed(text: string, people: People): Read<AskedMeasure[]> {
  const steps = text.split('/').map((step) => step.trim());
  const load = loadIds.find((id) => id === steps[0]);
  if (steps.length > 1 && load === undefined) return wrong(notALoad(steps, people));
  const measure = measureNamed(load === undefined ? steps[0]! : (steps[1] ?? ''), load);
  if (!measure.ok) return measure;
  const meant = load === undefined ? loadsMeant(measure.value, people) : [load];
  const found = meant.flatMap((each) => asked(each, measure.value, people));
  const sitter = steps.slice(2).join('/');
  if (steps.length < 3) return { ok: true, value: found };
  const own = found.filter((each) => each.sitter === sitter);
  const sitters = found.flatMap((each) => each.sitter ?? []);
  return own.length > 0 ? { ok: true, value: own } : wrong(unknownName('a sitter', sitter, sitters));
}

/** Where a sitter stands first it is put last, as in the names of limits. */
function notALoad([first = '', key = '']: readonly string[], people: People): Words {
  const found = unknownName('a load', first, loadIds);
  if (!people.persons.some(({ name }) => name === first)) return found;
  const measure = measureNamed(key, undefined);
  const [load] = measure.ok ? loadsMeant(measure.value, people) : [];
  return load === undefined ? found : { ...found, hint: `did you mean \`${load}/${key}/${first}\`?` };
}

function measureNamed(key: string, load: LoadId | undefined): Read<MeasureKey> {
  const known = measureKeys.filter((each) => load === undefined || has(each, load));
  const measure = known.find((each) => measures[each].limitKey === key || each === key);
  if (measure !== undefined) return { ok: true, value: measure };
  const of = load === undefined ? 'a measure' : `a measure of ${load}`;
  return wrong(
    unknownName(
      of,
      key,
      known.map((each) => measures[each].limitKey),
    ),
  );
}

const has = (measure: MeasureKey, load: LoadId): boolean => measures[measure].loads.includes(load);

function asked(load: LoadId, measure: MeasureKey, { persons, child }: People): AskedMeasure[] {
  if (!loads[load].sitter) return [{ load, measure, sitter: null }];
  if (load.endsWith('with-a-child') && child === null) return [];
  return persons.map(({ name }) => ({ load, measure, sitter: name }));
}

/** `seated/period/shortest`. */
export const nameOfAsked = ({ load, measure, sitter }: AskedMeasure): string =>
  [load, measures[measure].limitKey, ...(sitter === null ? [] : [sitter])].join('/');
