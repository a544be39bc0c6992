/** Control characters, breaks of line and paragraph, and halves of surrogate pairs. */
const unprintable = /[\p{Cc}\p{Zl}\p{Zp}\p{Cs}]+/gu;

/** What turns the direction of the text after it, and so could make a line read as another. */
const turning = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/g;

/** A maker's text in one line that moves no cursor: a name may come from anywhere. */
export const printable = (text: string): string => text.replace(turning, '').replace(unprintable, ' ').trim();
