/** The one public door of the library. */
export {
  checkChair,
  checkDesign,
  withRemedies,
  withSecondOpinion,
  type CheckResult,
} from './check-design.js';
export { alteredChair, type AlteredChair } from './chair/altered-chair.js';
export { buildChair, type BuiltChair } from './chair/build-chair.js';
export type { Chair, ChairPart } from './chair/chair.js';
export type { JudgedLimit, Verdict } from './checks/verdict.js';
export type { DesignInSI } from './design/design.js';
export { describeIssue, type Checked, type Issue } from './design/issue.js';
export { readDesign, type Design } from './design/read-design.js';
export { resolveDesign } from './design/resolve.js';
export { loadsOf } from './loads/loads-of.js';
export { seatPeople, type People, type Seated } from './loads/people.js';
export type { Point } from './geometry/point.js';
export type { MassProperties } from './mass.js';
export { readDrawing } from './drawing/read/read-drawing.js';
export { adjust, type Adjusted } from './explore/adjust.js';
export type { AdjustRequest } from './explore/adjust-request.js';
export { toleranceOf, type Tolerance, type ToleranceSettings } from './explore/tolerance.js';
export { compileSweep, type Sweep, type SweepRequest, type SweepRow } from './explore/sweep.js';
export { loads, measures, type ChairKind, type LoadId, type MeasureKey } from './names.js';
export type { Missing, OrMissing } from './numeric/missing.js';
export { compareDesigns } from './checks/compare.js';
export { printJson, reportJson } from './report/json.js';
export { printJunit } from './report/junit.js';
export { printMarkdown } from './report/markdown.js';
export type { ReportedDesign } from './report/reported-design.js';
export type { ReportObject } from './report/schema.js';
export type { TextSettings } from './report/text-settings.js';
export { printText } from './report/text.js';
export { tool } from './report/tool.js';
export { fromDrawing, type FromDrawing, type FromDrawingRequest } from './starter/from-drawing.js';
export { printFromDrawing, type DesignNames } from './starter/from-drawing-text.js';
export { starter, type Starter, type StarterRequest } from './starter/starter.js';
