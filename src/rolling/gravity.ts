/** Standard gravity, m/s², exact (3rd CGPM, 1901). */
export const g = 9.80665;
