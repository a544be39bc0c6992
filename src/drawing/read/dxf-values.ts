/** Numbers and places of a group. What is no number is refused with its line, never passed over. */
import type { Point } from '../../geometry/point.js';
import { shown, type Group, type Tag } from './dxf-groups.js';
import { Unreadable } from './unreadable.js';
import { farthest } from './within-reach.js';

const decimal = /^[+-]?(\d+\.?\d*|\.\d+)([eEdD][+-]?\d+)?$/;

export function numberOf({ value, line }: Tag): number {
  const number = decimal.test(value) ? decimalNumber(value) : NaN;
  if (Math.abs(number) <= farthest) return number;
  throw new Unreadable({
    line,
    expected: Number.isNaN(number) ? 'a number' : 'a number of a billion at most',
    found: shown(value),
    ...(/^[+-]?\d+,\d+$/.test(value) && { hint: 'DXF numbers have a point' }),
  });
}

/** Some programs write FORTRAN’s exponent. */
function decimalNumber(value: string): number {
  const number = Number(value);
  return Number.isNaN(number) ? Number(value.replace(/[dD]/, 'e')) : number;
}

/** Written out: of an entity it is asked a dozen times. */
export function tagOf({ tags }: Group, code: number): Tag | undefined {
  for (const tag of tags) if (tag.code === code) return tag;
  return undefined;
}

export const textOf = (group: Group, code: number): string | undefined => tagOf(group, code)?.value;

/** @param other where the group does not say; undefined: it must */
export function valueOf(group: Group, code: number, other?: number): number {
  const tag = tagOf(group, code);
  if (tag !== undefined) return numberOf(tag);
  if (other !== undefined) return other;
  throw new Unreadable({
    line: group.line,
    expected: `${group.type} with a group ${code}`,
    found: 'none',
    hint: 'the file is damaged: write it anew',
  });
}

/** x of a code and y of the code ten higher. */
export const placeOf = (group: Group, code: number): Point => ({
  x: valueOf(group, code),
  y: valueOf(group, code + 10),
});

/** All places that begin with a code, in order; what else belongs to each is every tag up to the next. */
export function placesOf(
  group: Group,
  code: number,
): { readonly at: Point; readonly tags: readonly Tag[] }[] {
  const starts = group.tags.flatMap((tag, i) => (tag.code === code ? [i] : []));
  return starts.map((start, i) => {
    const tags = group.tags.slice(start, starts[i + 1]);
    const part = { ...group, line: tags[0]!.line, tags };
    return { at: placeOf(part, code), tags };
  });
}

export const numbersOf = ({ tags }: Group, code: number): number[] =>
  tags.filter((tag) => tag.code === code).map(numberOf);

/** Bits of a flag, 0 where there is none. */
export const flagsOf = (group: Group, code: number): number => Math.trunc(valueOf(group, code, 0));
