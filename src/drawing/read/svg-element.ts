/** An element of an SVG file with what of it says where something is drawn; all else is not kept. */

export const svgAttributes = [
  ...['id', 'href', 'xlink:href', 'label', 'style', 'transform', 'transform-origin', 'display', 'visibility'],
  ...['viewBox', 'preserveAspectRatio', 'clip-path', 'mask', 'requiredExtensions', 'systemLanguage'],
  ...['d', 'points', 'x', 'y', 'width', 'height', 'cx', 'cy', 'r', 'rx', 'ry', 'x1', 'y1', 'x2', 'y2'],
] as const;

export type SvgAttribute =
  | (
      | 'id'
      | 'href'
      | 'xlink:href'
      | 'label'
      | 'style'
      | 'transform'
      | 'transform-origin'
      | 'display'
      | 'visibility'
    )
  | ('viewBox' | 'preserveAspectRatio' | 'clip-path' | 'mask' | 'requiredExtensions' | 'systemLanguage')
  | ('d' | 'points' | 'x' | 'y' | 'width' | 'height' | 'cx' | 'cy' | 'r' | 'rx' | 'ry')
  | ('x1' | 'y1' | 'x2' | 'y2');

export interface SvgElement {
  /** Its local name where it is of SVG; else with its prefix and a colon: `sodipodi:namedview`, `:div`. */
  readonly name: string;
  readonly attributes: Readonly<Partial<Record<SvgAttribute, string>>>;
  readonly children: readonly SvgElement[];
  /** Kept of style sheets only. */
  readonly text: string;
  /** Line of the file, from 1. */
  readonly line: number;
  /** Where its tag starts in the file, characters from 0. */
  readonly at: number;
}

/** What is wrong with an attribute, and where in it, characters from 0. */
export interface AttributeFlaw {
  readonly attribute: SvgAttribute;
  readonly at?: number;
  readonly expected: string;
  readonly found: string;
  readonly hint?: string;
}

export type Taken<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly flaws: readonly AttributeFlaw[] };

export const taken = <T>(value: T): Taken<T> => ({ ok: true, value });

/** What stands in the file, cut short. */
export function quoted(text: string): string {
  const words = text.trim().replace(/\s+/g, ' ');
  if (words === '') return 'nothing';
  return words.length > 32 ? `"${words.slice(0, 32)}…"` : `"${words}"`;
}
