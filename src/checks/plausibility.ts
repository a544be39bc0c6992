/** Signs that a design was not drawn as meant: no limits, only cautions. SI. The bounds are common practice, no source. */
import type { Chair, ChairPart } from '../chair/chair.js';
import { gapBetween, silhouetteOf } from '../geometry/gap.js';

export type Implausible =
  | { readonly what: 'light' | 'heavy'; readonly mass: number }
  | { readonly what: 'heavy part'; readonly part: string; readonly share: number }
  | { readonly what: 'narrow seat'; readonly part: string; readonly across: number }
  /** Two parts nearly touch. */
  | { readonly what: 'gap'; readonly parts: readonly [string, string]; readonly gap: number }
  /** The part that runs on the floor touches no other. */
  | { readonly what: 'rocker alone'; readonly part: string };

/** A chair lighter or heavier than this is seldom one, kg. */
const usual = { least: 5, most: 20 };
const largestShare = 0.5;
/** A seat narrower across is a seat's thickness, metres. */
const narrowestSeat = 0.25;
/** Nearer than this two parts were meant to touch, metres. */
const meantToTouch = 0.01;

export function implausible(chair: Chair): Implausible[] {
  return [...weight(chair), ...narrowSeats(chair), ...gaps(chair)];
}

function weight({ body: { mass }, parts }: Chair): Implausible[] {
  const heavy = parts.filter((part) => part.mass > largestShare * mass);
  return [
    ...(mass < usual.least ? [{ what: 'light' as const, mass }] : []),
    ...(mass > usual.most ? [{ what: 'heavy' as const, mass }] : []),
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

function gaps({ parts, surface }: Chair): Implausible[] {
  const silhouettes = parts.map(({ outline }) => silhouetteOf(outline));
  const found: Implausible[] = [];
  let carries = parts.length === 1;
  for (let i = 0; i < parts.length; i++)
    for (let j = i + 1; j < parts.length; j++) {
      const gap = gapBetween(silhouettes[i]!, silhouettes[j]!, meantToTouch);
      if (gap === 0 && (i === surface.owner || j === surface.owner)) carries = true;
      if (gap > 0 && gap < meantToTouch)
        found.push({ what: 'gap', parts: [parts[i]!.name, parts[j]!.name], gap });
    }
  return carries ? found : [...found, { what: 'rocker alone', part: parts[surface.owner]!.name }];
}
