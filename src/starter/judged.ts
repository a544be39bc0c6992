/** A group of a drawing taken for a part: its outlines, or why it is none. */
import type { Drawn } from '../drawing/read/drawn.js';
import { drawnOutlines, type Asked, type OutlinesFound } from '../drawing/read/outlines.js';
import { placeDrawn } from '../drawing/read/place-drawn.js';
import { usuallySmoothed } from '../design/resolve-parts.js';
import { scaling, type Affine } from '../geometry/affine.js';
import type { Flaw } from '../geometry/flaw.js';
import { outlineFlaws } from '../geometry/flaws.js';
import type { Point } from '../geometry/point.js';
import type { NamedGroup } from './named-groups.js';
import type { SeatLine } from './seat-lines.js';

/** A drawing whose units are known. */
export interface Sheet extends Drawn {
  /** Metres a unit. */
  readonly unit: number;
  /** It shows the chair from its other side, facing left. */
  readonly mirror: boolean;
}

/** A group and what its curves are, taken for a part. */
export interface Judged {
  readonly group: NamedGroup;
  /** In metres, x forward and y up, from the drawing’s [0, 0]. */
  readonly made: OutlinesFound;
  /** Why it is no part, by places as drawn; none: it is one. */
  readonly flaws: readonly Flaw[];
}

export const isPart = ({ flaws }: Judged): boolean => flaws.length === 0;

/** To x forward and y up, metres from the drawing’s [0, 0]. */
export const upright = ({ unit, mirror, yDown }: Sheet): Affine =>
  scaling(mirror ? -unit : unit, yDown ? -unit : unit);

/** As it lies: the chair’s own [0, 0] is not known yet. */
const asDrawn = { origin: { x: 0, y: 0 }, turn: 0, join: null, smooth: usuallySmoothed };

/** @param line that it has the name of, though it is none */
export function judgedGroup(group: NamedGroup, line: SeatLine | null, sheet: Sheet): Judged {
  const { unit, mirror } = sheet;
  const made = drawnOutlines(
    { ...sheet, curves: group.curves },
    { ...asDrawn, unit, mirror, ...askFor(group) },
  );
  const flaws = flawsOf(made, sheet);
  return flaws.length > 0 && line !== null ? noPart(group, noLine(group)) : { group, made, flaws };
}

const askFor = ({ by, name }: NamedGroup): Pick<Asked, 'layer' | 'id'> => ({
  layer: by === 'layer' ? name : null,
  id: by === 'id' ? name : null,
});

/** By places of the drawing. */
function flawsOf(made: OutlinesFound, sheet: Sheet): readonly Flaw[] {
  if (!made.ok) return made.flaws;
  const { a, d } = upright(sheet);
  const place = ({ x, y }: Point): string => `${placeDrawn({ x: x / a, y: y / d }, sheet.unit)} as drawn`;
  const judged = outlineFlaws(made.loops, { place, drawn: true });
  return judged.ok ? [] : judged.flaws;
}

export const noPart = (group: NamedGroup, ...flaws: readonly Flaw[]): Judged => ({
  ...{ group, flaws },
  made: { ok: false, flaws },
});

function noLine({ curves }: NamedGroup): Flaw {
  const pieces = curves.reduce((count, one) => count + one.pieces.length, 0);
  return {
    expected: 'one straight line, or the outlines of a part',
    found: pieces === 1 ? 'one that is none' : `${pieces} lines or curves`,
  };
}

/** `the layer seat`. */
export const calling = ({ by, name }: Pick<NamedGroup, 'by' | 'name'>): string =>
  by === null ? 'all that is drawn' : `the ${by} ${name}`;
