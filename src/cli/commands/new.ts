/** `trueroll new`: a starter, or `--from` a drawing */
import { basename, dirname, relative, sep } from 'node:path';
import { issueOfWhole, type Checked, type Issue } from '../../design/issue.js';
import type { Drawn, DrawingFlaw } from '../../drawing/read/drawn.js';
import { readDrawing } from '../../drawing/read/read-drawing.js';
import type { Flaw } from '../../geometry/flaw.js';
import type { ChairKind } from '../../names.js';
import type { LengthUnit } from '../../quantity/units.js';
import { fromDrawing } from '../../starter/from-drawing.js';
import { summaryOfDrawing } from '../../starter/from-drawing-summary.js';
import { blanksIn, printFromDrawing } from '../../starter/from-drawing-text.js';
import { fittedStatures, starter } from '../../starter/starter.js';
import { summaryOfStarter } from '../../starter/starter-summary.js';
import { refuse } from '../answer.js';
import { refused } from '../checked.js';
import { writeDesign, type DesignPlace } from '../new-design-file.js';
import { sitterAsked, type SitterArguments } from '../sitter-asked.js';
import { exitCodes, isFileTrouble, type World } from '../world.js';

export interface NewSettings extends SitterArguments, DesignPlace {
  readonly from?: string;
  readonly units?: LengthUnit;
  readonly mirror?: boolean;
  readonly kind?: ChairKind;
  readonly name?: string;
  readonly quiet?: boolean;
}

export const begin = (world: World, settings: NewSettings): Promise<number> =>
  settings.from === undefined ? beginWhole(world, settings) : beginFrom(world, settings.from, settings);

const usualNames: Readonly<Record<ChairKind, string>> = {
  adult: 'Rocking chair, white ash',
  nursing: 'Nursing rocker, white ash',
  child: 'Rocker for a child, white ash',
  porch: 'Porch rocker, white ash',
};

async function beginWhole(world: World, settings: NewSettings): Promise<number> {
  const { units = 'in', mirror = false, kind = 'adult', name, out } = settings;
  if (mirror) return refuse(world, [issueOfWhole('--mirror', '--from beside it', 'none')]);
  if (units !== 'in' && units !== 'mm')
    return refuse(world, [issueOfWhole('--units', 'in or mm for a design without a drawing', units)]);
  const sitter = sitterAsked(settings, units);
  if (!sitter.ok) return refuse(world, sitter.issues);
  const { least, greatest } = fittedStatures;
  const stature = sitter.value?.stature ?? least;
  if (stature < least || stature > greatest)
    return refuse(world, [
      issueOfWhole('--stature', `${least} to ${greatest} m, for whom a chair is sought`, `${stature} m`),
    ]);
  const asked = { name: name || usualNames[kind], kind, units, sitter: sitter.value };
  const made = starter(asked, out ?? 'design.yaml');
  if (!made.ok) return refuse(world, made.issues);
  const written = await writeDesign(world, made.value.text, settings, []);
  if (!written.ok) return refuse(world, written.issues);
  if (!settings.quiet) world.stderr.write(summaryOfStarter(made.value));
  return made.value.result.verdict === 'pass' ? exitCodes.met : exitCodes.notMet;
}

async function beginFrom(world: World, from: string, settings: NewSettings): Promise<number> {
  const { units = null, mirror = false, kind = null, name, out } = settings;
  const drawing = await drawingAt(world, from);
  if (!drawing.ok) return refuse(world, drawing.issues);
  const found = fromDrawing({ drawn: drawing.value, units, mirror });
  if (!found.ok)
    return refuse(
      world,
      found.flaws.map((flaw) => issueOfFlaw(from, flaw)),
    );
  const sitter = sitterAsked(settings, found.value.units);
  if (!sitter.ok) return refuse(world, sitter.issues);
  const sitters = sitter.value && `[${sitter.value.line}]`;
  const names = { name: name || nameOf(from), kind, sitters, file: besideDesign(from, out) };
  const text = printFromDrawing(found.value, names);
  const written = await writeDesign(world, text, settings, [from]);
  if (!written.ok) return refuse(world, written.issues);
  if (!settings.quiet) world.stderr.write(summaryOfDrawing(found.value, from, blanksIn(text)));
  return exitCodes.met;
}

async function drawingAt({ files }: World, path: string): Promise<Checked<Drawn>> {
  if (path === '-')
    return refused(issueOfWhole('--from', 'a drawing by the name of its file', 'standard input'));
  try {
    const read = readDrawing(await files.read(path));
    if (read.ok) return { ok: true, value: read.drawn };
    return { ok: false, issues: read.flaws.map((flaw) => issueOfReading(path, flaw)) };
  } catch (error) {
    if (!isFileTrouble(error)) throw error;
    return refused(issueOfWhole(path || '--from', 'a drawing file that can be read', error.message));
  }
}

const issueOfReading = (file: string, { line, column, expected, found, hint }: DrawingFlaw): Issue => ({
  ...{ file, line, column: column ?? null, expected, found },
  ...(hint !== undefined && { hint }),
});

const issueOfFlaw = (file: string, { expected, found, hint }: Flaw): Issue =>
  issueOfWhole(file, expected, found, hint);

/** The file’s own name without its ending. */
const nameOf = (path: string): string => basename(path).replace(/\.[^.]+$/u, '') || 'chair';

/** The drawing as a design at `out` names it: from its own folder; with standard output from where one is. */
function besideDesign(drawing: string, out: string | undefined): string {
  if (out === undefined) return drawing;
  const way = relative(dirname(out), drawing);
  return sep === '/' ? way : way.replaceAll(sep, '/');
}
