/** A limit whose verdict or bounds changed, in a maker's words and units. */
import type { LimitChange } from '../checks/compare-limits.js';
import type { Compared } from './compared.js';
import { limitWords, type LimitWords } from './limit-words.js';
import type { ReportedDesign } from './reported-design.js';
import { verdictWords } from './verdict-words.js';

export interface LimitChangeWords {
  /** 'shortest: one full rock, small' */
  readonly limit: string;
  readonly old: string;
  readonly new: string;
  /** '2.08 s → 2.71 s'; null: neither design has a value. */
  readonly value: string | null;
  readonly wanted: string;
  /** How far off it is now, or why. */
  readonly why: string | null;
}

const valueOf = (words: LimitWords | null): string | null => words && (words.value ?? '-');

export function limitChangeWords(change: LimitChange, compared: Compared): LimitChangeWords {
  const { units } = compared.new.result.design;
  const old = change.old && limitWords(change.old, units);
  const now = change.new && limitWords(change.new, units);
  const { who, what } = (now ?? old)!;
  const noValue = old?.value == null && now?.value == null;
  return {
    limit: `${who}: ${what}`,
    old: change.old ? verdictWords[change.old.verdict] : withoutLimit(change, compared.old),
    new: change.new ? verdictWords[change.new.verdict] : withoutLimit(change, compared.new),
    value: noValue ? null : fromTo(valueOf(old), valueOf(now)),
    wanted: fromTo(old && old.wanted, now && now.wanted) ?? '-',
    why: now?.off ?? now?.why ?? null,
  };
}

/** That it comes to rest is a limit only where it does not. */
function withoutLimit(change: LimitChange, { result: { loads } }: ReportedDesign): string {
  const { measure, load, sitter } = change.new ?? change.old;
  const rolled = loads.some(({ record }) => record.load.id === load && record.load.sitter === sitter);
  return measure === null && rolled ? verdictWords.pass : 'no limit';
}

/** One word where nothing changed, or where only one is. */
function fromTo(old: string | null, now: string | null): string | null {
  return old === null || now === null || old === now ? (now ?? old) : `${old} → ${now}`;
}

/** In one line, after the verdicts. */
export function sayLimitChange(words: LimitChangeWords): string {
  const why = words.why === null ? '' : `: ${words.why}`;
  const value = words.value === null ? '' : `: ${words.value}`;
  return `${words.limit}${value}, wanted ${words.wanted}${why}`;
}
