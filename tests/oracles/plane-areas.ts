/**
 * Area, centroid and polar second moment about the centroid of plane areas, in closed form as the handbooks of
 * mechanics print them (tables of centroids and second moments of common shapes; from memory, held to each other and
 * to fine polygons in plane-areas.test.ts).
 */
import type { AreaMoments } from '../../src/geometry/area-moments.js';

const { sin, cos, PI } = Math;

/** Lower left corner at the origin: b h, (b/2, h/2), b h (b² + h²) / 12. */
export const rectangleArea = (b: number, h: number): AreaMoments => ({
  area: b * h,
  centroid: { x: b / 2, y: h / 2 },
  polar: (b * h * (b * b + h * h)) / 12,
});

/** Right angle at the origin, legs b along x and h along y: b h / 2, (b/3, h/3), b h (b² + h²) / 36. */
export const rightTriangle = (b: number, h: number): AreaMoments => ({
  area: (b * h) / 2,
  centroid: { x: b / 3, y: h / 3 },
  polar: (b * h * (b * b + h * h)) / 36,
});

/** Centre at the origin: π a b, π a b (a² + b²) / 4; a circle with a = b. */
export const ellipseArea = (a: number, b: number): AreaMoments => ({
  area: PI * a * b,
  centroid: { x: 0, y: 0 },
  polar: (PI * a * b * (a * a + b * b)) / 4,
});

/** Centre at the origin: π (R² - r²), π (R⁴ - r⁴) / 2. */
export const annulusArea = (outer: number, inner: number): AreaMoments => ({
  area: PI * (outer ** 2 - inner ** 2),
  centroid: { x: 0, y: 0 },
  polar: (PI * (outer ** 4 - inner ** 4)) / 2,
});

/** Upper half, centre at the origin: π r² / 2, 4 r / 3π up, r⁴ (π/4 - 8/9π). */
export const halfDisc = (r: number): AreaMoments => ({
  area: (PI * r * r) / 2,
  centroid: { x: 0, y: (4 * r) / (3 * PI) },
  polar: r ** 4 * (PI / 4 - 8 / (9 * PI)),
});

/** First quarter, centre at the origin: π a b / 4, (4a, 4b) / 3π, a b (a² + b²) (π/16 - 4/9π). */
export const quarterEllipse = (a: number, b: number): AreaMoments => ({
  area: (PI * a * b) / 4,
  centroid: { x: (4 * a) / (3 * PI), y: (4 * b) / (3 * PI) },
  polar: a * b * (a * a + b * b) * (PI / 16 - 4 / (9 * PI)),
});

/** About the x axis, half angle α: r² α, 2 r sin α / 3α, r⁴ (α/2 - 4 sin² α / 9α). */
export const sectorArea = (r: number, alpha: number): AreaMoments => ({
  area: r * r * alpha,
  centroid: { x: (2 * r * sin(alpha)) / (3 * alpha), y: 0 },
  polar: r ** 4 * (alpha / 2 - (4 * sin(alpha) ** 2) / (9 * alpha)),
});

/** About the x axis, half angle α: (R² - r²) α, 2 (R³ - r³) sin α / 3 (R² - r²) α, (R⁴ - r⁴) α / 2 less A x². */
export function annularSector(outer: number, inner: number, alpha: number): AreaMoments {
  const area = (outer ** 2 - inner ** 2) * alpha;
  const x = (2 * (outer ** 3 - inner ** 3) * sin(alpha)) / (3 * (outer ** 2 - inner ** 2) * alpha);
  return { area, centroid: { x, y: 0 }, polar: ((outer ** 4 - inner ** 4) * alpha) / 2 - area * x * x };
}

/**
 * About the x axis, half angle α: r² (α - sin α cos α), 2 r³ sin³ α / 3A,
 * I_x = r⁴ (3α - 3 sin α cos α - 2 sin³ α cos α) / 12, I_y = r⁴ (α - sin α cos α + 2 sin³ α cos α) / 4 about the centre.
 * Loses digits as ε / α⁴ where the arc is shallow.
 */
export function segmentArea(r: number, alpha: number): AreaMoments {
  const [s, c] = [sin(alpha), cos(alpha)];
  const area = r * r * (alpha - s * c);
  const x = (2 * r ** 3 * s ** 3) / (3 * area);
  const aboutX = (r ** 4 * (3 * alpha - 3 * s * c - 2 * s ** 3 * c)) / 12;
  const aboutY = (r ** 4 * (alpha - s * c + 2 * s ** 3 * c)) / 4;
  return { area, centroid: { x, y: 0 }, polar: aboutX + aboutY - area * x * x };
}

/** Between y = 0 and y = h (1 - x²/a²): 4 a h / 3, 2 h / 5 up, I_y = 4 a³ h / 15, I_x = 32 a h³ / 105 about y = 0. */
export const parabolicSegment = (a: number, h: number): AreaMoments => ({
  area: (4 * a * h) / 3,
  centroid: { x: 0, y: (2 * h) / 5 },
  polar: (4 * a ** 3 * h) / 15 + (32 * a * h ** 3) / 105 - ((4 * a * h) / 3) * ((2 * h) / 5) ** 2,
});
