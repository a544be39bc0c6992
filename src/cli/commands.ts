/** The commands by name, each loaded when it is called. */
interface CommandModules {
  readonly check: typeof import('./commands/check.js');
  readonly schema: typeof import('./commands/schema.js');
}

export type CommandName = keyof CommandModules;

export type Commands = <Name extends CommandName>(name: Name) => Promise<CommandModules[Name]>;
