/** Why a number is not there: refuse, never substitute. */
export interface Missing {
  readonly missing: string;
  /** There is nothing to judge: what it takes was not given, or there is no such thing. Else it should be there and is not. */
  readonly beside?: true;
}

/** A value, or the reason why there is none. */
export type OrMissing<T> = T | Missing;

export const missing = (reason: string): Missing => ({ missing: reason });

/** Of what was not given, or of a thing that is not there to be measured. */
export const missingBeside = (reason: string): Missing => ({ missing: reason, beside: true });

export function isMissing(value: unknown): value is Missing {
  return typeof value === 'object' && value !== null && 'missing' in value;
}
