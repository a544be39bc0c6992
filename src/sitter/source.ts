/** Where numbers of the body come from, and how much they can be trusted. */
export interface Source {
  readonly publication: string;
  readonly mark: Mark;
}

/**
 * `read`: seen in the publication or its data; `read second-hand`: seen where others copied it out; `worked out here`:
 * from numbers that were read; `assumption of this project`: published nowhere.
 */
export type Mark = 'read' | 'read second-hand' | 'worked out here' | 'assumption of this project';

/** How one number of a sitter or a child was come by. */
export interface Basis {
  readonly from: 'stated' | 'measured' | 'percentile' | 'ratio' | 'age';
  readonly says: string;
}

export const stated: Basis = { from: 'stated', says: 'stated in the design' };
export const measured: Basis = { from: 'measured', says: 'measured, as the design says' };
