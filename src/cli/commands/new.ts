/** `trueroll new` */
import { basename, dirname, relative, sep } from 'node:path';
import { issueOfWhole, type Checked, type Issue } from '../../design/issue.js';
import type { Drawn, DrawingFlaw } from '../../drawing/read/drawn.js';
import { readDrawing } from '../../drawing/read/read-drawing.js';
import type { Flaw } from '../../geometry/flaw.js';
import type { ChairKind } from '../../names.js';
import type { LengthUnit } from '../../quantity/units.js';
import { fromDrawing } from '../../starter/from-drawing.js';
import { summaryOfDrawing } from '../../starter/from-drawing-summary.js';
import { printFromDrawing } from '../../starter/from-drawing-text.js';
import { refuse, unwritable } from '../answer.js';
import { refused } from '../checked.js';
import { exitCodes, isFileTrouble, type World } from '../world.js';

export interface NewSettings {
  readonly from: string;
  readonly units?: LengthUnit;
  readonly mirror?: boolean;
  readonly kind?: ChairKind;
  readonly name?: string;
  readonly out?: string;
  readonly overwrite?: boolean;
  readonly quiet?: boolean;
}

export async function begin(world: World, settings: NewSettings): Promise<number> {
  const { from, units = null, mirror = false, kind = null, name } = settings;
  const drawing = await drawingAt(world, from);
  if (!drawing.ok) return refuse(world, drawing.issues);
  const found = fromDrawing({ drawn: drawing.value, units, mirror });
  if (!found.ok)
    return refuse(
      world,
      found.flaws.map((flaw) => issueOfFlaw(from, flaw)),
    );
  const text = printFromDrawing(found.value, {
    ...{ name: name || nameOf(from), kind, sitters: null, file: besideDesign(from, settings.out) },
  });
  const written = await writeDesign(world, text, settings, [from]);
  if (!written.ok) return refuse(world, written.issues);
  if (!settings.quiet) world.stderr.write(summaryOfDrawing(found.value, from, blanksIn(text)));
  return exitCodes.met;
}

async function drawingAt({ files }: World, path: string): Promise<Checked<Drawn>> {
  const expected = 'a drawing file that can be read';
  if (path === '-')
    return refused(issueOfWhole('--from', 'a drawing by the name of its file', 'standard input'));
  try {
    const read = readDrawing(await files.read(path));
    if (read.ok) return { ok: true, value: read.drawn };
    return { ok: false, issues: read.flaws.map((flaw) => issueOfReading(path, flaw)) };
  } catch (error) {
    if (!isFileTrouble(error)) throw error;
    return refused(issueOfWhole(path || '--from', expected, error.message));
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

/** To `--out`, over no file that is there unless that is asked for; else said. @param read never written over */
async function writeDesign(
  { files, stdout }: World,
  text: string,
  { out, overwrite = false }: NewSettings,
  read: readonly string[],
): Promise<Checked<null>> {
  if (out === undefined) {
    stdout.write(text);
    return { ok: true, value: null };
  }
  try {
    if (!overwrite && (await files.isFile(out))) return refused(thereAlready(out));
    await files.write(out, text, read);
    return { ok: true, value: null };
  } catch (error) {
    return refused(unwritable(out, error));
  }
}

const thereAlready = (out: string): Issue =>
  issueOfWhole(out, 'a name that no file has yet', 'a file', 'with `--overwrite` it is written over');

const blanksIn = (text: string): number => text.match(/^ *[a-z]+: # wanted: /gmu)?.length ?? 0;
