/** A world for the command line that lives in memory. */
import type { Commands } from '../src/cli/commands.js';
import { main } from '../src/cli/main.js';
import type { World } from '../src/cli/world.js';

export interface Outcome {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
  /** Files written. */
  readonly written: ReadonlyMap<string, string>;
}

export interface StandIn {
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
  readonly stdin?: string;
  readonly tty?: boolean;
  readonly columns?: number;
  readonly env?: Readonly<Record<string, string>>;
  /** false: lines of a file are there the first time only, as of a pipe. */
  readonly readTwice?: boolean;
  /** Begins threads, if there are to be any. */
  readonly threads?: World['threads'];
  /** Takes what a command wants called when it is to stop. */
  readonly stopping?: (stop: () => void) => void;
}

/** The commands from their sources. */
const commands = ((name: string) => import(`../src/cli/commands/${name}.ts`)) as Commands;

/** As it comes from another bundle: of a class of its own, known by its name. */
const trouble = (message: string): Error => Object.assign(new Error(message), { name: 'FileTrouble' });

const bytesOf = (content: string | Uint8Array): Uint8Array =>
  typeof content === 'string' ? new TextEncoder().encode(content) : content;

export async function trueroll(argv: readonly string[], standIn: StandIn = {}): Promise<Outcome> {
  const { files = {}, stdin = '', tty = false, columns, env = {}, stopping, threads = null } = standIn;
  const readBefore = new Set<string>();
  const written = new Map<string, string>();
  const said = { stdout: '', stderr: '' };
  const stream = (name: keyof typeof said): World['stdout'] => ({
    write: (text) => {
      said[name] += text;
    },
    ready: () => Promise.resolve(true),
    isTTY: tty,
    columns: tty ? columns : undefined,
  });
  const read = (path: string): string | Uint8Array | undefined =>
    Object.hasOwn(files, path) ? files[path] : written.get(path);
  const draft: World['files']['draft'] = (path) => {
    if (path.startsWith('nowhere/')) return Promise.reject(trouble('no such file or folder'));
    let so = '';
    return Promise.resolve({
      write: (text) => Promise.resolve(void (so += text)),
      finish: () => Promise.resolve(void written.set(path, so)),
      discard: () => Promise.resolve(),
    });
  };
  const world: World = {
    argv,
    files: {
      read: (path) => {
        const content = read(path);
        return content === undefined
          ? Promise.reject(trouble('no such file or folder'))
          : Promise.resolve(bytesOf(content));
      },
      write: (path, text) => {
        if (path.startsWith('nowhere/')) return Promise.reject(trouble('no such file or folder'));
        written.set(path, text);
        return Promise.resolve();
      },
      draft,
      isFile: (path) => Promise.resolve(read(path) !== undefined),
      async *lines(path) {
        const content = read(path);
        if (content === undefined) throw trouble('no such file or folder');
        if (standIn.readTwice === false && readBefore.has(path)) return;
        readBefore.add(path);
        const lines = new TextDecoder().decode(bytesOf(content)).split('\n');
        yield* await Promise.resolve(lines.at(-1) === '' ? lines.slice(0, -1) : lines);
      },
    },
    stdin: () => Promise.resolve(bytesOf(stdin)),
    stdout: stream('stdout'),
    stderr: stream('stderr'),
    env,
    threads,
    onStop: (stop) => {
      stopping?.(() => {
        stop(130);
      });
      return () => undefined;
    },
  };
  return { code: await main(world, commands), ...said, written };
}
