/**
 * The whole story on one page: text → Design → Chair → motion → measures → verdicts.
 * Reports read its result.
 */
import type { Chair } from './chair/chair.js';
import { judgeLoads, type MeasuredLoad } from './checks/judge-loads.js';
import { limitsOf } from './checks/limit.js';
import type { Opinions } from './checks/second-calculation.js';
import { seatedFigures } from './checks/seated-figures.js';
import { worst, type JudgedLimit, type Verdict } from './checks/verdict.js';
import { allAgree } from './contact/second-opinion.js';
import type { DesignInSI } from './design/design.js';
import type { Checked } from './design/issue.js';
import type { DrawingFiles } from './design/drawing-files.js';
import { readDesign } from './design/read-design.js';
import { designBuilder } from './explore/design-function.js';
import { remediesFor, type Remedies, type RemedySettings } from './explore/remedies.js';
import { mostDelicate, type Delicate } from './explore/most-delicate.js';
import { unsmoothed, type Unsmoothed } from './explore/unsmoothed.js';
import { once } from './kept.js';
import { loadsOf, whyNotRolled } from './loads/loads-of.js';
import type { People } from './loads/people.js';
import { measureLoad } from './measures/catalogue.js';
import { rollLoads } from './measures/record.js';

export interface CheckResult {
  /** As typed. */
  readonly file: string;
  readonly design: DesignInSI;
  readonly chair: Chair;
  readonly people: People;
  readonly loads: readonly MeasuredLoad[];
  readonly limits: readonly JudgedLimit[];
  readonly verdict: Verdict;
  /** What a second calculation says of loads, where it was asked for (`withSecondOpinion`); null: none was made. */
  readonly opinions: Opinions | null;
  /** What to change for each limit that is not met, where that was asked for (`withRemedies`). */
  readonly remedies: Remedies;
  /** The sizes that use up a limit first; none for values other than the file’s. Worked out when it is asked for. */
  readonly delicate: () => readonly Delicate[];
  /** Empty, and with the first sitter, with lines of drawings left as lines; none where none became curves. Worked out alike. */
  readonly unsmoothed: () => readonly Unsmoothed[];
}

/** As many as the first screen has lines for. */
const mostTold = 2;

/**
 * Checks one design.
 * @param text the design file, YAML 1.2 or JSON
 * @param file its name, for messages
 * @param values named dimensions to use in place of the file's own, SI
 * @param drawings the drawing files that it names, by those names
 */
export function checkDesign(
  text: string,
  file: string,
  values?: ReadonlyMap<string, number>,
  drawings?: DrawingFiles,
): Checked<CheckResult> {
  const read = readDesign(text, file, drawings);
  if (!read.ok) return read;
  const built = designBuilder(read.value)(values);
  if (!built.ok) return built;
  const delicate = (): readonly Delicate[] => (values ? [] : mostDelicate(read.value, mostTold));
  const { design, chair, people } = built;
  const asLines = once(() => unsmoothed(read.value, chair, values));
  return { ok: true, value: { file, ...checkChair(design, chair, people), delicate, unsmoothed: asLines } };
}

/** The same from numbers on: rolls the chair under every load and judges every limit. */
export function checkChair(
  design: DesignInSI,
  chair: Chair,
  people: People,
): Omit<CheckResult, 'file' | 'delicate' | 'unsmoothed'> {
  const loads = rollLoads(chair, loadsOf(design, chair, people), design.floor.rolling).map((record) => ({
    record,
    measured: measureLoad(record),
  }));
  const limits = judgeLoads(
    limitsOf(design, people, seatedFigures(loads)),
    loads,
    whyNotRolled(design, people),
  );
  const verdict = worst(limits.map((limit) => limit.verdict));
  return { design, chair, people, loads, limits, verdict, opinions: null, remedies: new Map() };
}

/**
 * The empty chair, and the first sitter’s loads, calculated a second time by other means: where the two calculations
 * disagree, all limits are unknown.
 */
export async function withSecondOpinion(result: CheckResult): Promise<CheckResult> {
  // The contact engine is loaded only where it is wanted.
  const { secondOpinions, trusted } = await import('./checks/second-calculation.js');
  const { design, loads, people } = result;
  const records = loads.map(({ record }) => record);
  const opinions = secondOpinions(records, design.floor.friction, people.persons[0]?.name ?? null);
  const limits = trusted(result.limits, opinions);
  return { ...result, opinions, limits, verdict: allAgree(opinions.values()) ? result.verdict : 'unknown' };
}

/**
 * What to change, and by how much, so that the limits that are not met are.
 * @param text of the design file, read without a mistake before
 * @param stage what of the chair can still be changed
 * @throws RangeError when the text is another
 */
export function withRemedies(
  result: CheckResult,
  text: string,
  settings: RemedySettings,
  drawings?: DrawingFiles,
): CheckResult {
  if (result.verdict !== 'fail') return result;
  const read = readDesign(text, result.file, drawings);
  if (!read.ok) throw new RangeError(`withRemedies: ${result.file} reads differently a second time`);
  return { ...result, remedies: remediesFor(read.value, result.limits, settings) };
}
