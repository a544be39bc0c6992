/** What the second calculation says, in words: in a line for the first screen, number by number for `--all`. */
import type { CheckResult } from '../check-design.js';
import { agrees, disagreementOf, type Compared, type SecondOpinion } from '../contact/second-opinion.js';
import type { LoadRecord } from '../measures/record.js';
import { jsonFactor, measures, type Kind } from '../names.js';
import { formatLength, formatNumber } from '../quantity/print.js';
import { loadWords, measureWords, whoOf } from './measure-words.js';
import { paintedTable } from './table.js';
import type { TextSettings } from './text-settings.js';
import { wrap } from './wrap.js';

type Asked = readonly [LoadRecord, SecondOpinion];

/** Less than this, metres, is no slide that anybody would mind. */
const seen = 5e-3;

const whoIn = ([{ load }]: Asked): string =>
  load.sitter === null ? loadWords[load.id] : whoOf(load.id, load.sitter);

/** 'A second calculation, of a body free to slide and lift, agrees for the empty chair and shortest.' */
export function secondLine({ opinions, design }: CheckResult): string {
  if (opinions === null) return 'No second calculation was made.';
  if (opinions.size === 0) return 'No second calculation was made: nothing comes to rest.';
  const asked = [...opinions];
  const doubted = asked.filter(([, opinion]) => !agrees(opinion));
  if (doubted.length > 0) {
    return `THE TWO CALCULATIONS DISAGREE: do not trust this one (${doubted.map(whoIn).join('; ')}). By how much: --all.`;
  }
  if (asked.every(([, { compared }]) => compared.length === 0))
    return 'A second calculation, of a body free to slide and lift, could compare nothing here: --all says why.';
  const farthest = asked.reduce((most, one) => (slideOf(one) > slideOf(most) ? one : most));
  const slides =
    slideOf(farthest) > seen
      ? `; ${whoIn(farthest)}, it slides about ${saySlide(farthest, design.units)} on this floor`
      : '';
  const lifts = asked.filter(([, opinion]) => opinion.lifts === true).map(whoIn);
  const off = lifts.length > 0 ? `; it leaves the floor: ${lifts.join('; ')}` : '';
  return `A second calculation, of a body free to slide and lift, agrees for ${whoAgrees(asked)}${slides}${off}.`;
}

/** Of sitters only the first is calculated twice; the chair itself empty or with a child on its tails. */
function whoAgrees(asked: readonly Asked[]): string {
  const sitters = new Set(asked.map(([{ load }]) => load.sitter).filter((sitter) => sitter !== null));
  const alone = asked.some(([{ load }]) => load.sitter === null) ? ['the empty chair'] : [];
  return [...alone, ...sitters].join(' and ');
}

const slideOf = ([, { slide }]: Asked): number => Math.abs(slide ?? 0);

const saySlide = ([, { slide }]: Asked, units: CheckResult['design']['units']): string =>
  `${formatLength(Math.abs(slide ?? 0), units)} ${(slide ?? 0) < 0 ? 'back' : 'forward'}`;

/** Every number of it. */
export function secondOpinionLines(
  { opinions, design }: CheckResult,
  settings: Pick<TextSettings, 'paint' | 'columns'>,
): string[] {
  if (opinions === null) return [];
  const asked = [...opinions];
  const rows = asked.flatMap((one) =>
    one[1].compared.map((compared) => ({
      label: `${whoIn(one)}: ${measureWords[compared.measure]}`,
      cells: cellsOf(compared),
    })),
  );
  const title = 'Calculated a second time';
  const heads = ['rolling', 'free body', 'apart', 'may be'];
  const floor = design.floor.name ?? 'the floor of the design';
  const friction = formatNumber(design.floor.friction);
  const notes = asked.flatMap((one) => {
    const [, { slide, lifts, notCovered }] = one;
    const moved =
      slide === null
        ? []
        : [
            Math.abs(slide) > seen
              ? `slides about ${saySlide(one, design.units)} on ${floor} (friction ${friction}): a bound, no promise`
              : `${slide === 0 ? 'does not slide' : 'hardly slides'} on ${floor} (friction ${friction})`,
          ];
    const off = lifts === true ? ['leaves the floor'] : [];
    return [`${whoIn(one)}: ${[...moved, ...off, `Not looked at: ${notCovered.join('; ')}`].join('. ')}.`];
  });
  return [
    ...paintedTable({ title, heads, rows }, settings),
    ...notes.map((note) => wrap(note, settings.columns, '  ', '    ')),
  ];
}

/** Decimals and unit that differences of this kind are seen in. */
const printed: Partial<Record<Kind, { readonly digits: number; readonly unit: string }>> = {
  angle: { digits: 4, unit: '°' },
  time: { digits: 4, unit: ' s' },
  energy: { digits: 3, unit: ' J' },
};

function cellsOf(compared: Compared): string[] {
  const { measure, second, exact, tolerance } = compared;
  const { digits, unit } = printed[measures[measure].kind] ?? { digits: 4, unit: '' };
  const say = (value: number): string => `${(value * jsonFactor(measure)).toFixed(digits)}${unit}`;
  return [exact, second, disagreementOf(compared), tolerance].map(say);
}
