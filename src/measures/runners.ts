/** The shape of the running surface, whatever rides on it. */
import type { Measure } from './record.js';

/** Rests of the empty chair with the contact on the running surface. */
export const restCount: Measure = ({ roll }) => roll.restsOnSurface.length;
export const flatLongest: Measure = ({ chair }) => chair.surfaceShape.flatLongest;
export const sharpestCorner: Measure = ({ chair }) => chair.surfaceShape.sharpestCorner;
export const radiusJump: Measure = ({ chair }) => chair.surfaceShape.radiusJump;
