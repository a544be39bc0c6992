/** Signs that a design was not drawn as meant: no limits, only cautions. SI. The bounds are common practice, no source. */
import type { Chair, ChairPart } from '../chair/chair.js';
import type { ChairKind } from '../names.js';
import { gapBetween, silhouetteOf } from '../geometry/gap.js';

export type Implausible =
  | { readonly what: 'light' | 'heavy'; readonly mass: number }
  | { readonly what: 'heavy part'; readonly part: string; readonly share: number }
  | { readonly what: 'narrow seat'; readonly part: string; readonly across: number }
  /** Two parts nearly touch. */
  | { readonly what: 'gap'; readonly parts: readonly [string, string]; readonly gap: number }
  /** The part that runs on the floor touches no other. */
  | { readonly what: 'rocker alone'; readonly part: string }
  /** Any other part that touches none. */
  | { readonly what: 'loose part'; readonly part: string }
  /** The part that runs on the floor is one piece, where two are a distance apart. */
  | { readonly what: 'one rocker'; readonly part: string }
  /** Their centre lines are nearer than they are wide. */
  | {
      readonly what: 'rockers in one';
      readonly part: string;
      readonly spacing: number;
      readonly across: number;
    };

/** A chair lighter or heavier than this is seldom one, kg. */
const usual = { grown: { least: 5, most: 20 }, child: { least: 2.5, most: 12 } };
const largestShare = 0.5;
/** A seat narrower across is a seat's thickness, metres. */
const narrowestSeat = 0.25;
/** Nearer than this two parts were meant to touch, metres. */
const meantToTouch = 0.01;

export function implausible(chair: Chair, kind: ChairKind): Implausible[] {
  return [
    ...weight(chair, usual[kind === 'child' ? 'child' : 'grown']),
    ...narrowSeats(chair),
    ...oneRocker(chair),
    ...gaps(chair),
  ];
}

function weight({ body: { mass }, parts }: Chair, { least, most }: typeof usual.grown): Implausible[] {
  const heavy = parts.filter((part) => part.mass > largestShare * mass);
  return [
    ...(mass < least ? [{ what: 'light' as const, mass }] : []),
    ...(mass > most ? [{ what: 'heavy' as const, mass }] : []),
    ...heavy.map(({ name, mass: own }) => ({ what: 'heavy part' as const, part: name, share: own / mass })),
  ];
}

const isSeat = ({ name }: ChairPart): boolean => /\bseat\b/iu.test(name) && !/rail|slat/iu.test(name);

function narrowSeats({ parts }: Chair): Implausible[] {
  return parts.flatMap((part) =>
    isSeat(part) && part.across !== null && part.count * part.across < narrowestSeat
      ? [{ what: 'narrow seat' as const, part: part.name, across: part.across }]
      : [],
  );
}

function oneRocker({ parts, surface, spacing, sides }: Chair): Implausible[] {
  const { name, count, across } = parts[surface.owner]!;
  if (spacing !== null && across !== null && spacing <= across)
    return [{ what: 'rockers in one', part: name, spacing, across }];
  return spacing !== null && sides === null && count === 1 ? [{ what: 'one rocker', part: name }] : [];
}

function gaps({ parts, surface }: Chair): Implausible[] {
  const silhouettes = parts.map(({ outline }) => silhouetteOf(outline));
  const gap = silhouettes.map((one, i) =>
    silhouettes.map((other, j) => (j > i ? gapBetween(one, other, meantToTouch) : 0)),
  );
  const between = (i: number, j: number): number => gap[Math.min(i, j)]![Math.max(i, j)]!;
  const touches = (i: number, j: number): boolean => i !== j && between(i, j) < readable;
  /** Two parts that a third joins need not touch. */
  const joined = (i: number, j: number): boolean => parts.some((_, k) => touches(i, k) && touches(k, j));
  const found = parts.flatMap((one, i) =>
    parts.flatMap((other, j): Implausible[] => {
      const near = j > i && between(i, j) >= readable && between(i, j) < meantToTouch && !joined(i, j);
      return near ? [{ what: 'gap', parts: [one.name, other.name], gap: between(i, j) }] : [];
    }),
  );
  const alone = parts.map((_, i) => !parts.some((_, j) => touches(i, j)));
  const named = new Set(found.flatMap((sign) => (sign.what === 'gap' ? sign.parts : [])));
  // Where nothing touches anything the rocker is told alone; a part with a gap has been told.
  const joins = alone.includes(false);
  const loose = parts.flatMap(({ name }, i): Implausible[] => {
    if (!alone[i] || parts.length === 1) return [];
    if (i === surface.owner) return [{ what: 'rocker alone', part: name }];
    return joins && !named.has(name) ? [{ what: 'loose part', part: name }] : [];
  });
  return [...found, ...loose];
}

/** A narrower gap is how the drawing was rounded, metres. */
const readable = 5e-4;
