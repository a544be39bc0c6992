/** A comment for a pull request: may I cut, what is not met and what to change; the rest folded. */
import type { CheckResult } from '../check-design.js';
import type { JudgedLimit } from '../checks/verdict.js';
import { secondLine } from './second-opinion-words.js';
import { assumptionsOf } from './assumptions.js';
import { cautionsOf } from './cautions.js';
import { feelingRows, leftRows, type Row } from './first-rows.js';
import { bullets, folded, inMarkdown, markdownTable, nameInMarkdown } from './github-flavoured.js';
import { limitWords } from './limit-words.js';
import { loadWords } from './measure-words.js';
import { sayRemedy } from './remedy-words.js';
import { sayVerdict, verdictWords } from './verdict-words.js';

export const printMarkdown = (results: readonly CheckResult[]): string =>
  `${results.map(comment).join('\n\n---\n\n')}\n`;

function comment(result: CheckResult): string {
  const { design, file } = result;
  const parts = [
    `### ${inMarkdown(sayVerdict(result))}`,
    `**${nameInMarkdown(design.name)}**, ${nameInMarkdown(file)}`,
    notMet(result),
    folded('All limits', limitTable(result)),
    mainMeasures(result),
    folded('What was assumed', assumed(result)),
    folded('What to mind', bullets(cautionsOf(result))),
  ];
  return parts.filter((part) => part !== null).join('\n\n');
}

function notMet({ limits, design, remedies }: CheckResult): string | null {
  const missed = limits.filter(({ verdict }) => verdict !== 'pass');
  if (missed.length === 0) return null;
  const change = missed.some(({ id }) => (remedies.get(id) ?? []).length > 0);
  const rows = missed.map((limit) => {
    const { who, what, value, wanted, off, why } = limitWords(limit, design.units);
    const cells = [`${who}: ${what}`, value ?? verdictWords[limit.verdict], wanted, off ?? why ?? ''];
    const remedy = (remedies.get(limit.id) ?? [])
      .map((each) => sayRemedy(each, limit, design.units))
      .join('; or ');
    return [...cells, ...(change ? [remedy] : [])].map((cell) => inMarkdown(cell));
  });
  const heads = ['not met', 'is', 'wanted', 'by how much, or why', ...(change ? ['what to change'] : [])];
  return markdownTable(heads, rows, 'words');
}

function limitTable({ limits, design }: CheckResult): string {
  if (limits.length === 0) return 'None: the design has dropped them all.';
  const row = (limit: JudgedLimit): string[] => {
    const { who, what, value, wanted } = limitWords(limit, design.units);
    return [`${who}: ${what}`, verdictWords[limit.verdict], value ?? '-', wanted, limit.basis].map((cell) =>
      inMarkdown(cell),
    );
  };
  return markdownTable(['limit', '', 'is', 'wanted', 'what it rests on'], limits.map(row), 'words');
}

/** A column a sitter, the empty chair first; nothing where no load comes to rest. */
function mainMeasures({ loads, design }: CheckResult): string | null {
  const shown = loads.filter(
    ({ record }) => ['empty', 'seated'].includes(record.load.id) && record.noRest === null,
  );
  if (shown.length === 0) return null;
  const cellsOf = ({ label, say }: Row): string[][] => {
    const cells = shown.map((load) => say(load, design.units, loads));
    if (cells.every((cell) => cell === null)) return [];
    return [[label.trim(), ...cells.map((cell) => cell ?? '')].map((cell) => inMarkdown(cell))];
  };
  const heads = shown.map(({ record }) => nameInMarkdown(record.load.sitter ?? loadWords[record.load.id]));
  const table = (title: string, rows: readonly Row[]): string =>
    markdownTable([title, ...heads], rows.flatMap(cellsOf), 'numbers');
  return folded(
    'How it sits and rocks, and what is left',
    [table('how it sits and rocks', feelingRows), table('what is left', leftRows)].join('\n\n'),
  );
}

function assumed(result: CheckResult): string {
  const rows = assumptionsOf(result).map(({ what, value, basis }) =>
    [what, value, basis].map((cell) => inMarkdown(cell)),
  );
  return `${markdownTable(['assumed', 'as', 'what it rests on'], rows, 'words')}\n\n${inMarkdown(secondLine(result))}`;
}
