/** A load that goes over fails several limits at once, which are told once: what to change must not be lost by that. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { withRemedies } from '../../src/check-design.js';
import type { Remedy } from '../../src/explore/remedy.js';
import type { Changeable } from '../../src/explore/changeable.js';
import { alterationNames } from '../../src/names.js';
import { dimensionOf } from '../../src/quantity/dimension.js';
import { remediesOfOver } from '../../src/report/over-remedies.js';
import { printText } from '../../src/report/text.js';
import { checked } from '../reading.js';
import { limit } from './made-up.js';
import { plain } from './plain.js';

const inch = 0.0254;

const tail: Changeable = {
  variable: { name: 'tail', dimension: dimensionOf.length, stated: 12 * inch, of: null },
  step: inch,
  from: 12,
  least: -6,
  greatest: 12,
};
const nose: Changeable = { ...tail, variable: { ...tail.variable, name: 'nose' } };
const rocker = limit('leaning-back-hard', 'reader', 'rockerLeftBackM', [2, null], 'goes over backwards');
const crest = limit('leaning-back-hard', 'reader', 'leftToTipBackDeg', [8, null], 'goes over backwards');

const remedy = (change: Changeable, to: number, more: Partial<Remedy> = {}): Remedy => ({
  stage: 'drawing',
  changes: [{ change, from: 12 * inch, to: to * inch, neededFor: [] }],
  value: 2 * inch,
  range: { min: null, max: null },
  notMet: ['seated/period/reader'],
  breaks: [],
  moves: [],
  mendsAll: false,
  ...more,
});

const told = (ofRocker: Remedy[], ofCrest: Remedy[]) =>
  remediesOfOver(
    [rocker, crest],
    new Map([
      [rocker.id, ofRocker],
      [crest.id, ofCrest],
    ]),
  ).map(({ remedy: { changes }, limit: { id }, stillOpen }) => [
    changes[0]!.change.variable.name,
    Math.round(changes[0]!.to / inch),
    id,
    stillOpen,
  ]);

describe('of a load that goes over', () => {
  it('all that mends the limits it fails by that is told, whatever else is not met, each change once', () => {
    expect(
      told(
        [remedy(tail, 18)],
        [remedy(tail, 16, { notMet: [rocker.id] }), remedy(tail, 18), remedy(nose, 13)],
      ),
    ).toEqual([
      ['nose', 13, crest.id, []],
      ['tail', 18, rocker.id, []],
    ]);
  });

  it('what mends some of them is told where nothing mends all, with what it leaves', () => {
    expect(told([], [remedy(tail, 16, { notMet: [rocker.id, 'seated/period/reader'] })])).toEqual([
      ['tail', 16, crest.id, [rocker.id]],
    ]);
  });

  it('nothing is told where nothing was found', () => {
    expect(told([], [])).toEqual([]);
  });
});

describe('the screen', () => {
  it('says what keeps a chair from going over that fails another limit too, and what the value is of', () => {
    const text = readFileSync('fixtures/short-tails/design.yaml', 'utf8');
    // Every alteration is kept: only the two named sizes are tried.
    const wished = text
      .replace('limits:\n', 'limits:\n  seated: { period: 2.5 s .. 2.9 s }\n')
      .concat(`keep: [${alterationNames.join(', ')}]\n`);
    const said = printText(withRemedies(checked(wished), wished, { stage: 'drawing' }), plain);
    const [, after = ''] = said.split('NOT MET reader, leaning back hard: goes over backwards\n');
    expect(after).toMatch(/^ +change tail 12 in → 18-5\/16 in \(then rocker left behind the touch 2 in\)\n/);
  });
});
