export type Style = 'good' | 'bad' | 'doubt' | 'heading';

export interface TextSettings {
  /** Longest line, characters. */
  readonly columns: number;
  /** Every measure and limit. */
  readonly all: boolean;
  /** Every assumption with what it rests on. */
  readonly assumed: boolean;
  /** Weights of the parts. */
  readonly parts: boolean;
  readonly paint: (style: Style, text: string) => string;
}

/** The widest that the first screen is set, characters. */
export const widest = 100;
