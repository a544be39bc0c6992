/**
 * ANSUR II 2012: percentiles and means worked out from the public data of 1986 women and 4082 men. Millimetres, kg.
 * `shoulderHeightSitting`: of each person acromial height - stature + sitting height.
 */
export interface Surveyed {
  readonly mean: number;
  readonly percentiles: Readonly<Record<1 | 5 | 25 | 50 | 75 | 95 | 99, number>>;
}

const of = (mean: number, ...p: [number, number, number, number, number, number, number]): Surveyed => ({
  mean,
  percentiles: { 1: p[0], 5: p[1], 25: p[2], 50: p[3], 75: p[4], 95: p[5], 99: p[6] },
});

// prettier-ignore
export const ansur2012 = {
  female: {
    stature: of(1628.47, 1482.5, 1525, 1586.2, 1626, 1672, 1740, 1777.6),
    mass: of(67.76, 46.7, 51.3, 60.1, 66.8, 74.6, 87.1, 97.5),
    sittingHeight: of(856.63, 784, 803, 834, 857, 879, 912, 932.2),
    shoulderHeightSitting: of(563.25, 500.9, 515.2, 544, 564, 582, 609, 628.2),
    kneeHollow: of(388.2, 336, 350, 373, 387, 403, 428, 445),
    buttockToKneeHollow: of(485.12, 419, 441, 466, 483, 503, 535, 557),
    buttockToKnee: of(590.59, 519, 541, 569, 589, 610, 646, 672.2),
    elbowAboveSeat: of(232.42, 172.8, 189, 215, 233, 251, 275.8, 291.3),
    kneecapHeight: of(449.05, 390, 408, 432, 448, 466, 493, 513.2),
  },
  male: {
    stature: of(1756.21, 1601.6, 1648, 1710, 1755, 1802, 1870, 1927),
    mass: of(85.52, 57.8, 64.4, 75.6, 84.6, 94.4, 110.7, 124.2),
    sittingHeight: of(918.29, 835.8, 860, 894.2, 918, 943, 977, 1001.2),
    shoulderHeightSitting: of(602.81, 530.8, 552, 582, 603, 624, 653, 676),
    kneeHollow: of(429.8, 374, 390, 413, 430, 447, 471, 491),
    buttockToKneeHollow: of(502.92, 443, 459, 484.2, 502, 522, 548, 568),
    buttockToKnee: of(617.95, 550.8, 569, 597, 617, 639, 669, 692),
    elbowAboveSeat: of(245.04, 176, 197, 226, 246, 265, 291, 308.2),
    kneecapHeight: of(488.39, 428, 443.1, 469, 487, 507, 536, 556.2),
  },
} as const;
