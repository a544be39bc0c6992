/** A program of Debian's that a test asks for a second opinion. `.ci/run` installs it; elsewhere it may be missing. */
import { spawnSync } from 'node:child_process';
import process from 'node:process';

/** Where a missing tool is a failure. */
const required = process.env['CI'] === 'true' || process.env['TRUEROLL_REQUIRE_TOOLS'] !== undefined;

/** Whether to ask it: yes where it is there or must be; where not, says so. */
export function isAsked(program: string, debianPackage: string): boolean {
  if (required || spawnSync(program, ['--version']).error === undefined) return true;
  console.log(`SKIPPED: ${program} is not installed (Debian package ${debianPackage})`);
  return false;
}

/** @returns what it says; @throws Error with what it complains of. */
export function ask(program: string, args: readonly string[], input: string): string {
  const { status, stdout, stderr, error } = spawnSync(program, args, { input, encoding: 'utf8' });
  if (error) throw error;
  if (status !== 0) throw new Error(`${program} ended with ${status ?? 'a signal'}: ${stderr}`);
  return stdout;
}
