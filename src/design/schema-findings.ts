/** What the schema finds wrong → mistakes at paths of the data, in a maker's words. */
import type * as z from 'zod';
import { nearestWord } from '../quantity/nearest.js';
import { shown } from '../quantity/source-text.js';
import { describeFound } from './found.js';
import type { Finding } from './places.js';
import { valueAt, type Path } from './plain-data.js';
import { meant, type Said } from './schema-words.js';
import { unknownKeys } from './unknown-keys.js';

type ZodIssue = z.core.$ZodIssue;

export interface SchemaFinding extends Finding {
  readonly lacksUnits?: true;
}

export function schemaFindings(issues: readonly ZodIssue[], data: unknown): SchemaFinding[] {
  const all = issues.flatMap(meantBranch);
  const unknown = new Map(
    all.flatMap((issue) => (issue.code === 'unrecognized_keys' ? [[issue.path.join('/'), issue.keys]] : [])),
  );
  // A key that is missing because it stands there misspelt is one mistake, not two.
  const isMisspelt = ({ path }: ZodIssue) =>
    unknown.get(path.slice(0, -1).join('/'))?.some((word) => nearestWord(word, [String(path.at(-1))])) ??
    false;
  return all
    .filter((issue) => !(isMissing(issue, data) && isMisspelt(issue)))
    .flatMap((issue) => findingsOf(issue, data));
}

/** Of the ways in which a value may be written, the one it was meant for tells what is wrong with it. */
function meantBranch(issue: ZodIssue): ZodIssue[] {
  if (issue.code !== 'invalid_union') return [issue];
  const intended = issue.errors
    .map((branch) => branch.flatMap(meantBranch))
    .find((branch) => !branch.some(isOfAnotherKind));
  return (intended ?? [{ ...issue, errors: [], path: [] }]).map((inner) => ({
    ...inner,
    path: [...issue.path, ...inner.path],
  }));
}

const isOfAnotherKind = ({ code, path }: ZodIssue) =>
  path.length === 0 && (code === 'invalid_type' || code === 'invalid_value' || code === 'invalid_union');

const isMissing = ({ code, path }: ZodIssue, data: unknown): boolean =>
  code !== 'custom' &&
  code !== 'unrecognized_keys' &&
  path.length > 0 &&
  valueAt(data, path as Path) === undefined;

function hintOf(issue: ZodIssue, value: unknown): { hint?: string } {
  if (issue.code === 'too_big') return { hint: 'a comma ends a number: decimals have a point, `[1.5, 2]`' };
  if (issue.code !== 'invalid_value' || typeof value !== 'string') return {};
  return meant(value, issue.values.map(String));
}

function findingsOf(issue: ZodIssue, data: unknown): SchemaFinding[] {
  const path = issue.path as Path;
  const value = valueAt(data, path);
  if (issue.code === 'custom') {
    const said = issue.params as Said;
    return [{ path, found: describeFound(value), ...said }];
  }
  if (issue.code === 'unrecognized_keys')
    return unknownKeys(path, issue.keys, issue.message.split('\n'), data);
  if (isMissing(issue, data)) {
    return [
      { path: path.slice(0, -1), expected: `${shown(String(path.at(-1)))}: ${issue.message}`, found: 'none' },
    ];
  }
  const expected = value === null ? `${ownerOf(path, data)}${issue.message}` : issue.message;
  return [{ path, expected, found: describeFound(value), ...hintOf(issue, value) }];
}

/** Of what stands empty its key, and whose it is: `wood` of `rocker`. */
function ownerOf(path: Path, data: unknown): string {
  const key = path.at(-1);
  if (typeof key !== 'string') return '';
  const owner = key === 'name' || path.length < 2 ? undefined : valueAt(data, [...path.slice(0, -1), 'name']);
  return typeof owner === 'string' ? `${shown(key)} of ${shown(owner)}: ` : `${shown(key)}: `;
}
