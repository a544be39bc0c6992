/**
 * The curves of a drawing by the names that a design can ask for them by: its layers, in SVG its named groups, or ids. Of
 *
 *     <g id="g1" label="Side view"> <g id="g2" label="leg"> <path id="p1"/> </g> <path id="p2"/> </g> <path id="p3"/>
 *
 * `namedGroups` makes the layer `Side view`, since the label is what a person wrote and it is the outermost, and the id
 * `p3`; what `groupsIn` finds in that layer are the layer `leg` and the id `p2`.
 */
import type { Drawn, DrawnCurve } from '../drawing/read/drawn.js';

export interface NamedGroup {
  /** null: all that is drawn. */
  readonly by: 'layer' | 'id' | null;
  readonly name: string;
  /** All of the drawing that answers to the name. */
  readonly curves: readonly DrawnCurve[];
}

export interface NamedGroups {
  readonly groups: readonly NamedGroup[];
  /** Curves that no name leads to. */
  readonly nameless: readonly DrawnCurve[];
}

/** For each name the curves of a drawing that answer to it. */
export type Index = ReadonlyMap<string, readonly DrawnCurve[]>;

export function indexOf({ curves }: Drawn): Index {
  const claims = new Map<string, readonly string[]>();
  const index = new Map<string, DrawnCurve[]>();
  for (const curve of curves) {
    const text = signature(curve);
    const keys = claims.get(text) ?? claimsOf(curve);
    claims.set(text, keys);
    for (const key of keys) {
      const those = index.get(key) ?? [];
      those.push(curve);
      index.set(key, those);
    }
  }
  return index;
}

/** A drawing without names is a group of its own. */
export function namedGroups({ curves }: Drawn, index: Index): NamedGroups {
  const found = groupsOf(curves, index);
  if (found.groups.length > 0) return found;
  return { groups: [{ by: null, name: '', curves }], nameless: [] };
}

/** What a layer holds by the names in it; none: it has no names in it that tell its curves from one another. */
export function groupsIn({ name, curves }: NamedGroup, index: Index): NamedGroups {
  if (curves.every(({ layers, ids }) => layers.length === 1 && ids.length === 0))
    return { groups: [], nameless: [] };
  const idsOfAll = curves[0]!.ids.filter((id) => curves.every(({ ids }) => ids.includes(id)));
  const within = curves.map((curve) => {
    const layers = curve.layers.slice(curve.layers.lastIndexOf(name) + 1);
    const labels = curve.labels.filter((label) => layers.includes(label));
    return { ...curve, layers, labels, ids: curve.ids.filter((id) => !idsOfAll.includes(id)) };
  });
  return groupsOf(within, index);
}

interface Name {
  readonly by: 'layer' | 'id';
  readonly name: string;
}

/** What a curve is called by; a drawing has few such, however many curves. */
type Names = Pick<DrawnCurve, 'layers' | 'labels' | 'ids'>;

const signature = ({ layers, labels, ids }: Names): string => JSON.stringify([layers, labels, ids]);

function groupsOf(curves: readonly DrawnCurve[], index: Index): NamedGroups {
  const signatures = curves.map(signature);
  const named = new Map<string, Names>(signatures.map((text, i) => [text, curves[i]!]));
  const called = calledBy(named);
  const wanted = new Map<string, Name>();
  for (const name of called.values()) if (name !== null) wanted.set(keyOf(name), name);
  const groups = [...wanted].map(([key, { by, name }]) => ({ by, name, curves: index.get(key)! }));
  return { groups, nameless: curves.filter((_, i) => called.get(signatures[i]!) === null) };
}

const keyOf = ({ by, name }: Name): string => `${by} ${name}`;

/** What a curve answers to. */
const claimsOf = ({ layers, ids }: Names): string[] => [
  ...new Set([
    ...layers.map((name) => keyOf({ by: 'layer', name })),
    ...ids.map((name) => keyOf({ by: 'id', name })),
  ]),
];

/** For each the layer that it is taken for, else its own id; null: it has neither. */
function calledBy(named: ReadonlyMap<string, Names>): Map<string, Name | null> {
  const all = [...named.values()];
  const chains = withoutWrapper(chainsOf(all));
  const shared = all.map(({ ids }) => ids[0]).every((id, _, [first]) => id === first);
  const around = new Set(all.map(({ ids }) => ids.at(-1)));
  const called = [...named].map(([text, { ids }], i): [string, Name | null] => {
    const [layer] = chains[i]!;
    if (layer !== undefined) return [text, { by: 'layer', name: layer }];
    const [id = ''] = ids;
    // The id of the whole file, which each of its curves answers to, tells none from another.
    const ofAll = shared || (around.size === 1 && around.has(id));
    return [text, id === '' || ofAll ? null : { by: 'id', name: id }];
  });
  return new Map(called);
}

/**
 * From outermost to innermost. Of an SVG group both its id and its label are layers: the label is what a person wrote. What
 * is around labelled groups is no name of what lies beside them in it.
 */
function chainsOf(all: readonly Names[]): string[][] {
  const named = all.map(({ layers }) => layers.filter((name) => name !== ''));
  const labels = all.map((names) => names.labels.filter((name) => name !== ''));
  const aroundLabels = new Set(
    named.flatMap((chain, i) => {
      const [label] = labels[i]!;
      return label === undefined ? [] : chain.slice(0, chain.indexOf(label));
    }),
  );
  return named.map((chain, i) =>
    labels[i]!.length > 0 ? labels[i]! : chain.filter((name) => !aroundLabels.has(name)),
  );
}

/** A group around all others is no part: those in it are. */
function withoutWrapper(chains: readonly string[][]): readonly string[][] {
  const [first] = chains[0] ?? [];
  const wrapped = first !== undefined && chains.every((chain) => chain[0] === first);
  if (!wrapped || chains.every((chain) => chain.length === 1)) return chains;
  return withoutWrapper(chains.map((chain) => chain.slice(1)));
}
