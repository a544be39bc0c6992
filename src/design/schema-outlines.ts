/** Schemas of the ways an outline may be written. */
import * as z from 'zod';
import { outlineWords } from '../names.js';
import { shown } from '../quantity/source-text.js';
import { lengthUnits } from '../quantity/units.js';
import { isBlock } from './plain-data.js';
import type { ValueSchemas } from './schema-values.js';
import { block, custom, listOf, rule, text, words, type Keys } from './schema-words.js';

export function outlineSchema(schemas: ValueSchemas) {
  const { size, point } = schemas;
  const outline = rule(
    block(`an outline: ${outlineWords.join(', ')}`, {
      rocker: rockerSchema(schemas).optional(),
      bar: block('a bar: from, to, width', { from: point, to: point, width: size }).optional(),
      circle: block('a circle: centre, radius', { centre: point, radius: size }).optional(),
      rectangle: block('a rectangle: from, to', { from: point, to: point }).optional(),
      path: pathSchema(schemas).optional(),
      drawing: drawingSchema(schemas).optional(),
      hole: z
        .boolean({ error: 'true or false' })
        .optional()
        .meta({ description: 'cut out of one of the solids' }),
    }),
    oneOutline,
  );
  return z.union([outline, listOf(outline, 'a list of outlines')], {
    error: 'an outline, or a list of outlines',
  });
}

function oneOutline({ has, strange, say }: Keys): void {
  const [first, second] = outlineWords.filter(has);
  if (first === undefined && !strange) say({ expected: `one of ${outlineWords.join(', ')}`, found: 'none' });
  if (second !== undefined) {
    say(
      { onKey: true, expected: 'one outline; several are a list', found: `\`${first}\` and \`${second}\`` },
      second,
    );
  }
}

/** Path data has bare numbers only: a bare 1, read as a length, is their unit. */
function pathSchema({ compile }: ValueSchemas) {
  return text('SVG path data in quotes').transform((data, context) => {
    const unit = compile.value(1, 'length', 'positive');
    if (unit.ok) return { data, unit: unit.value };
    context.issues.push({ ...custom({ ...unit.mistake, found: shown(data) }), input: data });
    return z.NEVER;
  });
}

function rockerSchema({ size, length }: ValueSchemas) {
  const arc = block('an arc: radius, until', {
    radius: size,
    until: length.optional().meta({ description: 'level distance behind `at` where the next arc begins' }),
  });
  const arcs = listOf(arc, 'a list of arcs').superRefine(untilTheNext, {
    when: ({ value }) => Array.isArray(value),
  });
  return block('a rocker: radius, depth, nose, tail', {
    radius: z.union([size, arcs], { error: 'a radius, or a list of arcs from nose to tail' }),
    depth: size,
    nose: length,
    tail: length,
    at: length.optional(),
    along: words(['level', 'curve']).optional(),
  });
}

/** Each arc but the last says where the next begins; the last runs to the tail. */
function untilTheNext(arcs: readonly unknown[], context: z.RefinementCtx): void {
  const unknown = context.issues.filter(({ code }) => code === 'unrecognized_keys');
  // `until` may be what was misspelt there.
  const strange = new Set(unknown.map(({ path }) => path?.[0]));
  arcs.forEach((arc, index) => {
    const last = index === arcs.length - 1;
    if (!isBlock(arc) || Object.hasOwn(arc, 'until') !== last) return;
    if (!last && strange.has(index)) return;
    context.addIssue(
      last
        ? custom(
            { onKey: true, expected: 'no `until` on the last arc: it runs to the tail', found: '`until`' },
            [index, 'until'],
          )
        : custom({ expected: '`until`: where the next arc begins', found: 'none' }, [index]),
    );
  });
}

function drawingSchema({ value, size, point }: ValueSchemas) {
  return block('a drawing: file, layer or id', {
    file: text('the name of a DXF or SVG file'),
    layer: text('a layer').optional(),
    id: text('an id').optional(),
    units: words(lengthUnits).optional(),
    origin: point.optional(),
    turn: value('angle').optional(),
    mirror: z.boolean({ error: 'true or false' }).optional(),
    smooth: z.union([size, z.boolean()], { error: 'a length, true or false' }).optional(),
    join: size.optional(),
  });
}
