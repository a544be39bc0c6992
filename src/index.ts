/** The one public door of the library. */
export { checkChair, checkDesign, type CheckResult } from './check-design.js';
export { buildChair, type BuiltChair } from './chair/build-chair.js';
export type { Chair, ChairPart } from './chair/chair.js';
export type { JudgedLimit, Verdict } from './checks/verdict.js';
export type { DesignInSI } from './design/design.js';
export { describeIssue, type Checked, type Issue } from './design/issue.js';
export { readDesign, type Design } from './design/read-design.js';
export { resolveDesign } from './design/resolve.js';
export type { Point } from './geometry/point.js';
export type { MassProperties } from './mass.js';
export { loads, measures, type ChairKind, type LoadId, type MeasureKey } from './names.js';
export type { Missing, OrMissing } from './numeric/missing.js';
export { printJson, reportJson } from './report/json.js';
export type { ReportObject } from './report/schema.js';
export type { TextSettings } from './report/text-settings.js';
export { printText } from './report/text.js';
export { tool } from './report/tool.js';
