import { describe, expect, it } from 'vitest';
import { circle, dxf } from '../drawing/read/dxf-text.js';
import { box, filledIn, inInches, onLayer, porch } from '../starter/drawings.js';
import { trueroll } from '../stand-in-world.js';

const files = {
  'shop/chair.dxf': porch(),
  'bare.dxf': porch({ header: [] }),
  'odd.dxf': dxf([circle(0, 0, -1)], inInches),
  'kept.yaml': 'mine',
  'red.dxf': dxf([onLayer('\u001b[31mred', box('a', 0, 0, 1, 1))], inInches),
};
const begin = (...argv: string[]) => trueroll(['new', ...argv], { files });

describe('trueroll new --from', () => {
  it('says the design, and beside it how large the drawing is and what it did not take', async () => {
    const { code, stdout, stderr } = await begin('--from', 'shop/chair.dxf');
    expect(code).toBe(0);
    expect(stdout).toContain(
      'outline: { drawing: { file: shop/chair.dxf, layer: Rocker, origin: [0, 0.75] } }',
    );
    expect(stdout).toMatch(/^kind: # wanted: /m);
    expect(stdout).toMatch(/^name: chair$/m);
    expect(stderr).toMatch(/^shop\/chair\.dxf: 4 parts; all of it \d+/);
    expect(stderr).toContain('Lines read: seat, back, arms.');
    expect(stderr).toContain('15 blanks to fill in');
  });

  it('writes it beside the drawing, which it names from there; filled in it is checked', async () => {
    const made = await begin(
      '--from',
      'shop/chair.dxf',
      '--out',
      'shop/new.yaml',
      '--kind',
      'porch',
      '--quiet',
    );
    expect([made.code, made.stdout, made.stderr]).toEqual([0, '', '']);
    const text = made.written.get('shop/new.yaml')!;
    expect(text).toContain('{ file: chair.dxf, layer: front leg,');
    expect(text).toMatch(/^kind: porch$/m);
    const checked = await trueroll(['check', 'shop/new.yaml', '--no-second-opinion'], {
      files: { ...files, 'shop/new.yaml': filledIn(text) },
    });
    expect([checked.stderr, checked.stdout === '']).toEqual(['', false]);
  });

  it.each([
    ['plans/new.yaml', '../shop/chair.dxf'],
    ['new.yaml', 'shop/chair.dxf'],
  ])('names the drawing from the folder of %s', async (out, name) => {
    const { written } = await begin('--from', 'shop/chair.dxf', '--out', out);
    expect(written.get(out)).toContain(`{ file: ${name}, layer: Rocker,`);
  });

  it('with every blank left is refused by check, one message a blank', async () => {
    const { stdout } = await begin('--from', 'shop/chair.dxf');
    const { code, stderr } = await trueroll(['check', 'new.yaml'], { files: { 'new.yaml': stdout } });
    expect(code).toBe(2);
    expect(stderr.trimEnd().split('\n')).toHaveLength(15);
    for (const line of stderr.trimEnd().split('\n'))
      expect(line).toMatch(/^new\.yaml:\d+:\d+: .* found a blank/);
  });

  it('asks for the units of a drawing that does not say them', async () => {
    const asked = await begin('--from', 'bare.dxf');
    expect([asked.code, asked.stdout]).toEqual([2, '']);
    expect(asked.stderr).toMatch(/^bare\.dxf: expected `--units`: the drawing does not say .* Hint: it is /);
    const told = await begin('--from', 'bare.dxf', '--units', 'in', '--name', 'Porch: no. 2');
    expect(told.code).toBe(0);
    expect(told.stdout).toContain("name: 'Porch: no. 2'");
    expect(told.stdout).toContain('layer: Rocker, units: in, origin: [0, 0.75]');
  });

  it('writes over no file unless it is asked to', async () => {
    const kept = await begin('--from', 'shop/chair.dxf', '--out', 'kept.yaml');
    expect([kept.code, kept.stdout, kept.written.size]).toEqual([2, '', 0]);
    expect(kept.stderr).toBe(
      'kept.yaml: expected a name that no file has yet, found a file. Hint: with `--overwrite` it is written over\n',
    );
    const over = await begin('--from', 'shop/chair.dxf', '--out', 'kept.yaml', '--overwrite');
    expect([over.code, over.written.has('kept.yaml')]).toEqual([0, true]);
  });

  it.each([
    [
      ['--from', 'none.dxf'],
      'none.dxf: expected a drawing file that can be read, found no such file or folder',
    ],
    [['--from', '-'], '--from: expected a drawing by the name of its file, found standard input'],
    [['--from', 'odd.dxf'], 'odd.dxf:36:1: expected CIRCLE: group 40 above 0'],
    [['--from', 'shop/chair.dxf', '--units', 'cubits'], "argument 'cubits' is invalid"],
    [
      ['--from', 'shop/chair.dxf', '--out', 'nowhere/x.yaml'],
      'nowhere/x.yaml: expected a file that can be written',
    ],
  ])('%s is refused', async (argv, words) => {
    const { code, stdout, stderr, written } = await begin(...argv);
    expect([code, stdout, written.size]).toEqual([2, '', 0]);
    expect(stderr).toContain(words);
  });

  it('moves no cursor by the name of a layer', async () => {
    const { stdout, stderr } = await begin('--from', 'red.dxf');
    expect([stdout.includes('\u001b'), stderr.includes('\u001b')]).toEqual([false, false]);
    expect(stdout).toContain('layer: "\\u001b[31mred"');
  });

  it('shows an example', async () => {
    const { code, stdout } = await trueroll(['new', '--help']);
    expect(code).toBe(0);
    expect(stdout).toMatch(/Examples:\n {2}\$ trueroll new --from /);
  });
});
