/**
 * Reads an ASCII DXF drawing (R10 to 2018): its curves in the drawing’s plane, blocks put in, what is not understood
 * counted. Frozen and switched-off layers, paper space and hidden entities are left out.
 */
import { metresOfUnit } from './dxf-units.js';
import { curveOf, liesOf } from './dxf-curves.js';
import { groupsOf, type Group } from './dxf-groups.js';
import { placedCurves, type Block, type Item } from './dxf-blocks.js';
import { insertsOf } from './dxf-inserts.js';
import { flagsOf, numberOf, placeOf, tagOf, textOf, valueOf } from './dxf-values.js';
import type { Drawn, DrawingRead } from './drawn.js';
import { tally, type Tally } from './tally.js';
import { untilUnreadable } from './unreadable.js';

const binary = 'AutoCAD Binary DXF';

export function readDxf(text: string): DrawingRead {
  if (text.startsWith(binary)) return { ok: false, flaws: [refusedBinary] };
  return untilUnreadable(() => ({ ok: true, drawn: drawnIn(text) }));
}

const refusedBinary = {
  line: 1,
  expected: 'a DXF file in ASCII',
  found: 'a binary one',
  hint: 'write it as ASCII DXF (R12, R2000 …)',
};

/** What is read on the way through the file. */
interface Reading {
  unit: number | null;
  readonly off: Set<string>;
  readonly blocks: Map<string, Block>;
  readonly entities: Item[];
  readonly leftOut: Tally;
}

function drawnIn(text: string): Drawn {
  const reading: Reading = {
    ...{ unit: null, off: new Set(), blocks: new Map(), entities: [], leftOut: tally() },
  };
  let section = '';
  let block: { name: string; block: Block } | null = null;
  for (const entity of entitiesOf(text)) {
    const { group } = entity;
    if (group.type === 'SECTION') {
      section = textOf(group, 2) ?? '';
      if (section === 'HEADER') reading.unit = unitIn(group);
    } else if (section === 'TABLES') noteLayer(group, reading);
    else if (section === 'BLOCKS' && group.type === 'BLOCK') {
      block = { name: textOf(group, 2) ?? '', block: { base: placeOf(group, 10), items: [] } };
      reading.blocks.set(block.name, block.block);
    } else if (section === 'BLOCKS' && group.type === 'ENDBLK') block = null;
    else if (section === 'BLOCKS' && block !== null) block.block.items.push(...itemsOf(entity, reading));
    else if (section === 'ENTITIES' && group.type !== 'ENDSEC')
      reading.entities.push(...itemsOf(entity, reading));
  }
  const { unit, off, blocks, entities, leftOut } = reading;
  const curves = placedCurves(entities, blocks, off, leftOut);
  return { curves, unit, yDown: false, leftOut: leftOut.list() };
}

/** An entity with the vertices that follow it. */
interface Entity {
  readonly group: Group;
  readonly vertices: readonly Group[];
}

function* entitiesOf(text: string): Generator<Entity> {
  let open: { group: Group; vertices: Group[] } | null = null;
  for (const group of groupsOf(text)) {
    if (open !== null && (group.type === 'VERTEX' || group.type === 'ATTRIB')) {
      open.vertices.push(group);
      continue;
    }
    if (open !== null) yield open;
    open = null;
    if (group.type === 'SEQEND') continue;
    if (group.type === 'POLYLINE' || group.type === 'INSERT') open = { group, vertices: [] };
    else yield { group, vertices: [] };
  }
  if (open !== null) yield open;
}

/** $INSUNITS of the header. */
function unitIn({ tags }: Group): number | null {
  const at = tags.findIndex(({ code, value }) => code === 9 && value === '$INSUNITS');
  const tag = at < 0 ? undefined : tags[at + 1];
  if (tag === undefined) return null;
  const unit = numberOf(tag);
  return metresOfUnit(unit);
}

function noteLayer(group: Group, { off }: Reading): void {
  const name = textOf(group, 2);
  if (group.type !== 'LAYER' || name === undefined) return;
  const frozen = (flagsOf(group, 70) & 1) === 1;
  if (frozen || valueOf(group, 62, 7) < 0) off.add(name);
}

const solid = 8 | 16 | 64;

/** What is drawn of an entity: a curve, places of a block, or nothing and a count. */
function itemsOf({ group, vertices }: Entity, { leftOut }: Reading): Item[] {
  const { type, line } = group;
  const skip = (why: string): Item[] => {
    leftOut.add(type, why, line);
    return [];
  };
  if (flagsOf(group, 67) === 1) return skip('in paper space');
  if (flagsOf(group, 60) === 1) return skip('hidden');
  const layer = textOf(group, 8) ?? '0';
  if (type === 'INSERT') return liesOf(group) === 'aslant' ? skip(aslant) : insertsOf(group, layer);
  const curve = Object.hasOwn(curveOf, type) ? curveOf[type] : undefined;
  if (curve === undefined) return skip('not a line that is cut');
  if (type === 'POLYLINE' && (flagsOf(group, 70) & solid) !== 0) return skip('in three dimensions');
  if (liesOf(group) === 'aslant' || isSteep(group)) return skip(aslant);
  const { pieces, closed } = curve(group, vertices);
  return pieces.length > 0 ? [{ kind: 'curve', pieces, closed, layer, line }] : skip('of no length');
}

const aslant = 'not in the plane of the drawing';

/** A line that rises out of the plane. */
function isSteep(group: Group): boolean {
  if (group.type !== 'LINE' || tagOf(group, 31) === undefined) return false;
  return valueOf(group, 30, 0) !== valueOf(group, 31);
}
