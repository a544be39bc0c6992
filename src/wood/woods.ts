/** Woods and panels by their names in the trade. */
import { panelRows } from './panel-table.js';
import { woodRows, woodSpread, type WoodRow } from './wood-table.js';
import type { Wood } from './wood.js';

/**
 * ρ = 1000 kg/m³ × G (1 + M/100): G oven-dry mass over volume at moisture M (%), as water = 1.
 * Wood Handbook, FPL-GTR-282 (2021), eq. 4-14. G must belong to the same moisture: a green G does not go in here.
 */
export function densityAtMoisture(specificGravity: number, moisturePercent: number): number {
  const density = 1000 * specificGravity * (1 + moisturePercent / 100);
  if (density > 0 && moisturePercent >= 0 && density < Infinity) return density;
  throw new RangeError(`densityAtMoisture: specific gravity ${specificGravity} at ${moisturePercent} %`);
}

/** %: the moisture of the table, where wood settles at 21 °C and 65 % humidity (Wood Handbook, table 4-2). */
const tableMoisture = 12;

function woodOfRow({ name, aliases, specificGravity, row, mark }: WoodRow): Wood {
  return {
    name,
    aliases,
    density: densityAtMoisture(specificGravity, tableMoisture),
    spread: woodSpread,
    specificGravity,
    source: `Wood Handbook, FPL-GTR-190 (2010), table 5-3a: ${row}; density by eq. 4-14 at 12 %`,
    mark,
  };
}

/** Every wood and panel, in the order of the tables. */
export const woods: readonly Wood[] = [...woodRows.map(woodOfRow), ...panelRows];

const namesOf = (wood: Wood): readonly string[] => [wood.name, ...wood.aliases];

/** Case, spaces and hyphens do not tell woods apart: `Douglas-fir` is `douglas fir`, `18mm` is `18 mm`. */
function plainName(name: string): string {
  return name
    .toLowerCase()
    .replace(/(\d)mm\b/g, '$1 mm')
    .replace(/[\s-]+/g, ' ')
    .trim();
}

const byPlainName: ReadonlyMap<string, Wood> = new Map(
  woods.flatMap((wood) => namesOf(wood).map((name) => [plainName(name), wood] as const)),
);

/** The wood a maker means by this name. */
export function woodNamed(name: string): Wood | undefined {
  return byPlainName.get(plainName(name));
}

/** Every name that is accepted, in the order of the tables. */
export function woodNames(): readonly string[] {
  return woods.flatMap(namesOf);
}
