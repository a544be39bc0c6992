import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { toleranceSchema } from '../../src/report/tolerance-schema.js';
import { designText } from '../report/made-up.js';
import { trueroll } from '../stand-in-world.js';

const sized = (errors: string): string => `${designText([])}errors: ${errors}\n`;
const files = {
  'nursing.yaml': readFileSync('fixtures/nursing/design.yaml', 'utf8'),
  'plain.yaml': sized('{ radius: 1/32 in }'),
  'wrong.yaml': sized('{ radus: 1/32 in, tail: 1 kg }'),
};
const tolerance = (...argv: string[]) => trueroll(['tolerance', ...argv], { files });
const small = ['--samples', '16'];

describe('trueroll tolerance', () => {
  it('says how far chairs spread, what a size does and what may be loose, and ends with 0', async () => {
    const { code, stdout, stderr } = await tolerance(
      ...['nursing.yaml', '--samples', '32', '--chance', '20%', '--people', 'women'],
    );
    expect([code, stderr]).toEqual([0, '']);
    await expect(stdout).toMatchFileSnapshot('../golden/tolerance-nursing.txt');
    expect(Math.max(...stdout.split('\n').map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it('is the same byte for byte for the same seed, and another for another', async () => {
    const asked = ['nursing.yaml', ...small, '--format', 'json', '--people'];
    const [one, again, other] = [
      await tolerance(...asked),
      await tolerance(...asked),
      await tolerance(...asked, '--seed', '2'),
    ];
    expect(again.stdout).toBe(one.stdout);
    expect(other.stdout).not.toBe(one.stdout);
  });

  it('in JSON is by its own schema, with samples taken up to a power of 2', async () => {
    const { stdout } = await tolerance('nursing.yaml', '--samples', '20', '--format', 'json');
    const said = toleranceSchema.parse(JSON.parse(stdout));
    expect(said.samples).toBe(32);
    expect(said.design.sha256).toMatch(/^[\da-f]{64}$/);
    expect(said.errors.every(({ assumed, size }) => assumed && Math.abs(size - 0.0254 / 32) < 1e-12)).toBe(
      true,
    );
    const slope = said.shop.limits.find(({ id }) => id === 'seated/seatSlope/shortest')!;
    const touch = slope.effects.find(({ dimension }) => dimension === 'touch')!;
    // A few hundredths of a degree for 1/32 in, most of the spread of the seat's slope.
    expect(touch.perError).toBeCloseTo((touch.perUnit! * 0.0254) / 32, 12);
    expect(touch.shareOfVariance).toBeGreaterThan(0.9);
    expect(slope.firstOrderDeviation! / slope.deviation!).toBeCloseTo(1, 1);
    expect(said.assumptions.some(({ basis }) => basis === 'common practice, no source')).toBe(true);
  });

  it('as a table has a row a limit', async () => {
    const { stdout } = await tolerance('nursing.yaml', ...small, '--format', 'csv');
    const [head, ...rows] = stdout.trimEnd().split('\r\n');
    expect(head).toBe('of,limit,measure,drawn,mean,deviation,low,high,missed,missedLow,missedHigh');
    expect(rows.every((row) => row.split(',').length === 11)).toBe(true);
    expect(rows.some((row) => row.startsWith('shop,seated/period/shortest,periodS,'))).toBe(true);
  });

  it('tells every mistake of the arguments and of the file together', async () => {
    const { code, stdout, stderr } = await tolerance(
      ...['wrong.yaml', '--samples', '3', '--seed', '-1', '--chance', 'seldom'],
    );
    expect([code, stdout]).toEqual([2, '']);
    const lines = stderr.trimEnd().split('\n');
    expect(lines).toEqual([
      '--samples `3`: expected a whole number from 16 to 65536, found `3`',
      '--seed `-1`: expected a whole number from 0 to 4294967295, found `-1`',
      '--chance `seldom`: expected a chance such as 5% or 0.05, more than 0 and less than 1, found `seldom`',
      expect.stringMatching(/^wrong\.yaml:\d+:11: .*`radus`\. Hint: did you mean `radius`\?$/),
      expect.stringMatching(/^wrong\.yaml:\d+:33: expected a length, found a mass/),
    ]);
  });

  it('refuses a chance that so few chairs cannot show, and people who are none', async () => {
    const few = await tolerance('plain.yaml', ...small, '--chance', '1%');
    expect(few).toMatchObject({ code: 2, stdout: '' });
    // Wilson 1927: of no miss in n chairs the upper end is z²/(n + z²), z² = 3.8415: 0.1936 of 16, 0.01 of 381.
    expect(few.stderr).toBe(
      '--chance `1%`: expected at least 19.4% with 16 chairs, or --samples 512, found `1%`\n',
    );
    const codes = ['19.3%', '19.4%'].map((chance) => tolerance('plain.yaml', ...small, '--chance', chance));
    expect((await Promise.all(codes)).map(({ code }) => code)).toEqual([2, 0]);
    const never = await tolerance('plain.yaml', ...small, '--chance', '0.000001');
    expect(never.stderr).toContain('expected at least 19.4% with 16 chairs, found `0.000001`');
    expect(await tolerance('plain.yaml', '--people', 'children')).toMatchObject({ code: 2, stdout: '' });
    expect(await tolerance('missing.yaml')).toMatchObject({ code: 2, stdout: '' });
  });

  it('writes where it is told and is quiet when asked', async () => {
    const said = await tolerance('plain.yaml', ...small);
    const written = await tolerance('plain.yaml', ...small, '--out', 'spread.txt');
    expect(written).toMatchObject({ code: 0, stdout: '' });
    expect(written.written.get('spread.txt')).toBe(said.stdout);
    expect(await tolerance('plain.yaml', ...small, '--quiet')).toMatchObject({
      code: 0,
      stdout: '',
      stderr: '',
    });
  });

  it('prints the schema of its JSON', async () => {
    const { code, stdout } = await trueroll(['schema', 'tolerance']);
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema' });
  });
});
