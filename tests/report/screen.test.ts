/** The first screen as a maker sees it, kept whole. `npm test -- -u` writes the goldens anew. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { printText } from '../../src/report/text.js';
import type { TextSettings } from '../../src/report/text-settings.js';
import { checked } from '../reading.js';
import { plain } from './plain.js';

const fixture = (name: string) => checked(readFileSync(`fixtures/${name}/design.yaml`, 'utf8'));
/** Colours as marks that can be read in a golden. */
const painted: TextSettings['paint'] = (style, text) => `<${style}>${text}</${style}>`;

describe('the first screen', () => {
  const cases = ['porch-rocker', 'tight-radius', 'nursing', 'dead-spot'].flatMap((name) =>
    [80, 100].flatMap((columns) => [true, false].map((colour) => ({ name, columns, colour }))),
  );
  it.each(cases)('of $name at $columns columns, in colour $colour', async ({ name, columns, colour }) => {
    const text = printText(fixture(name), { ...plain, columns, ...(colour && { paint: painted }) });
    const file = `screen-${name}-${columns}${colour ? '-colour' : ''}.txt`;
    await expect(text).toMatchFileSnapshot(`../golden/${file}`);
  });

  it.each([80, 100])('keeps to %i columns, whatever it shows', (columns) => {
    for (const name of ['porch-rocker', 'tight-radius', 'nursing', 'child-chair', 'free-curve'])
      for (const line of printText(fixture(name), { ...plain, columns, all: true, parts: true }).split('\n'))
        expect(line.length).toBeLessThanOrEqual(columns);
  });

  it('never says safe, certified or a bare pass', () => {
    for (const name of ['porch-rocker', 'tight-radius', 'nursing'])
      expect(printText(fixture(name), { ...plain, all: true })).not.toMatch(
        /\bsafe|certif|\bpass(ed|es)?\b/i,
      );
  });

  it.each([
    /no test/,
    /no proof of strength/,
    /no claim to meet any standard/,
    /sandbags before anyone sits/,
    /somebody standing behind/,
    /climbed, knelt in backwards, stood on or pushed hard/,
    /Never fall asleep in it holding a baby/,
    /Rise with a child only when the chair is still and both feet are flat/,
    /fingers, toes and pets’ tails/,
    /Keep the floor behind it clear, and it away from steps and edges/,
    /Only the people and the floor listed/,
    /licensed where you live/,
  ])('cautions: %s', (words) => {
    expect(printText(fixture('porch-rocker'), plain).replace(/\s+/g, ' ')).toMatch(words);
  });

  it('lets no name paint the terminal', () => {
    const escape = String.fromCharCode(27);
    const result = fixture('porch-rocker');
    const named = {
      ...result,
      design: { ...result.design, name: `chair ${escape}[31mred${escape}[0m\nsecond line` },
    };
    const text = printText(named, plain);
    expect(text).not.toContain(escape);
    expect(text.split('\n')[0]).toContain('second line');
  });
});
