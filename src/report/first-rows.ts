/** The rows of the first screen: what the sitter feels, and what is left. */
import type { Chair } from '../chair/chair.js';
import type { MeasuredLoad } from '../checks/judge-loads.js';
import { rocksByItself } from '../measures/dying-away.js';
import { seatSlopeShifted, shift } from '../measures/sitting-shifted.js';
import type { MeasureKey } from '../names.js';
import { isMissing, type OrMissing } from '../numeric/missing.js';
import { formatDegrees, formatNumber } from '../quantity/print.js';
import type { LengthUnit } from '../quantity/units.js';
import { sayValue } from './measure-words.js';

export interface Row {
  readonly label: string;
  /** null: this load has no such thing. */
  readonly say: (load: MeasuredLoad, units: LengthUnit) => string | null;
}

/** A measure that is missing shows as a dash; one that the load does not have is left empty. */
export const measureRow = (label: string, key: MeasureKey): Row => ({
  label,
  say: ({ measured }, units) => {
    const value = measured.get(key);
    if (value === undefined) return null;
    return isMissing(value) ? '-' : sayValue(key, value, units);
  },
});

/** No dash where the design does not give what the row is measured from: nobody asked for it. */
const where = (given: (chair: Chair) => boolean, row: Row): Row => ({
  label: row.label,
  say: (load, units) => {
    const said = row.say(load, units);
    return said === '-' && !given(load.record.chair) ? null : said;
  },
});

const slopeRange: Row = {
  label: '  sitting one inch back to one forward',
  say: ({ record }) => {
    if (record.load.person === null) return null;
    const ends = [-shift, shift].map((by) => seatSlopeShifted(record, by));
    return ends.some(isMissing) ? '-' : ends.map(sayAngle).join(' to ');
  },
};

const sayAngle = (angle: OrMissing<number>): string => (isMissing(angle) ? '-' : formatDegrees(angle));

const perMinute: Row = {
  label: '  rocks a minute',
  say: ({ measured }) => {
    const period = measured.get('periodS');
    return period === undefined || isMissing(period) ? null : formatNumber(60 / period, 0);
  },
};

/** To half a rock: let go at 6° a chair on a rug hardly makes one. Without resistance it rocks on. */
const byItself: Row = {
  label: '  rocks by itself, let go, until under 1°',
  say: ({ record }) => {
    const rocks = rocksByItself(record);
    if (isMissing(rocks)) return '-';
    return Number.isFinite(rocks) ? formatNumber(Math.round(2 * rocks) / 2, 1) : 'rocks on';
  },
};

/** What the sitter feels, in a maker's order. */
export const feelingRows: readonly Row[] = [
  where(({ seat }) => seat !== null, measureRow('seat slope, front higher', 'seatSlopeDeg')),
  slopeRange,
  where(({ back }) => back !== null, measureRow('back off plumb', 'backAngleDeg')),
  measureRow('one full rock, there and back', 'periodS'),
  perMinute,
  byItself,
  measureRow('touches the floor, from the tail end', 'touchFromTailM'),
  measureRow('front edge of the seat over the floor', 'seatFrontHeightM'),
];

export const leftRows: readonly Row[] = [
  measureRow('to the tail end of the rockers', 'rockerEndBackDeg'),
  measureRow('to the nose end of the rockers', 'rockerEndForwardDeg'),
  measureRow('to the point of no return, back', 'tipBackDeg'),
  measureRow('to the point of no return, forward', 'tipForwardDeg'),
  where(({ spacing }) => spacing !== null, measureRow('sideways, about', 'tipSidewaysDeg')),
  where(({ wall }) => wall !== null, measureRow('to the wall behind', 'wallClearanceM')),
];
