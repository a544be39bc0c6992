/** The checks as a page. */
import { gotOf, holds, type OutsideCheck } from './outside-check.js';

const head = `# Held against the outside

Numbers of this project beside numbers that were not made here. READ: seen where the source says. DERIVED: a closed form of
published mechanics, or worked out of read figures. CALCULATED: by another program of general purpose. CITED: as the literature
is cited or a unit defined, not read here. MEMORY: shown, never asserted. Written by \`npm run verify\`.
`;

/** By room, in the order given. */
export function printVerification(rooms: Readonly<Record<string, readonly OutsideCheck[]>>): string {
  const all = Object.values(rooms).flat();
  const asserted = all.filter(({ mark }) => mark !== 'MEMORY');
  const sources = new Set(asserted.map(({ source }) => source.split(/[,:(]/)[0]));
  const counted = `${asserted.length} checks of ${sources.size} sources.\n`;
  const tables = Object.entries(rooms).map(([title, checks]) => `## ${title}\n\n${tableOf(checks)}`);
  return [head, counted, ...tables].join('\n');
}

function tableOf(checks: readonly OutsideCheck[]): string {
  const heads = ['what', 'source', 'known', 'expected', 'got', 'may differ by', 'why', ''];
  const rows = checks.map((check) => {
    const { what, source, mark, unit, expected, within, relative, why } = check;
    const got = gotOf(check);
    const allowed = relative ? `${say(within)} of it` : `${say(within)} ${unit}`.trim();
    const verdict = mark === 'MEMORY' ? 'shown' : holds(check, got) ? 'holds' : 'DOES NOT HOLD';
    const of = (value: number): string => `${digitsFor(check, value)} ${unit}`.trim();
    return [what, source, mark, of(expected), of(got), mark === 'MEMORY' ? '' : allowed, why, verdict];
  });
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return `${[line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n')}\n`;
}

const say = (value: number): string => String(Number(value.toPrecision(3)));

/** As many decimals as the tolerance has and one more, of engines none more: rounding of another machine must not show. */
function digitsFor({ within, relative, expected, mark }: OutsideCheck, value: number): string {
  const fine = within * (relative ? Math.abs(expected) : 1);
  const decimals =
    fine > 0 ? Math.min(9, Math.max(0, (mark === 'CALCULATED' ? 0 : 1) - Math.floor(Math.log10(fine)))) : 6;
  return String(Number(value.toFixed(decimals)));
}
