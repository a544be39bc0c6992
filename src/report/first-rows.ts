/** The rows of the first screen: what the sitter feels, and what is left. */
import type { Chair } from '../chair/chair.js';
import { lengthAt } from '../geometry/profile.js';
import type { MeasuredLoad } from '../checks/judge-loads.js';
import { rocksByItself } from '../measures/dying-away.js';
import { seatSlopeShifted, shift } from '../measures/sitting-shifted.js';
import { backOverShoulder, kneeAngle } from '../measures/leg-and-back.js';
import type { MassProperties } from '../mass.js';
import type { LoadId, MeasureKey } from '../names.js';
import type { LoadRecord } from '../measures/record.js';
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';
import { formatDegrees, formatKilograms, formatLength, formatNumber } from '../quantity/print.js';
import type { LengthUnit } from '../quantity/units.js';
import { sayValue } from './measure-words.js';

export interface Row {
  readonly label: string;
  /** null: this load has no such thing; a dash: it has no value. `all`: the loads beside it. */
  readonly say: (load: MeasuredLoad, units: LengthUnit, all: readonly MeasuredLoad[]) => string | null;
  /** Why it has no value. */
  readonly why: (load: MeasuredLoad, all: readonly MeasuredLoad[]) => string;
}

const noValue = '-';
const goesOver = 'goes over';
const because = (found: unknown): string => (isMissing(found) ? found.missing : '');

/** Why it shows a dash for this load; null where it shows none. */
export const whyDash = (
  { say, why }: Row,
  load: MeasuredLoad,
  units: LengthUnit,
  all: readonly MeasuredLoad[],
): string | null => (say(load, units, all) === noValue ? why(load, all) : null);

/** A measure that is missing shows as a dash; one that the load does not have is left empty. */
export const measureRow = (label: string, key: MeasureKey): Row => ({
  label,
  say: ({ measured, record: { motion } }, units) => {
    const value = measured.get(key);
    if (value === undefined) return null;
    if (!isMissing(value)) return sayValue(key, value, units);
    return motion?.goesOver ? goesOver : noValue;
  },
  why: ({ measured }) => because(measured.get(key)),
});

/** No dash where the design does not give what the row is measured from: nobody asked for it. */
const where = (given: (chair: Chair) => boolean, row: Row): Row => ({
  ...row,
  say: (load, units, all) => {
    const said = row.say(load, units, all);
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

/** What the same sitter, with or without the child, does in a moving load. */
const partners = {
  leaning: { seated: 'leaning-back-hard', 'with-a-child': 'leaning-back-hard-with-a-child' },
  'getting up': { seated: 'getting-up', 'with-a-child': 'getting-up-with-a-child' },
} as const satisfies Record<string, Partial<Record<LoadId, LoadId>>>;

function partnerOf(
  does: keyof typeof partners,
  { record: { load } }: MeasuredLoad,
  all: readonly MeasuredLoad[],
): MeasuredLoad | undefined {
  const id = (partners[does] as Partial<Record<LoadId, LoadId>>)[load.id];
  return all.find(({ record }) => record.load.id === id && record.load.sitter === load.sitter);
}

/** A row of a moving load in the column of its sitter. */
const movingRow = (label: string, does: keyof typeof partners, read: Row): Row => ({
  label,
  say: (load, units, all) => {
    const partner = partnerOf(does, load, all);
    if (partner === undefined || partner.record.noRest !== null) return null;
    if (partner.record.motion?.goesOver) return goesOver;
    return read.say(partner, units, all);
  },
  why: (load, all) => {
    const partner = partnerOf(does, load, all);
    return partner === undefined ? '' : read.why(partner, all);
  },
});

const movingMeasure = (label: string, does: keyof typeof partners, key: MeasureKey): Row =>
  movingRow(label, does, measureRow(label, key));

const worstRow: Row = {
  label: '',
  say: ({ record }, units) => {
    const worst = record.worst();
    if (isMissing(worst)) return noValue;
    if (worst.farthest === Infinity) return goesOver;
    const { profile, surface } = record.chair;
    return formatLength(Math.max(0, surface.tail.length - lengthAt(profile, worst.farthest)), units);
  },
  why: ({ record }) => because(record.worst()),
};

export const leftRows: readonly Row[] = [
  movingMeasure('leaning back hard: rocker left', 'leaning', 'rockerLeftBackM'),
  movingMeasure('  left to the point of no return', 'leaning', 'leftToTipBackDeg'),
  movingRow('  rocker left, at the worst moment of a rock', 'leaning', worstRow),
  where(({ wall }) => wall !== null, movingMeasure('  left to the wall', 'leaning', 'wallClearanceM')),
  movingMeasure('getting up: rocker left ahead', 'getting up', 'rockerLeftForwardM'),
  movingMeasure('  kicks back as far as', 'getting up', 'kickBackDeg'),
  measureRow('at rest: to the point of no return, back', 'tipBackDeg'),
  measureRow('  to the point of no return, forward', 'tipForwardDeg'),
  where(({ spacing }) => spacing !== null, measureRow('  sideways, about', 'tipSidewaysDeg')),
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

/** Of the seated load alone: how legs and back lie. */
export const fitRows: readonly Row[] = [
  kneeRow('knee angle, at rest', () => 0),
  kneeRow('knee angle, at the back of a rock', (swing) => swing),
  kneeRow('knee angle, at the front of a rock', (swing) => -swing),
  {
    label: 'top of the back over the shoulder',
    say: ({ record: { chair, load } }, units) => {
      const over = load.person && backOverShoulder(chair, load.person);
      return over === null ? null : formatLength(over, units);
    },
    why: () => '',
  },
];

function kneeRow(label: string, from: (swing: number) => number): Row {
  return {
    label,
    say: ({ record: { chair, load, roll } }) => {
      const rest = roll.atRest?.rest.lean;
      if (!load.person || rest === undefined) return null;
      return formatDegrees(kneeAngle(chair, load.person, rest, rest + from(load.swing)));
    },
    why: () => '',
  };
}
