/** Where in the design file a found size goes, in words that can be followed. */
import type { Design } from '../design/read-design.js';
import type { Adjusted, Setting } from '../explore/adjust.js';
import type { SizeRange } from '../explore/size-range.js';
import type { Variable } from '../explore/variables.js';
import { sayInUnit, unitOf } from './variable-words.js';

/** By more than a rounding, which is told as no change. */
export const isChanged = ({ variable: { stated }, step }: SizeRange, value: number): boolean =>
  Math.abs(value - stated) > 1e-6 * step;

/** 'in `dimensions`, set `radius: 35 in`'; one for each section of the file; none where nothing changes. */
export function placesIn({ rounded }: Setting, { design, by, stated }: Adjusted): string[] {
  const places = new Map<string, string[]>();
  by.forEach((one, i) => {
    if (!isChanged(one, rounded[i]!)) return;
    const { unit, factor } = unitOf(one.variable, stated.design.units);
    const said = sayInUnit(rounded[i]! / factor, unit);
    // A length that is a pure number in the file stays one.
    const written = one.variable.perUnit === undefined ? said : said.replace(/ \D+$/, '');
    const entry = `${keyOf(one.variable, design)}: ${written}`;
    const place = placeOf(one.variable, design);
    places.set(place, [...(places.get(place) ?? []), entry]);
  });
  return [...places].map(([place, entries]) =>
    place === newLine
      ? `add the line \`alterations: { ${entries.join(', ')} }\``
      : `${place}, set ${entries.map((entry) => `\`${entry}\``).join(' and ')}`,
  );
}

const newLine = 'a line of its own';

function placeOf({ of }: Variable, design: Design): string {
  if (of === null) return 'in `dimensions`';
  if ('sitter' in of) return `at the sitter ${sitterOf(of.sitter, design).name}`;
  return design.written.alterations === undefined ? newLine : 'in `alterations`';
}

/** The word that the file has for it. */
function keyOf({ name, of }: Variable, design: Design): string {
  if (of === null || 'alteration' in of) return name;
  const { height, weight } = sitterOf(of.sitter, design);
  if (of.size === 'stature' && height !== undefined) return 'height';
  return of.size === 'mass' && weight !== undefined ? 'weight' : of.size;
}

function sitterOf(index: number, { written: { sitters } }: Design) {
  if (sitters === undefined || sitters === 'standard') throw new RangeError(`sitterOf: no sitter ${index}`);
  return sitters[index]!;
}
