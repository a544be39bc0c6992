/** What to mind of the loads that throw people: beside the limits, for this design. */
import type { CheckResult } from '../check-design.js';
import type { MeasuredLoad } from '../checks/judge-loads.js';
import { fingerGaps, pinchWedge } from '../measures/pinch-wedge.js';
import { lengthAt } from '../geometry/profile.js';
import { isMissing } from '../numeric/missing.js';
import { formatDegrees, formatKilograms, formatLength, formatNumber } from '../quantity/print.js';
import { whoOf } from './measure-words.js';

export const movingCautions = (result: CheckResult): string[] => [
  ...onTheTails(result),
  ...littleLeft(result),
  ...worstMoments(result),
  ...slides(result),
  ...fingers(result),
];

function onTheTails({ loads }: CheckResult): string[] {
  return loads.flatMap(({ record: { load, motion }, measured }) => {
    if (load.script?.kind !== 'child-on-the-tails' || !motion?.goesOver) return [];
    const borne = measured.get('tailLoadBorneKg');
    const most =
      typeof borne === 'number' ? `: the tails bear ${formatKilograms(borne)} put there at once` : '';
    return [`A child who steps on the tails of the empty chair tips it over backwards${most}.`];
  });
}

/** Of rocker left behind the touch in a hard lean, less than this many times the limit is little (common practice, no source). */
const plenty = 1.5;

function littleLeft({ limits, design }: CheckResult): string[] {
  return limits.flatMap(({ measure, range, value, verdict, load, sitter }) => {
    if (measure !== 'rockerLeftBackM' || verdict !== 'pass' || value === null || range.min === null)
      return [];
    if (value >= plenty * range.min) return [];
    return [
      `${whoOf(load, sitter)}: only ${formatLength(value, design.units)} of rocker is left behind the touch.`,
    ];
  });
}

/** A hard lean begun in the middle of a rock, when that takes more than the limits leave. */
function worstMoments({ loads, limits, design }: CheckResult): string[] {
  return leans(loads).flatMap(({ record }) => {
    const { load, chair, motion } = record;
    const worst = record.worst();
    if (isMissing(worst) || motion?.goesOver) return [];
    const who = whoOf(load.id, load.sitter);
    const swing = formatDegrees(load.swing);
    if (worst.farthest === Infinity)
      return [
        `${who}: begun at the worst moment of a ${swing} rock, the same shove takes the chair over backwards.`,
      ];
    const left = Math.max(0, chair.surface.tail.length - lengthAt(chair.profile, worst.farthest));
    const least = limits.find(
      (one) => one.measure === 'rockerLeftBackM' && one.load === load.id && one.sitter === load.sitter,
    )?.range.min;
    if (least === undefined || least === null || left >= least) return [];
    return [
      `${who}: begun at the worst moment of a ${swing} rock, the same shove leaves ${formatLength(left, design.units)} of rocker.`,
    ];
  });
}

const leans = (loads: readonly MeasuredLoad[]): MeasuredLoad[] =>
  loads.filter(({ record }) => record.load.script?.kind === 'leaning-back-hard');

/** A hard lean asks for 0.16 to 0.27 on any chair: no limit, but a slide when the floor gives less. */
function slides({ loads, design: { floor } }: CheckResult): string[] {
  const asked = leans(loads).flatMap(({ measured }) => {
    const demand = measured.get('frictionDemand');
    return typeof demand === 'number' && demand > floor.friction ? [demand] : [];
  });
  if (asked.length === 0) return [];
  return [
    `Leaning back hard asks the floor for a friction of up to ${formatNumber(Math.max(...asked))}; ` +
      `${floor.name ?? 'this floor'} gives ${formatNumber(floor.friction)}: the chair slides.`,
  ];
}

/** Of the first sitter, or the empty chair. */
function fingers({ loads, chair, design: { units } }: CheckResult): string[] {
  const of =
    loads.find(({ record }) => record.load.id === 'seated') ??
    loads.find(({ record }) => record.load.id === 'empty');
  const rest = of?.record.roll.atRest?.rest;
  const wedge = rest && pinchWedge(chair, rest.lean);
  if (!wedge) return [];
  const say = (length: number): string => formatLength(length, units);
  return [
    `Under the tails, from ${say(wedge.from)} to ${say(wedge.to)} behind the place where the chair touches, the gap is that of a finger ` +
      `(${say(fingerGaps.least)} to ${say(fingerGaps.most)}, as published for moving parts of furniture) and closes as it rocks.`,
  ];
}
