/** Length of a flat in words, for reasons: whole millimetres; below one the first digit that is not zero. */
export function flatLength(metres: number): string {
  const length = metres * 1000;
  return `${length < 1 ? length.toPrecision(1) : length.toFixed(0)} mm`;
}
