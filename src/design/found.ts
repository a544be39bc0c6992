/** What stands in the file, in a maker's words. */
import { shown } from '../quantity/source-text.js';

export function describeFound(value: unknown): string {
  if (value === undefined || value === null) return 'nothing';
  if (typeof value === 'string') return value === '' ? 'an empty text' : `the text ${shown(value)}`;
  if (typeof value === 'number') return `the number ${value}`;
  if (typeof value === 'boolean') return String(value);
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  return 'a block of keys';
}
