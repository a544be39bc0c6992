/**
 * Periods of small rocking of textbook bodies, and the rocking block of G. W. Housner (The behavior of inverted
 * pendulum structures during earthquakes, Bull. Seism. Soc. Am. 53, 1963, 403-417).
 */
import { standardGravity as g } from './round-runner.js';

/** Uniform half disc or half cylinder on its round side (textbooks of vibration). */
export const halfDiscPeriod = (r: number): number =>
  2 * Math.PI * Math.sqrt(((9 * Math.PI - 16) * r) / (8 * g));

/** Thin half hoop (textbooks of vibration). */
export const halfHoopPeriod = (r: number): number => 2 * Math.PI * Math.sqrt(((Math.PI - 2) * r) / g);

/** Solid hemisphere (textbooks of vibration). */
export const hemispherePeriod = (r: number): number => 2 * Math.PI * Math.sqrt((26 * r) / (15 * g));

/** A massless disc of radius R with a point mass a distance r from its centre. */
export const pointMassPeriod = (R: number, r: number): number => (2 * Math.PI * (R - r)) / Math.sqrt(g * r);

/** p² = 3 g / (4 r), r half the diagonal of a uniform rectangular block. */
export const blockRate = (halfDiagonal: number): number => Math.sqrt((3 * g) / (4 * halfDiagonal));

/** A quarter of Housner's period: from θ₀ to upright, share = θ₀/α; the limit of a slender block. */
export const quarterPeriodOfBlock = (halfDiagonal: number, share: number): number =>
  Math.acosh(1 / (1 - share)) / blockRate(halfDiagonal);

/** Speed after over before the impact on the base, α the angle between diagonal and side: exact. */
export const blockSpeedRatio = (alpha: number): number => 1 - 1.5 * Math.sin(alpha) ** 2;
