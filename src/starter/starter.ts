/** A design to begin with: a whole chair of a kind, fitted to whoever it is for. */
import { checkDesign, type CheckResult } from '../check-design.js';
import type { Checked } from '../design/issue.js';
import { readDesign } from '../design/read-design.js';
import { isMissing } from '../numeric/missing.js';
import { metresPer } from '../quantity/units.js';
import { sitterSize, type Sitter, type SitterSize } from '../sitter/sitter-size.js';
import { standardSitters } from '../sitter/standard-sitters.js';
import { fittedTo } from './fitted.js';
import { startingSizes } from './starter-sizes.js';
import { printStarter, type StarterNames } from './starter-text.js';

export interface StarterRequest extends Omit<StarterNames, 'people'> {
  /** Whom it is made for, and the same as the line of the file that says so; null: the usual people of the kind. */
  readonly sitter: (Sitter & { readonly line: string }) | null;
}

/** For smaller and taller people no chair was tried, metres. */
export const fittedStatures = { least: 0.9, greatest: 2.3 } as const;

export interface Starter {
  readonly text: string;
  /** What a check of that very text says. */
  readonly result: CheckResult;
}

/** @param file its name, for messages @throws RangeError where stature or mass of the sitter is not stated */
export function starter(request: StarterRequest, file: string): Checked<Starter> {
  const { kind, units, sitter } = request;
  const sitters = sitter === null ? standardSitters(kind).sitters : [sitter];
  const sizes = sitters.map(sizeOf);
  const names = { ...request, people: peopleIn(request) };
  const begin = startingSizes(kind, sizes);
  const design = readDesign(printStarter(begin, names), file);
  if (!design.ok) return design;
  const text = printStarter(fittedTo(design.value, begin, stepIn(units)), names);
  const checked = checkDesign(text, file);
  return checked.ok ? { ok: true, value: { text, result: checked.value } } : checked;
}

function sizeOf(sitter: Sitter): SitterSize {
  const size = sitterSize(sitter);
  if (isMissing(size)) throw new RangeError(`starter: ${size.missing}`);
  return size;
}

/** Makers set sizes to a sixteenth of an inch, or a millimetre. */
const stepIn = (units: StarterRequest['units']): number =>
  units === 'in' ? metresPer.in / 16 : metresPer.mm;

/** A nursing chair is sat in with a child: that of the usual people. */
function peopleIn({ kind, sitter }: StarterRequest): string {
  if (sitter === null) return 'sitters: standard # those usual for the kind';
  const { child } = standardSitters(kind);
  const held = child?.mass ?? null;
  return [
    `sitters: [${sitter.line}]`,
    ...(held === null ? [] : [`child: { mass: ${held} kg } # a boy of a year and a half`]),
  ].join('\n');
}
