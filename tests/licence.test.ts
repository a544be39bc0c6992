/** Whatever lands in dist/ brings its licence text along, in LICENSE. */
import { readdirSync, readFileSync } from 'node:fs';
import { build } from 'esbuild';
import { expect, it } from 'vitest';

/** The packages whose code a bundle of src holds, as esbuild reports them. */
async function bundledPackages(): Promise<string[]> {
  const { metafile } = await build({
    entryPoints: ['src/**/*.ts'],
    outdir: 'dist',
    write: false,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    metafile: true,
    logLevel: 'silent',
  });
  const inputs = Object.values(metafile.outputs).flatMap((output) => Object.entries(output.inputs));
  const packages = inputs
    .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
    .map(([path]) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1])
    .filter((name) => name !== undefined);
  return [...new Set(packages)].toSorted();
}

/** The ISC licence as the Open Source Initiative publishes it, lines broken as they may be. */
const isc = (whose: string): string =>
  [
    `The ISC License\n\nCopyright (c) ${whose}\n`,
    'Permission to use, copy, modify, and/or distribute this software for any',
    'purpose with or without fee is hereby granted, provided that the above',
    'copyright notice and this permission notice appear in all copies.\n',
    'THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES',
    'WITH REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF',
    'MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR',
    'ANY SPECIAL, DIRECT, INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES',
    'WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN',
    'ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR',
    'IN CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.',
  ].join('\n');

/** Of packages that carry no file of it, by what they declare. */
const licencesNotCarried: Readonly<Record<string, string>> = { saxes: isc('Contributors') };

function licenceOf(name: string): string {
  const folder = `node_modules/${name}`;
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  if (file === undefined) return licencesNotCarried[name] ?? `a licence file of ${name}`;
  return readFileSync(`${folder}/${file}`, 'utf8').replaceAll('\r', '').trim();
}

it('LICENSE holds the licence of every bundled package, word for word', async () => {
  const notices = readFileSync('LICENSE', 'utf8');
  const packages = await bundledPackages();
  expect(packages).toContain('mathjs');
  for (const name of packages) expect(notices, name).toContain(licenceOf(name));
});

// Apache License 2.0, section 4 (d): a NOTICE file goes along.
it('LICENSE holds the NOTICE of mathjs', () => {
  expect(readFileSync('LICENSE', 'utf8')).toContain(
    readFileSync('node_modules/mathjs/NOTICE', 'utf8').trim(),
  );
});
