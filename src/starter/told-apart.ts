/** Groups of a drawing with names of their own, and with what they have in common. */
import type { DrawnCurve } from '../drawing/read/drawn.js';
import { printable } from '../report/printable.js';
import type { Judged } from './judged.js';

export interface JudgedGroup extends Judged {
  /** Unlike that of any other. */
  readonly name: string;
  /** Other groups that have some of its curves too. */
  readonly shares: readonly string[];
}

/** By their layers, in one line each; what would read alike is numbered. */
export function toldApart(judged: readonly Judged[]): JudgedGroup[] {
  const met = new Set<string>();
  const names = judged.map(({ group }) => {
    const plain = printable(group.name) || (group.by === null ? 'drawing' : 'part');
    let name = plain;
    for (let count = 2; met.has(name); count += 1) name = `${plain} (${count})`;
    met.add(name);
    return name;
  });
  const holders = holdersOf(judged);
  return judged.map((one, i) => {
    const others = new Set(one.group.curves.flatMap((curve) => holders.get(curve) ?? []));
    others.delete(i);
    return { ...one, name: names[i]!, shares: [...others].map((other) => names[other]!) };
  });
}

/** For each curve that several have those. */
function holdersOf(judged: readonly Judged[]): ReadonlyMap<DrawnCurve, readonly number[]> {
  const holders = new Map<DrawnCurve, number[]>();
  if (judged.length < 2) return holders;
  for (const [i, { group }] of judged.entries())
    for (const curve of group.curves) holders.set(curve, [...(holders.get(curve) ?? []), i]);
  for (const [curve, those] of holders) if (those.length < 2) holders.delete(curve);
  return holders;
}
