/** The JSON of an adjustment: the same for the same input. */
import { overAmong } from '../checks/goes-over.js';
import type { Adjusted, Setting } from '../explore/adjust.js';
import { measureIn } from '../explore/judge.js';
import { jsonFactor } from '../names.js';
import type { AdjustmentObject, SettingObject } from './adjust-schema.js';
import { rounded } from './rounded.js';
import { tool } from './tool.js';
import { unitOf } from './variable-words.js';

/** An adjustment of one file. */
export interface ReportedAdjustment {
  readonly file: string;
  readonly sha256: string | null;
  readonly adjusted: Adjusted;
}

export function adjustmentJson({ file, sha256, adjusted }: ReportedAdjustment): AdjustmentObject {
  const { stated, before, targets, by, solutions, closest, reach, jumps, idle } = adjusted;
  const { name, kind, units } = stated.design;
  const inUnits = by.map(({ variable }) => unitOf(variable, units));
  const [scale] = targets.map(({ asked }) => jsonFactor(asked.measure));
  return {
    adjustmentVersion: 1,
    tool,
    design: { name, file, sha256, kind },
    targets: targets.map(({ asked, value }) => {
      const factor = jsonFactor(asked.measure);
      const now = measureIn(before, asked);
      const { load, measure, sitter } = asked;
      return {
        load,
        measure,
        sitter,
        target: rounded(value * factor),
        stated: now === null ? null : rounded(now * factor),
      };
    }),
    by: by.map(({ variable, least, greatest }, i) => {
      const { unit, factor } = inUnits[i]!;
      const told = (size: number): number => rounded(size / factor);
      return {
        dimension: variable.name,
        unit,
        from: told(variable.stated),
        least: told(least),
        greatest: told(greatest),
      };
    }),
    solutions: solutions.map((setting) => settingObjectOf(setting, adjusted)),
    closest: closest && settingObjectOf(closest, adjusted),
    reach: reach && [rounded(reach[0] * (scale ?? 1)), rounded(reach[1] * (scale ?? 1))],
    jumps: jumps.map((x) => rounded(x / inUnits[0]!.factor)),
    idle: idle.map(({ variable }) => variable.name),
  };
}

export function settingObjectOf(
  { exact, rounded: sizes, measures, judgement }: Setting,
  { stated, before, by, targets }: Adjusted,
): SettingObject {
  const limits = judgement?.limits ?? [];
  const then = new Map(limits.map(({ id, verdict }) => [id, verdict]));
  const now = new Map(before.limits.map(({ id, verdict }) => [id, verdict]));
  const notMet = limits.filter(({ verdict }) => verdict !== 'pass').map(({ id }) => id);
  return {
    values: by.map(({ variable }, i) => {
      const { factor } = unitOf(variable, stated.design.units);
      return { exact: exact && rounded(exact[i]! / factor), to: rounded(sizes[i]! / factor) };
    }),
    measures: measures.map((value, i) =>
      value === null ? null : rounded(value * jsonFactor(targets[i]!.asked.measure)),
    ),
    // Nothing that is judged is nothing that is met.
    verdict: judgement === null || limits.length === 0 ? 'unknown' : judgement.verdict,
    goesOver: judgement ? overAmong(judgement.loads) : [],
    notMet,
    broken: notMet.filter((id) => now.get(id) === 'pass'),
    // Of a chair that comes to rest the limit that it does is not judged at all.
    mended: [...now]
      .filter(([id, verdict]) => verdict !== 'pass' && (then.get(id) ?? 'pass') === 'pass')
      .map(([id]) => id),
  };
}

/** As printed; ends with a line feed. */
export const printAdjustmentJson = (reported: ReportedAdjustment): string =>
  `${JSON.stringify(adjustmentJson(reported), null, 2)}\n`;
