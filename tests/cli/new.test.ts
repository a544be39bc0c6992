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

  it('takes the sitter whom the command line names', async () => {
    const { stdout } = await begin(
      ...['--from', 'shop/chair.dxf', '--body', 'male', '--stature', '5\' 10"', '--mass', '180 lb'],
    );
    expect(stdout).toContain('sitters: [{ name: sitter, body: male, stature: 5\' 10", mass: 180 lb }]\n');
  });
});

describe('trueroll new', () => {
  it('says a whole chair for the usual people, which passes a check', async () => {
    const { code, stdout, stderr } = await begin('--kind', 'child');
    expect([code, stderr]).toEqual([
      0,
      'Rocker for a child, white ash: All listed limits met, for shortest and tallest, on bare boards.\n',
    ]);
    const checked = await trueroll(['check', 'new.yaml'], { files: { 'new.yaml': stdout } });
    expect([checked.code, checked.stderr]).toEqual([0, '']);
    expect(checked.stdout).toContain('agrees for the empty chair and shortest');
  });

  it('is made for a sitter, in millimetres, and written where it is wanted', async () => {
    const { code, stdout, stderr, written } = await begin(
      ...['--kind', 'porch', '--body', 'female', '--stature', '164 cm', '--mass', '64 kg', '--units', 'mm'],
      ...['--name', 'Hers: blue', '--out', 'hers.yaml', '--quiet'],
    );
    expect([code, stdout, stderr]).toEqual([0, '', '']);
    const text = written.get('hers.yaml')!;
    expect(text).toContain("\nname: 'Hers: blue'\n");
    expect(text).toContain('sitters: [{ name: sitter, body: female, stature: 164 cm, mass: 64 kg }]\n');
    const check = ['check', 'hers.yaml', '--no-second-opinion'];
    expect(await trueroll(check, { files: { 'hers.yaml': text } })).toMatchObject({ code: 0, stderr: '' });
  });

  it('is written where some limit is not met, with exit code 1 and what is missed', async () => {
    const { code, stderr, written } = await begin(
      ...['--body', 'female', '--stature', '0.9 m', '--mass', '60 kg', '--out', 'small.yaml'],
    );
    expect([code, written.has('small.yaml')]).toEqual([1, true]);
    expect(stderr).toContain('Not all limits are met');
  });

  it.each([
    [
      ['--body', 'male'],
      '--stature: expected a length such as `5\' 4"`, found none. Hint: --body, --stature and --mass',
    ],
    [['--mass', '60 kg'], '--body: expected female or male, found none'],
    [['--body', 'male', '--stature', "6'"], '--mass: expected a mass such as `140 lb`, found none'],
    [['--body', 'male', '--stature', '6 kg', '--mass', '5'], '--stature: expected a length, found a mass'],
    [['--body', 'male', '--stature', '6 kg', '--mass', '5'], '--mass: expected a mass, found a pure number'],
    [
      ['--body', 'male', '--stature', '64', '--mass', '1 kg'],
      '--mass: expected a mass of 3 to 400 kg, found 1 kg',
    ],
    [['--body', 'male', '--stature', '80 cm', '--mass', '9 kg'], '--stature: expected 0.9 to 2.3 m'],
    [['--mirror'], '--mirror: expected --from beside it'],
    [['--units', 'cm'], '--units: expected in or mm'],
    [['--kind', 'pub'], "argument 'pub' is invalid"],
    [['--out', 'kept.yaml'], 'kept.yaml: expected a name that no file has yet'],
  ])('%s is refused', async (argv, words) => {
    const { code, stdout, stderr, written } = await begin(...argv);
    expect([code, stdout, written.size]).toEqual([2, '', 0]);
    expect(stderr).toContain(words);
  });

  it('shows an example', async () => {
    const { code, stdout } = await trueroll(['new', '--help']);
    expect(code).toBe(0);
    expect(stdout).toMatch(/Examples:\n {2}\$ trueroll new /);
  });
});
