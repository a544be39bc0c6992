/** Which loads take the chair over: what nobody who compares or changes designs may miss. */
import type { LoadRecord } from '../measures/record.js';
import type { LoadId } from '../names.js';

export type Way = 'back' | 'forward';

export interface Over {
  readonly load: LoadId;
  readonly sitter: string | null;
  readonly way: Way;
}

interface Rolled {
  readonly record: Pick<LoadRecord, 'load' | 'motion'>;
}

export const wayOver = ({ record: { motion } }: Rolled): Way | null => motion?.goesOver ?? null;

export const overAmong = (loads: readonly Rolled[]): Over[] =>
  loads.flatMap((one) => {
    const way = wayOver(one);
    const { id: load, sitter } = one.record.load;
    return way === null ? [] : [{ load, sitter, way }];
  });
