/**
 * How many columns of a terminal a text takes: two for a character of East Asia and for an emoji, none for what is set
 * over the character before it. Terminals differ on the rarer ones; Unicode (UAX #11) leaves it to them.
 */

/** One column each: Latin letters, general punctuation, fractions and arrows. */
const narrow = /^[\u0020-\u02FF\u2010-\u2027\u2150-\u2193\u2212]*$/u;

/** Half-width katakana and hangul are in the scripts but narrow. */
const halfWidth = /^[\uFF61-\uFFDC]/u;
const wide =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Emoji_Presentation}\u3000-\u303F\uFF01-\uFF60\uFFE0-\uFFE6]|\p{Emoji}\uFE0F/u;
const unseen = /^[\p{Mn}\p{Me}\p{Cf}]+$/u;

export const textWidth = (text: string): number =>
  narrow.test(text) ? text.length : charactersOf(text).reduce((sum, one) => sum + widthOf(one), 0);

/** As a reader counts them: a letter with its marks, a family emoji. */
export const charactersOf = (text: string): string[] =>
  narrow.test(text) ? Array.from(text) : Array.from(segmenter().segment(text), ({ segment }) => segment);

/** Made only for a text that needs it: the first takes milliseconds. */
const segmenter = (): Intl.Segmenter => new Intl.Segmenter('en', { granularity: 'grapheme' });

function widthOf(character: string): number {
  if (wide.test(character) && !halfWidth.test(character)) return 2;
  return unseen.test(character) ? 0 : 1;
}

/** The longest beginning that takes no more than `width` columns, and what is left. */
export function splitAt(text: string, width: number): readonly [string, string] {
  if (textWidth(text) <= width) return [text, ''];
  let [taken, at] = [0, 0];
  for (const character of charactersOf(text)) {
    taken += widthOf(character);
    if (taken > width) break;
    at += character.length;
  }
  return [text.slice(0, at), text.slice(at)];
}

/** Cut between characters to `width` columns, an ellipsis the last. */
export const shortened = (text: string, width: number): string =>
  textWidth(text) <= width ? text : `${splitAt(text, width - 1)[0]}…`;

export const padStart = (text: string, width: number): string =>
  `${' '.repeat(Math.max(0, width - textWidth(text)))}${text}`;
export const padEnd = (text: string, width: number): string =>
  `${text}${' '.repeat(Math.max(0, width - textWidth(text)))}`;
