/** The text of a design file → a design: checked, its values compiled, its places kept. */
import { isNode, type Pair } from 'yaml';
import type { Drawn } from '../drawing/read/drawn.js';
import { nearestWord } from '../quantity/nearest.js';
import { shown } from '../quantity/source-text.js';
import { lengthUnits, type LengthUnit } from '../quantity/units.js';
import { compilerOf, type Units } from './compile-values.js';
import { noDrawings, readDrawings, type DrawingFiles } from './drawing-files.js';
import { readDimensions, type NamedValue } from './dimensions.js';
import { describeFound } from './found.js';
import { inFileOrder, type Checked, type Issue } from './issue.js';
import { issueAtOffset, issueOf, restOfLine, type Places } from './places.js';
import { isBlock, keyOf, plainData } from './plain-data.js';
import { schemaFindings, type SchemaFinding } from './schema-findings.js';
import { designSchema, type WrittenDesign } from './schema.js';
import { readYaml } from './yaml-text.js';

export interface Design {
  readonly file: string;
  readonly name: string;
  /** The named values, each after those it is made of. */
  readonly dimensions: readonly NamedValue[];
  readonly written: WrittenDesign;
  /** What its drawing files hold, by the names it gives them. */
  readonly drawings: ReadonlyMap<string, Drawn>;
  readonly places: Places;
}

/**
 * Syntax errors stop; then all mistakes of the schema, of names and of kinds come together, in the order of the file; then
 * those of its drawings.
 * @param files the drawing files that it names
 */
export function readDesign(text: string, file: string, files: DrawingFiles = noDrawings): Checked<Design> {
  const yaml = readYaml(text);
  if (!yaml.ok) return refused([issueAtOffset({ file, lines: yaml.lines }, yaml.fault.at, yaml.fault)]);
  const places = { file, ...yaml.value };
  const { data, again } = plainData(places.root);
  if (!isBlock(data)) return refused([noDesign(places, data)]);
  const named = readDimensions(data['dimensions']);
  const parsed = designSchema(compilerOf(named, unitsOf(data)), named.scope.known).safeParse(data, {
    jitless: true,
  });
  const findings = [...named.findings, ...(parsed.success ? [] : schemaFindings(parsed.error.issues, data))];
  const issues = [...again.map((pair) => givenAgain(places, pair)), ...issuesOf(findings, places)];
  if (!parsed.success || issues.length > 0) return refused(issues.sort(inFileOrder));
  const written = parsed.data;
  const { drawings, findings: ofDrawings } = readDrawings(written.parts, files);
  if (ofDrawings.length > 0) return refused(issuesOf(ofDrawings, places).sort(inFileOrder));
  const name = written.name ?? baseName(file);
  return { ok: true, value: { file, name, dimensions: named.inOrder, written, drawings, places } };
}

const refused = (issues: readonly Issue[]) => ({ ok: false, issues }) as const;

function noDesign(places: Places, data: unknown): Issue {
  const expected = 'a design: keys with values, `trueroll: 1` among them';
  const offset = data === null ? null : (places.root?.range[0] ?? null);
  return issueAtOffset(places, offset, { expected, found: describeFound(data) });
}

/** What a bare length means. A misspelt `units` is a mistake of its own, not one at every length. */
function unitsOf(data: Readonly<Record<string, unknown>>): Units {
  if (lengthUnits.includes(data['units'] as LengthUnit)) return data['units'] as LengthUnit;
  const stated = Object.keys(data).some((key) => nearestWord(key, ['units']) !== undefined);
  return stated ? 'unreadable' : 'unstated';
}

function givenAgain(places: Places, pair: Pair): Issue {
  const offset = isNode(pair.key) ? (pair.key.range?.[0] ?? 0) : 0;
  return issueAtOffset(places, offset, {
    expected: 'each key once',
    found: `${shown(keyOf(pair))} a second time`,
  });
}

function issuesOf(findings: readonly SchemaFinding[], places: Places): Issue[] {
  const told = findings.map((finding) => ({ finding, issue: issueOf(places, commentHint(finding, places)) }));
  const [firstWithoutUnits] = told
    .filter(({ finding }) => finding.lacksUnits)
    .sort((a, b) => inFileOrder(a.issue, b.issue));
  return told.filter((one) => !one.finding.lacksUnits || one === firstWithoutUnits).map(({ issue }) => issue);
}

/** `name: #2` is no name but a comment; `wood: # wanted: …` is a blank that says itself what belongs there. */
function commentHint(finding: SchemaFinding, places: Places): SchemaFinding {
  if (finding.found !== 'nothing') return finding;
  const [, remark] = /^\s*:\s*#\s*(.*)/.exec(restOfLine(places, finding.path)) ?? [];
  if (remark === undefined) return finding;
  const [, wanted] = /^wanted\b:?\s*(.*)/.exec(remark) ?? [];
  if (wanted === undefined) return { ...finding, hint: 'a # begins a comment: put the value in quotes' };
  return { ...finding, found: 'a blank', ...(wanted !== '' && { hint: wanted }) };
}

/** The file's own name, without the way to it and without its ending. */
const baseName = (file: string) => file.replace(/^.*[/\\]/, '').replace(/\.(ya?ml|json)$/i, '');
