/** Centres of gravity and moments of inertia of living people, seated. SI. */

/**
 * Three men on a compound pendulum, thighs raised: read in a table of the appendix of a body-dynamics textbook. `ahead`:
 * of the plane of the back; `belowCrown`: of the top of the head; `inertia`: in pitch.
 */
export const foldedMen = [
  { mass: 78.7, stature: 1.8339, ahead: 0.196, belowCrown: 0.607, inertia: 4.214 },
  { mass: 66.81, stature: 1.712, ahead: 0.179, belowCrown: 0.551, inertia: 3.435 },
  { mass: 92.08, stature: 1.8618, ahead: 0.197, belowCrown: 0.594, inertia: 4.734 },
] as const;

/** UMTRI, laser scans of 315 men sitting at ease: of about 77 kg, ahead of the back of the buttocks. Read: abstract. */
export const seatedScan = { mass: 77, ahead: 0.22 } as const;

/**
 * Means of 66 men, Santschi, DuBois and Omoto 1963, AMRL-TDR-63-36: values **from memory**, their mass and stature too.
 * To be printed beside the model's, never asserted.
 */
export const fromMemory = [
  { posture: 'sitting', thighsRaisedDeg: 0, ahead: 0.201, belowCrown: 0.673, inertia: 7.525 },
  {
    posture: 'sitting, thighs elevated',
    thighsRaisedDeg: 50,
    ahead: 0.183,
    belowCrown: 0.587,
    inertia: 4.293,
  },
] as const;
export const meanManFromMemory = { mass: 75.5, stature: 1.763 } as const;
