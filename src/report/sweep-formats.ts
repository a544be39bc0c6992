/** A sweep as text, CSV, JSON Lines, JSON, or a share of it to be joined: each row by itself, so that threads may print them. */
import type { Stretch } from '../explore/grid.js';
import { inCsv } from './csv.js';
import type {
  ShareEndObject,
  ShareHeadObject,
  SweepHeadObject,
  SweepRowObject,
  SweepSummaryObject,
} from './sweep-schema.js';
import { sweepText } from './sweep-text.js';
import type { TextSettings } from './text-settings.js';

export type SweepFormat = 'text' | 'csv' | 'jsonl' | 'json';

export interface SweepPrinter {
  readonly opening: string;
  /** With its line feed. */
  readonly row: (row: SweepRowObject) => string;
  /** @param whole false: it was stopped */
  readonly closing: (summary: SweepSummaryObject, whole: boolean) => string;
}

export function sweepPrinter(
  format: SweepFormat,
  head: SweepHeadObject,
  settings: Pick<TextSettings, 'columns' | 'paint'>,
): SweepPrinter {
  switch (format) {
    case 'text':
      return sweepText(head, settings);
    case 'csv':
      return csv(head);
    case 'jsonl':
      return { opening: '', row: lineOf, closing: () => '' };
    case 'json':
      return json(head);
  }
}

const lineOf = (row: SweepRowObject): string => `${JSON.stringify(row)}\n`;

/** RFC 4180. */
function csv({ varied, columns }: SweepHeadObject): SweepPrinter {
  const line = (cells: readonly (string | number | boolean | null)[]): string =>
    `${cells.map((cell) => inCsv(String(cell ?? ''))).join(',')}\r\n`;
  const heads = varied.map(({ dimension, unit }) => (unit === '' ? dimension : `${dimension} (${unit})`));
  const others = ['verdict', 'comfortable', 'goes over', 'not met', 'tightest', 'room', 'problem'];
  return {
    opening: line(['design', ...heads, ...columns.map(({ name }) => name), ...others]),
    row: ({ design, values, measures, verdict, comfortable, goesOver, notMet, tightest, problem }) =>
      line([
        design,
        ...values,
        ...measures,
        verdict,
        comfortable,
        goesOver.map(idOfOver).join('; '),
        notMet.join('; '),
        tightest?.limit ?? null,
        tightest?.room ?? null,
        problem,
      ]),
    closing: () => '',
  };
}

/** 'getting-up/shortest: forward' */
const idOfOver = ({ load, sitter, way }: SweepRowObject['goesOver'][number]): string =>
  `${sitter === null ? load : `${load}/${sitter}`}: ${way}`;

/** One object, its rows a line each. */
function json(head: SweepHeadObject): SweepPrinter {
  const opened = JSON.stringify(head, null, 2).replace(/\n\}$/, ',\n  "rows": [');
  return {
    opening: opened,
    row: (row) => `${row.design === 1 ? '\n' : ',\n'}    ${JSON.stringify(row)}`,
    closing: (summary, whole) => {
      const said = JSON.stringify({ whole, summary }, null, 2).slice(2);
      return `\n  ],\n${said}\n`;
    },
  };
}

export function sharePrinter(head: ShareHeadObject, { from, to }: Stretch): SweepPrinter {
  const end: ShareEndObject = { end: head.share, rows: to - from };
  return {
    opening: `${JSON.stringify(head)}\n`,
    row: lineOf,
    closing: (_, whole) => (whole ? `${JSON.stringify(end)}\n` : ''),
  };
}
