import type { CheckResult } from '../check-design.js';

/** A checked design and where it came from. */
export interface ReportedDesign {
  readonly result: CheckResult;
  /** Digest of the file's bytes, hexadecimal; null when there is no file. */
  readonly sha256: string | null;
}
