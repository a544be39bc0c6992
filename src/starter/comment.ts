/** Comments of a design file. */
import { wrap } from '../report/wrap.js';

const width = 110;

/** Lines that begin with #, of a text from anywhere: the reader of designs refuses U+FFFD. @param indent spaces before */
export const comment = (text: string, indent = ''): string =>
  wrap(text.replaceAll('\uFFFD', '?'), width, `${indent}# `);

/** A value that only a maker knows; `check` repeats the words where it is still left blank. */
export const blank = (key: string, words: string): string => `${key}: # wanted: ${words}`;
