/** Two checked designs and what moved between them: what the reports of a comparison read. */
import type { Comparison } from '../checks/compare.js';
import type { ReportedDesign } from './reported-design.js';

export interface Compared {
  readonly old: ReportedDesign;
  readonly new: ReportedDesign;
  readonly comparison: Comparison;
}
