/** What $INSUNITS means (Autodesk’s DXF reference, from memory but for 1, 4, 5 and 6): metres a drawing unit. */
const metres: Readonly<Record<number, number>> = {
  1: 0.0254,
  2: 0.3048,
  4: 1e-3,
  5: 1e-2,
  6: 1,
  7: 1e3,
  8: 2.54e-8,
  9: 2.54e-5,
  10: 0.9144,
  13: 1e-6,
  14: 0.1,
};

/** Null: 0, and what is no length, declare nothing. */
export const metresOfUnit = (code: number): number | null => metres[code] ?? null;
