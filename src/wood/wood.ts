/** What the tables say of a wood or a panel. */
export interface Wood {
  /** Its name in the trade. */
  readonly name: string;
  /** Other names that mean the same. */
  readonly aliases: readonly string[];
  /** kg/m³, in a dry room. */
  readonly density: number;
  /** How far single pieces stray from that density, as a share of it, both ways. */
  readonly spread: number;
  /** Mass oven-dry over volume at 12 % moisture; woods only. */
  readonly specificGravity?: number;
  /** Publication, edition, table and row; what was chosen among its numbers, and why. */
  readonly source: string;
  readonly mark: Mark;
}

/** `read`: seen in the publication or a copy of its table; `worked out here`: from numbers that were read. */
export type Mark = 'read' | 'worked out here';
