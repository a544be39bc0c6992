/**
 * Loads a bundle of the command line with what V8 compiled of it when it was built: reading the source takes Node longer
 * than checking a chair does. A cache of another Node version, or none, is no harm: V8 refuses it and compiles the source.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Script } from 'node:vm';

/** @param bundle a CommonJS file; its cache lies beside it, named `.cache` after it */
export function loadCompiled(bundle: URL): unknown {
  const path = fileURLToPath(bundle);
  return load(path, cacheOf(path)).exported;
}

/** The same without a cache; `keep` writes one, of all that was compiled until then. */
export function compiling(bundle: URL): { readonly exported: unknown; readonly keep: () => void } {
  const path = fileURLToPath(bundle);
  const { script, exported } = load(path, undefined);
  return {
    exported,
    keep: () => {
      writeFileSync(cachePath(path), script.createCachedData());
    },
  };
}

const cachePath = (path: string): string => `${path}.cache`;

function cacheOf(path: string): Buffer | undefined {
  try {
    return readFileSync(cachePath(path));
  } catch {
    return undefined;
  }
}

function load(path: string, cachedData: Buffer | undefined): { script: Script; exported: unknown } {
  const source = readFileSync(path, 'utf8');
  const script = new Script(`(function (exports, require, module, __filename, __dirname) {${source}\n})`, {
    filename: path,
    ...(cachedData && { cachedData }),
  });
  const module = { exports: {} as unknown };
  const wrapper = script.runInThisContext() as (...parts: unknown[]) => void;
  wrapper(module.exports, createRequire(path), module, path, dirname(path));
  return { script, exported: module.exports };
}
