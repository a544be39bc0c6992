/** Why a number is not there: refuse, never substitute. */
export interface Missing {
  readonly missing: string;
}

/** A value, or the reason why there is none. */
export type OrMissing<T> = T | Missing;

export const missing = (reason: string): Missing => ({ missing: reason });

export function isMissing(value: unknown): value is Missing {
  return typeof value === 'object' && value !== null && 'missing' in value;
}
