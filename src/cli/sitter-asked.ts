/** Whom a design is begun for, as the command line says it: `--body female --stature "5' 4\"" --mass "140 lb"`. */
import { issueOfWhole, type Checked } from '../design/issue.js';
import { yamlFlow } from '../design/yaml-flow.js';
import { peopleFaults } from '../loads/people.js';
import type { Kind } from '../names.js';
import { compileQuantity } from '../quantity/quantity.js';
import type { LengthUnit } from '../quantity/units.js';
import type { Body } from '../sitter/segment-table.js';
import type { Sitter } from '../sitter/sitter-size.js';
import { refused } from './checked.js';

export interface SitterArguments {
  readonly body?: Body;
  readonly stature?: string;
  readonly mass?: string;
}

export interface SitterAsked extends Sitter {
  /** As it stands in a design file. */
  readonly line: string;
}

/** @param units what a bare stature is in @returns null: nobody was named */
export function sitterAsked(
  { body, stature, mass }: SitterArguments,
  units: LengthUnit,
): Checked<SitterAsked | null> {
  if (body === undefined && stature === undefined && mass === undefined) return { ok: true, value: null };
  if (body === undefined) return lacking('--body', 'female or male');
  if (stature === undefined) return lacking('--stature', 'a length such as `5\' 4"`');
  if (mass === undefined) return lacking('--mass', 'a mass such as `140 lb`');
  const [long, heavy] = [valueOf('stature', stature, 'length', units), valueOf('mass', mass, 'mass', units)];
  if (!long.ok || !heavy.ok)
    return { ok: false, issues: [long, heavy].flatMap((read) => (read.ok ? [] : read.issues)) };
  const size = { stature: long.value, mass: heavy.value };
  const faults = peopleFaults(size);
  if (faults.length > 0)
    return {
      ok: false,
      issues: faults.map(({ path, expected, found }) => issueOfWhole(`--${path.join()}`, expected, found)),
    };
  const line = yamlFlow({ name: 'sitter', body, stature, mass });
  const measured = { kneeHollow: null, buttockToKneeHollow: null, elbowAboveSeat: null };
  return { ok: true, value: { body, ...size, percentile: null, measured, line } };
}

const lacking = (option: string, expected: string): Checked<never> =>
  refused(issueOfWhole(option, expected, 'none', '--body, --stature and --mass go together'));

/** No name stands for anything. */
const noNames = { dimensionOf: () => undefined, known: [] };

function valueOf(option: string, text: string, kind: Kind, units: LengthUnit): Checked<number> {
  const read = compileQuantity(text, { kind, units }, noNames);
  if (read.ok) return { ok: true, value: read.value.valueIn(new Map()) };
  const { expected, found, hint } = read.mistake;
  return refused(issueOfWhole(`--${option}`, expected, found, hint));
}
