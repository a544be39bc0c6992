/** How the reports are asked for where nothing else is said. */
import type { TextSettings } from '../../src/report/text-settings.js';

/** A hundred columns, no colour, the first screen only. */
export const plain: TextSettings = {
  columns: 100,
  all: false,
  assumed: false,
  parts: false,
  paint: (_, text) => text,
};
