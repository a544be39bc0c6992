/** What is wrong with the runners, and where a tape from the tail end finds it. */
import type { TakenFromFile } from '../chair/part-outline.js';
import type { CheckResult } from '../check-design.js';
import type { Side } from '../geometry/mean-surface.js';
import { surfaceFaults, type SurfaceFault } from '../geometry/surface-faults.js';
import { unlikenessOf } from '../geometry/unlike-sides.js';
import type { MeasureKey } from '../names.js';
import { formatDegreesFine, formatLength, formatMillimetres, formatNumber } from '../quantity/print.js';
import type { LengthUnit } from '../quantity/units.js';

type OfRunners = Pick<CheckResult, 'chair' | 'design'>;

/** As many of a runner are told. */
const mostTold = 6;

/** A line for each, in order from the tail end. */
export function surfaceCautions(result: CheckResult): string[] {
  const { design } = result;
  return runnersOf(result).flatMap(({ name, faults, drawn }) => {
    const felt = faults.filter(isFelt);
    const said = felt.slice(0, mostTold).map((fault) => `${name}: ${sayFault(fault, design.units, drawn)}`);
    const more = felt.length - said.length;
    return more > 0 ? [...said, `${name}: ${formatNumber(more, 0)} more of such places.`] : said;
  });
}

/** What comes before all limits: on a curve that is drawn as lines no chair rocks, and every line is a place to rest. */
export const saidOfLines = (result: CheckResult): string[] =>
  runnersOf(result).flatMap(({ name, faults, drawn }) =>
    faults
      .filter(({ what }) => what === 'lines')
      .map((fault) => `${name}: ${sayFault(fault, result.design.units, drawn)}`),
  );

/** Half an inch of flat is felt (common practice, no source). */
const feltFlat = 0.012;

const isFelt = (fault: SurfaceFault): boolean =>
  fault.what !== 'flat' || fault.hollow > 0 || fault.length > feltFlat;

/** Where the fault lies that a measure of the empty chair’s runners found largest, for a limit that is not met. */
export function whereOf(measure: MeasureKey | null, result: CheckResult): string | null {
  if (measure === 'restCount') return whereItRests(result);
  const what = measure === null ? undefined : faultOf[measure];
  if (what === undefined) return null;
  const found = runnersOf(result).flatMap(({ name, faults }) =>
    faults.filter((fault) => fault.what === what).map((fault) => ({ name, fault })),
  );
  const largest = found.reduce<(typeof found)[number] | null>(
    (most, one) => (most === null || sizeOf(one.fault) > sizeOf(most.fault) ? one : most),
    null,
  );
  return largest && `${largest.name}, ${sayPlace(largest.fault, result.design.units)}`;
}

const faultOf: Readonly<Partial<Record<MeasureKey, SurfaceFault['what']>>> = {
  flatLongestM: 'flat',
  sharpestCornerDeg: 'corner',
  radiusJump: 'spot',
};

function sizeOf(fault: SurfaceFault): number {
  switch (fault.what) {
    case 'flat':
      return fault.length;
    case 'corner':
      return fault.turn;
    case 'spot':
      return Math.abs(fault.jump);
    case 'lines':
      return fault.longest;
  }
}

interface Runner {
  readonly name: string;
  readonly faults: readonly SurfaceFault[];
  readonly drawn: readonly TakenFromFile[];
}

function runnersOf({ chair }: OfRunners): Runner[] {
  const sides: readonly Side[] = chair.sides ? [chair.sides.left, chair.sides.right] : [chair];
  return sides.map(({ profile, surface }) => {
    const { name, outline, drawn } = chair.parts[surface.owner]!;
    const faults = surfaceFaults(
      profile,
      surface,
      outline.map(({ boundary }) => boundary),
    );
    return { name, faults, drawn };
  });
}

function sayFault(fault: SurfaceFault, units: LengthUnit, drawn: Runner['drawn']): string {
  const place = sayPlace(fault, units);
  switch (fault.what) {
    case 'flat':
      return fault.hollow > 0
        ? `a hollow ${formatMillimetres(fault.hollow, 1)} deep, ${place}: it stands on both its edges until it is pushed past one.`
        : `a flat ${formatLength(fault.length, units)} long, ${place}: there the chair stands still until it is pushed past its ends.`;
    case 'corner':
      return `a corner of ${formatDegreesFine(fault.turn, 1)}, ${place}: it knocks as it rolls over it, and settles beside it.`;
    case 'spot': {
      const [spot, how] = fault.jump > 0 ? ['low', 'flatter'] : ['high', 'tighter'];
      return (
        `a ${spot} spot, ${place}: ${formatNumber(100 * Math.abs(fault.jump), 0)} % ${how} than beside it ` +
        `(radius ${formatLength(fault.radius, units)}).`
      );
    }
    case 'lines':
      return (
        `${formatNumber(fault.count, 0)} flats in a row, up to ${formatLength(fault.longest, units)} long, ${place}, ` +
        `as a curve drawn as lines has them. ${sayCure(fault.bulge, drawn)}`
      );
  }
}

/** @param bulge of an arc over its longest line, metres */
function sayCure(bulge: number, drawn: Runner['drawn']): string {
  if (drawn.length === 0) return 'If it is one, draw it as arcs.';
  const tried = Math.max(0, ...drawn.map(({ smooth }) => smooth ?? 0));
  if (tried >= bulge)
    return 'Its radius cannot be told from them: draw it as arcs, or write it with more digits.';
  const tenths = Math.max(1, Math.ceil((spare * bulge) / 1e-4));
  return `If it is one, write \`smooth: ${formatMillimetres(tenths * 1e-4, 1)}\` beside \`file\`.`;
}

/** The turn is not the same everywhere. */
const spare = 1.2;

/** Measured along the bottom edge. */
function sayPlace({ from, to }: SurfaceFault, units: LengthUnit): string {
  const [near, far] = [formatLength(from, units), formatLength(to, units)];
  return near === far ? `${near} from its tail end` : `${near} to ${far} from its tail end`;
}

function whereItRests({ loads, chair, design }: CheckResult): string | null {
  const rests = loads.find(({ record }) => record.load.id === 'empty')?.record.roll.restsOnSurface ?? [];
  if (rests.length < 2) return null;
  const places = rests
    .map(({ contactLength }) => chair.surface.tail.length - contactLength)
    .sort((a, b) => a - b)
    .slice(0, mostTold)
    .map((place) => formatLength(place, design.units));
  return `the rockers, touching ${[...new Set(places)].join(', ')}${rests.length > mostTold ? ' and so on' : ''} from the tail end`;
}

/** A tenth of a millimetre between two rockers is what sanding leaves (common practice, no source). */
const seenUnlike = 1e-4;

/** Where unlike rockers differ most; null: hardly. */
export function sayUnlike({ chair: { sides, parts }, design }: OfRunners): string | null {
  const unlike = sides && unlikenessOf(sides.left, sides.right);
  if (!unlike || Math.abs(unlike.higher) < seenUnlike) return null;
  const name = parts[sides.left.surface.owner]!.name;
  return (
    `They differ most where ${name} touches ${formatLength(unlike.fromTail, design.units)} from its tail end: there the ` +
    `left side stands ${formatMillimetres(Math.abs(unlike.higher), 1)} ${unlike.higher > 0 ? 'higher' : 'lower'} than the right.`
  );
}
