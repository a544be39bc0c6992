/** What the command line touches of the world, handed in so that tests can stand in for it. */
export interface World {
  /** Arguments after the program's name. */
  readonly argv: readonly string[];
  readonly files: Files;
  readonly stdin: () => Promise<Uint8Array>;
  readonly stdout: Output;
  readonly stderr: Output;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** How many threads run at once, and how one is begun; null: there are none. */
  readonly threads: Threads | null;
  /**
   * Calls when it is to be stopped (Ctrl-C, the end of a job), with the exit code for that, instead of ending the
   * process. @returns what takes that back
   */
  readonly onStop: (stop: (code: number) => void) => () => void;
}

export interface Threads {
  readonly count: number;
  /**
   * @param name of the bundle that is run in it
   * @param data what it is given at its start; copied
   */
  readonly begin: (name: string, data: unknown) => Thread;
}

/** A thread that answers one message at a time. */
export interface Thread {
  readonly ask: (message: unknown) => Promise<unknown>;
  readonly end: () => void;
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
  /**
   * A file that is written piece by piece, and stands in its place only when it is whole.
   * @throws FileTrouble, here and from the draft
   */
  readonly draft: (path: string, keep: readonly string[]) => Promise<Draft>;
  /** Whether a file that holds something of its own stands there: no pipe, no device, no folder. */
  readonly isFile: (path: string) => Promise<boolean>;
  /** The lines of a file without their ends, one after the other. @throws FileTrouble */
  readonly lines: (path: string) => AsyncIterable<string>;
}

export interface Draft {
  readonly write: (text: string) => Promise<void>;
  /** Puts it in its place. */
  readonly finish: () => Promise<void>;
  /** As if it had never been. */
  readonly discard: () => Promise<void>;
}

export interface Output {
  readonly write: (text: string) => void;
  /** When there is room for more; false: nobody reads any more. */
  readonly ready: () => Promise<boolean>;
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
