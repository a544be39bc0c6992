/** The commands by name, each loaded when it is called. */
import type { World } from './world.js';

interface CommandModules {
  readonly adjust: typeof import('./commands/adjust.js');
  readonly check: typeof import('./commands/check.js');
  readonly compare: typeof import('./commands/compare.js');
  readonly new: typeof import('./commands/new.js');
  readonly sweep: typeof import('./commands/sweep.js');
  readonly tolerance: typeof import('./commands/tolerance.js');
  readonly schema: typeof import('./commands/schema.js');
}

export type CommandName = keyof CommandModules;

export type Commands = <Name extends CommandName>(name: Name) => Promise<CommandModules[Name]>;

/** What a command's arguments lead to: the world it works in, its code, and where its exit code goes. */
export interface Calling {
  readonly world: World;
  readonly commands: Commands;
  readonly answer: (code: number) => void;
}
