/**
 * Densities of panels, as published, in kg/m³. Where the publication gives a range or several thicknesses, one
 * number is chosen and the reason stands in `source`; `spread` is the larger distance to the ends of the range.
 */
import type { Wood } from './wood.js';

/** 640-700 kg/m³ at 5-14 % moisture is a second maker's range (read): 670 and 5 % either way. */
const birchSpread = 0.05;
const birchSheet = "birch plywood maker's data sheet";

// prettier-ignore
export const panelRows: readonly Wood[] = [
  { name: 'birch plywood', aliases: ['baltic birch', 'birch ply'], density: 685, spread: 0.07, mark: 'read',
    source: `${birchSheet}: 660-710 by thickness; that of 18 mm, the sheet most seats and patterns are cut from (common practice, no source)` },
  { name: 'birch plywood 4 mm', aliases: [], density: 660, spread: birchSpread, mark: 'read', source: `${birchSheet}, 3 plies` },
  { name: 'birch plywood 6.5 mm', aliases: [], density: 670, spread: birchSpread, mark: 'read', source: `${birchSheet}, 5 plies` },
  { name: 'birch plywood 9 mm', aliases: [], density: 710, spread: birchSpread, mark: 'read', source: `${birchSheet}, 7 plies` },
  { name: 'birch plywood 12 mm', aliases: [], density: 695, spread: birchSpread, mark: 'read', source: `${birchSheet}, 9 plies` },
  { name: 'birch plywood 15 mm', aliases: [], density: 690, spread: birchSpread, mark: 'read', source: `${birchSheet}, 11 plies` },
  { name: 'birch plywood 18 mm', aliases: [], density: 685, spread: birchSpread, mark: 'read', source: `${birchSheet}, 13 plies` },
  { name: 'birch plywood 21 mm', aliases: [], density: 680, spread: birchSpread, mark: 'read', source: `${birchSheet}, row 21-24 mm` },
  { name: 'birch plywood 24 mm', aliases: [], density: 680, spread: birchSpread, mark: 'read', source: `${birchSheet}, row 21-24 mm` },
  { name: 'softwood plywood', aliases: ['pine plywood', 'softwood ply'], density: 575, spread: 0.14, mark: 'worked out here',
    source: "plywood seller's page: pine plywood 500-650 kg/m³; the middle of it" },
  { name: 'OSB', aliases: ['oriented strand board'], density: 655, spread: 0.23, mark: 'worked out here',
    source: 'Wood Handbook, FPL-GTR-190 (2010), table 12-3: specific gravity 0.51-0.80 from eleven mills, mean 0.655; taken as it stands, nothing added for moisture' },
  { name: 'MDF', aliases: ['medium density fibreboard', 'medium density fiberboard'], density: 769, spread: 0.13, mark: 'read',
    source: 'Cai, Muehl and Winandy, pressing study, abstract: test panels of 673, 769 and 833 kg/m³; the middle one' },
];
