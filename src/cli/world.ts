/** What the command line touches of the world, handed in so that tests can stand in for it. */
export interface World {
  /** Arguments after the program's name. */
  readonly argv: readonly string[];
  readonly files: Files;
  readonly stdin: () => Promise<Uint8Array>;
  readonly stdout: Output;
  readonly stderr: Output;
  readonly env: Readonly<Record<string, string | undefined>>;
}

export interface Files {
  /** @throws FileTrouble */
  readonly read: (path: string) => Promise<Uint8Array>;
  /**
   * The whole file or, when it cannot be, nothing of it.
   * @param keep files that must not be written over
   * @throws FileTrouble
   */
  readonly write: (path: string, text: string, keep: readonly string[]) => Promise<void>;
}

export interface Output {
  readonly write: (text: string) => void;
  readonly isTTY: boolean;
  /** Width of the terminal; undefined when it is none. */
  readonly columns: number | undefined;
}

/** A file that cannot be read or written, in a maker's words. */
export class FileTrouble extends Error {
  override readonly name = 'FileTrouble';
}

/** By its name: a bundle of its own has a class of its own. */
export const isFileTrouble = (error: unknown): error is FileTrouble =>
  error instanceof Error && error.name === 'FileTrouble';

/** Exit codes of the contract. */
export const exitCodes = { met: 0, notMet: 1, cannotJudge: 2 } as const;
