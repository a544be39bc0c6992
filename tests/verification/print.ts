/** The checks as a page. */
import { allowedOf, expectedOf, gotOf, holds, sourcesOf, type OutsideCheck } from './outside-check.js';

const head = `# Held against the outside

Numbers of this project beside numbers that were not made here. READ: seen where the source says. DERIVED: a closed form of
published mechanics, or worked out of read figures. CALCULATED: by another program of general purpose. CITED: as the literature
is cited or a unit defined, not read here. MEMORY: shown, never asserted. Written by \`npm run verify\`.
`;

/** By room, in the order given. */
export function printVerification(rooms: Readonly<Record<string, readonly OutsideCheck[]>>): string {
  const all = Object.values(rooms).flat();
  const asserted = all.filter(({ mark }) => mark !== 'MEMORY');
  const counted = `${asserted.length} checks of ${sourcesOf(asserted).size} sources.\n`;
  const tables = Object.entries(rooms).map(([title, checks]) => `## ${title}\n\n${tableOf(checks)}`);
  return [head, counted, ...tables].join('\n');
}

function tableOf(checks: readonly OutsideCheck[]): string {
  const heads = ['what', 'source', 'known', 'expected', 'got', 'may differ by', 'why', 'does, of that', ''];
  const rows = checks.map((check) => {
    const { what, source, mark, unit, within, relative, why } = check;
    const got = gotOf(check);
    const allowed = relative ? `${say(within)} of it` : `${say(within)} ${unit}`.trim();
    const verdict = mark === 'MEMORY' ? 'shown' : holds(check, got) ? 'holds' : 'DOES NOT HOLD';
    const of = (value: number): string => `${digitsFor(check, value)} ${unit}`.trim();
    const [may, does] = mark === 'MEMORY' ? ['', ''] : [allowed, usedUp(check, got)];
    return [what, source, mark, of(expectedOf(check)), of(got), may, why, does, verdict];
  });
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return `${[line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n')}\n`;
}

const say = (value: number): string => String(Number(value.toPrecision(3)));

/** In coarse steps: rounding of another machine must not show. */
function usedUp(check: OutsideCheck, got: number): string {
  const off = Math.abs(got - expectedOf(check));
  if (off === 0) return 'nothing';
  const steps = [0.1, 0.25, 0.5, 1].filter((step) => off <= step * allowedOf(check));
  return steps.length > 0 ? `under ${steps[0]!}` : 'more';
}

/** As many decimals as the tolerance has and one more, of engines none more: rounding of another machine must not show. */
function digitsFor(check: OutsideCheck, value: number): string {
  const fine = allowedOf(check);
  const more = check.mark === 'CALCULATED' ? 0 : 1;
  const decimals = fine > 0 ? Math.min(9, Math.max(0, more - Math.floor(Math.log10(fine)))) : 6;
  return String(Number(value.toFixed(decimals)));
}
