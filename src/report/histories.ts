/** What moves in each moving load, moment by moment: JSON, or a table for a spreadsheet (CSV, RFC 4180). */
import type { CheckResult } from '../check-design.js';
import { lengthAt } from '../geometry/profile.js';
import { historyOf } from '../rolling/history.js';
import { inCsv } from './csv.js';
import { rounded } from './rounded.js';
import { tool } from './tool.js';

/** A hundredth of a second: a curve through them is smooth to the eye. */
const interval = 0.01;

const degrees = (radians: number): number => rounded((radians * 180) / Math.PI);

function historiesOf({ loads }: CheckResult) {
  return loads.flatMap(({ record: { load, motion, chair, roll } }) => {
    if (motion === null) return [];
    const settled = roll.atRest?.rest.lean ?? 0;
    return [
      {
        load: load.id,
        sitter: load.sitter,
        goesOver: motion.goesOver,
        leavesFloor: motion.run.leavesFloor,
        moments: historyOf(motion.course, motion.run, interval).map(
          ({ time, lean, rate, floorForce, friction }) => ({
            timeS: rounded(time),
            leanDeg: degrees(lean),
            leanFromRestDeg: degrees(lean - settled),
            rateDegPerS: degrees(rate),
            contactFromTailM: rounded(chair.surface.tail.length - lengthAt(chair.profile, lean)),
            floorForceRatio: rounded(floorForce),
            frictionRatio: rounded(friction),
          }),
        ),
      },
    ];
  });
}

export const historiesJson = (results: readonly CheckResult[]): string => {
  const all = results.map((result) => ({
    historyVersion: 1,
    tool,
    design: { name: result.design.name, file: result.file },
    histories: historiesOf(result),
  }));
  return `${JSON.stringify(all.length === 1 ? all[0] : all, null, 2)}\n`;
};

const columns = [
  'timeS',
  'leanDeg',
  'leanFromRestDeg',
  'rateDegPerS',
  'contactFromTailM',
  'floorForceRatio',
  'frictionRatio',
] as const;

export function historiesCsv(results: readonly CheckResult[]): string {
  const rows = results.flatMap((result) =>
    historiesOf(result).flatMap(({ load, sitter, moments }) =>
      moments.map((moment) => [
        result.file,
        load,
        sitter ?? '',
        ...columns.map((key) => String(moment[key])),
      ]),
    ),
  );
  return [['file', 'load', 'sitter', ...columns], ...rows]
    .map((row) => `${row.map(inCsv).join(',')}\r\n`)
    .join('');
}
