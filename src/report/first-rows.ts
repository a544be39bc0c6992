/** The rows of the first screen: what the sitter feels, and what is left. */
import type { Chair } from '../chair/chair.js';
import type { MeasuredLoad } from '../checks/judge-loads.js';
import { rocksByItself } from '../measures/dying-away.js';
import { seatSlopeShifted, shift } from '../measures/sitting-shifted.js';
import type { MassProperties } from '../mass.js';
import type { MeasureKey } from '../names.js';
import type { LoadRecord } from '../measures/record.js';
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';
import { formatDegrees, formatKilograms, formatLength, formatNumber } from '../quantity/print.js';
import type { LengthUnit } from '../quantity/units.js';
import { sayValue } from './measure-words.js';

export interface Row {
  readonly label: string;
  /** null: this load has no such thing; a dash: it has no value. */
  readonly say: (load: MeasuredLoad, units: LengthUnit) => string | null;
  /** Why it has no value. */
  readonly why: (load: MeasuredLoad) => string;
}

const noValue = '-';
const because = (found: unknown): string => (isMissing(found) ? found.missing : '');

/** Why it shows a dash for this load; null where it shows none. */
export const whyDash = ({ say, why }: Row, load: MeasuredLoad, units: LengthUnit): string | null =>
  say(load, units) === noValue ? why(load) : null;

/** A measure that is missing shows as a dash; one that the load does not have is left empty. */
export const measureRow = (label: string, key: MeasureKey): Row => ({
  label,
  say: ({ measured }, units) => {
    const value = measured.get(key);
    if (value === undefined) return null;
    return isMissing(value) ? noValue : sayValue(key, value, units);
  },
  why: ({ measured }) => because(measured.get(key)),
});

/** No dash where the design does not give what the row is measured from: nobody asked for it. */
const where = (given: (chair: Chair) => boolean, row: Row): Row => ({
  ...row,
  say: (load, units) => {
    const said = row.say(load, units);
    return said === noValue && !given(load.record.chair) ? null : said;
  },
});

const slopeRange: Row = {
  label: '  sitting one inch back to one forward',
  say: ({ record }) => {
    if (record.load.person === null) return null;
    const ends = slopesShifted(record);
    return isMissing(ends) ? noValue : ends.map(formatDegrees).join(' to ');
  },
  why: ({ record }) => because(slopesShifted(record)),
};

/** Sitting back, then forward. */
function slopesShifted(record: LoadRecord): OrMissing<readonly number[]> {
  const [back, forward] = [seatSlopeShifted(record, -shift), seatSlopeShifted(record, shift)];
  if (isMissing(back)) return missing(`one inch back it ${back.missing}`);
  if (isMissing(forward)) return missing(`one inch forward it ${forward.missing}`);
  return [back, forward];
}

const perMinute: Row = {
  label: '  rocks a minute',
  say: ({ measured }) => {
    const period = measured.get('periodS');
    return period === undefined || isMissing(period) ? null : formatNumber(60 / period, 0);
  },
  why: () => '',
};

/** To half a rock: let go at 6° a chair on a rug hardly makes one. Without resistance it rocks on. */
const byItself: Row = {
  label: '  rocks by itself, until under 1°',
  say: ({ record }) => {
    const rocks = rocksByItself(record);
    if (isMissing(rocks)) return noValue;
    return Number.isFinite(rocks) ? formatNumber(Math.round(2 * rocks) / 2, 1) : 'rocks on';
  },
  why: ({ record }) => because(rocksByItself(record)),
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

const ofRolling = (label: string, say: (body: MassProperties, units: LengthUnit) => string): Row => ({
  label,
  say: ({ record }, units) => say(record.load.body, units),
  why: () => '',
});

/** What rolls: the chair and what rides on it, in its frame as drawn. */
export const rollingRows: readonly Row[] = [
  ofRolling('what rolls weighs', ({ mass }) => formatKilograms(mass)),
  ofRolling('its centre of gravity, x', ({ centre }, units) => formatLength(centre.x, units)),
  ofRolling('its centre of gravity, y', ({ centre }, units) => formatLength(centre.y, units)),
  ofRolling('its moment of inertia about that', ({ inertia }) => `${formatNumber(inertia)} kg m²`),
];
