/** What was made of lines that were a curve. */
export interface Smoothing {
  /** Lines that became part of arcs and curves. */
  readonly lines: number;
  readonly arcs: number;
  readonly curves: number;
  /** How far what was made lies from the lines at most, metres. */
  readonly off: number;
  /** By what share of itself a radius may be wrong. */
  readonly radius: number;
  /** Lines in rows that look like a curve and could not be made one so accurately. */
  readonly left: number;
}

export const nothingSmoothed: Smoothing = {
  lines: 0,
  arcs: 0,
  curves: 0,
  off: 0,
  radius: 0,
  left: 0,
};

export const allSmoothed = (all: readonly Smoothing[]): Smoothing =>
  all.reduce(
    (sum, one) => ({
      lines: sum.lines + one.lines,
      arcs: sum.arcs + one.arcs,
      curves: sum.curves + one.curves,
      off: Math.max(sum.off, one.off),
      radius: Math.max(sum.radius, one.radius),
      left: sum.left + one.left,
    }),
    nothingSmoothed,
  );
