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
}

/** The commands from their sources. */
const commands = ((name: string) => import(`../src/cli/commands/${name}.ts`)) as Commands;

/** As it comes from another bundle: of a class of its own, known by its name. */
const trouble = (message: string): Error => Object.assign(new Error(message), { name: 'FileTrouble' });

const bytesOf = (content: string | Uint8Array): Uint8Array =>
  typeof content === 'string' ? new TextEncoder().encode(content) : content;

export async function trueroll(argv: readonly string[], standIn: StandIn = {}): Promise<Outcome> {
  const { files = {}, stdin = '', tty = false, columns, env = {} } = standIn;
  const written = new Map<string, string>();
  const said = { stdout: '', stderr: '' };
  const stream = (name: keyof typeof said): World['stdout'] => ({
    write: (text) => {
      said[name] += text;
    },
    isTTY: tty,
    columns: tty ? columns : undefined,
  });
  const world: World = {
    argv,
    files: {
      read: (path) => {
        const content = Object.hasOwn(files, path) ? files[path] : undefined;
        return content === undefined
          ? Promise.reject(trouble('no such file or folder'))
          : Promise.resolve(bytesOf(content));
      },
      write: (path, text) => {
        if (path.startsWith('nowhere/')) return Promise.reject(trouble('no such file or folder'));
        written.set(path, text);
        return Promise.resolve();
      },
    },
    stdin: () => Promise.resolve(bytesOf(stdin)),
    stdout: stream('stdout'),
    stderr: stream('stderr'),
    env,
  };
  return { code: await main(world, commands), ...said, written };
}
