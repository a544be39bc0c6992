/** Schemas of what a design changes of the standard loads, and of its limits. */
import * as z from 'zod';
import { loadIds, measureKeys, measures, measuresOf, type LoadId, type MeasureKey } from '../names.js';
import { loadSettings } from './load-settings.js';
import type { ValueSchemas } from './schema-values.js';
import { block, oneOf, rule, switchedOff } from './schema-words.js';

export function loadsSchema({ value }: ValueSchemas) {
  const settings = (load: LoadId) => {
    const shape = Object.fromEntries(
      Object.entries(loadSettings[load]).map(([key, { kind, must }]) => [key, value(kind, must).optional()]),
    );
    const what = `settings of ${load}: ${Object.keys(shape).join(', ')}`;
    const changed = rule(block(what, shape), (keys) => {
      oneOf(keys, 'mass', 'weight');
    });
    return z.union([switchedOff, changed], { error: `\`off\`, or ${what}` }).optional();
  };
  return block('changes to the standard loads', record(loadIds, loadIds.map(settings)));
}

/** A measure's range under its own name, or under the load it is meant for. */
export function limitsSchema({ range }: ValueSchemas) {
  const rangesOf = (keys: readonly MeasureKey[]) =>
    record(
      keys.map((key) => measures[key].limitKey),
      keys.map((key) => range(measures[key].kind)),
    );
  const ofLoad = (load: LoadId) => block(`limits of ${load}`, rangesOf(measuresOf(load))).optional();
  return block('limits: a range for each measure', {
    ...rangesOf(measureKeys),
    ...record(loadIds, loadIds.map(ofLoad)),
  });
}

const record = <Key extends string, T>(keys: readonly Key[], values: readonly T[]) =>
  Object.fromEntries(keys.map((key, index) => [key, values[index]])) as Record<Key, T>;
