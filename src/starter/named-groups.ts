/** The curves of a drawing by the names that a design can ask for them by: its layers, in SVG its named groups, or ids. */
import type { Drawn, DrawnCurve } from '../drawing/read/drawn.js';

export interface NamedGroup {
  /** null: all that is drawn. */
  readonly by: 'layer' | 'id' | null;
  readonly name: string;
  /** All that answers to the name. */
  readonly curves: readonly DrawnCurve[];
  /** Other groups of the list that have some of these curves too. */
  readonly shares: readonly string[];
}

export interface NamedGroups {
  readonly groups: readonly NamedGroup[];
  /** Curves that no name leads to; where the drawing has no names at all they are a group of their own. */
  readonly nameless: readonly DrawnCurve[];
}

interface Name {
  readonly by: 'layer' | 'id';
  readonly name: string;
}

export function namedGroups({ curves }: Drawn): NamedGroups {
  const names = namesOf(curves);
  const nameless = curves.filter((_, i) => names[i] === null);
  const wanted = new Map(names.flatMap((name) => (name === null ? [] : [[keyOf(name), name]])));
  if (wanted.size === 0) return { groups: [{ by: null, name: '', curves, shares: [] }], nameless: [] };
  const members = membersOf(curves);
  const claimed = curves.map((curve) => claimsOn(curve).filter((key) => wanted.has(key)));
  const shares = sharesOf(claimed);
  const groups = [...wanted].map(([key, { by, name }]) => ({
    ...{ by, name, curves: members.get(key)! },
    shares: [...(shares.get(key) ?? [])].map((other) => wanted.get(other)!.name),
  }));
  return { groups, nameless };
}

/** Of a drawing that lies in one group as a whole: what it has within, the group itself being none. */
export function groupsWithin({ curves, ...sheet }: Drawn): NamedGroups {
  const counts = new Map<string, number>();
  for (const name of curves.flatMap(({ layers }) => [...new Set(layers)]))
    counts.set(name, (counts.get(name) ?? 0) + 1);
  const within = curves.map((curve) => ({
    ...curve,
    layers: curve.layers.filter((name) => counts.get(name)! < curves.length),
  }));
  return namedGroups({ ...sheet, curves: within });
}

const keyOf = ({ by, name }: Name): string => `${by} ${name}`;

/** What a curve answers to. */
const claimsOn = ({ layers, ids }: DrawnCurve): string[] => [
  ...new Set([
    ...layers.map((name) => keyOf({ by: 'layer', name })),
    ...ids.map((name) => keyOf({ by: 'id', name })),
  ]),
];

function membersOf(curves: readonly DrawnCurve[]): Map<string, DrawnCurve[]> {
  const members = new Map<string, DrawnCurve[]>();
  for (const curve of curves)
    for (const key of claimsOn(curve)) {
      const those = members.get(key) ?? [];
      those.push(curve);
      members.set(key, those);
    }
  return members;
}

function sharesOf(claimed: readonly (readonly string[])[]): Map<string, Set<string>> {
  const shares = new Map<string, Set<string>>();
  for (const keys of claimed)
    for (const key of keys.length > 1 ? keys : []) {
      const others = shares.get(key) ?? new Set();
      for (const other of keys) if (other !== key) others.add(other);
      shares.set(key, others);
    }
  return shares;
}

/** For each curve the layer it is taken for, else its own id; null: it has neither. */
function namesOf(curves: readonly DrawnCurve[]): (Name | null)[] {
  const chains = withoutWrapper(chainsOf(curves));
  const shared = curves.map(({ ids }) => ids[0]).every((id, _, [first]) => id === first);
  const around = new Set(curves.map(({ ids }) => ids.at(-1)));
  return curves.map(({ ids: [id = ''] }, i) => {
    const layer = chains[i]![0];
    if (layer !== undefined) return { by: 'layer', name: layer };
    // The id of the whole file, which each of its curves answers to, tells none from another.
    const ofAll = shared || (around.size === 1 && around.has(id));
    return id === '' || ofAll ? null : { by: 'id', name: id };
  });
}

/**
 * From outermost to innermost. Of an SVG group both its id and its label are layers: the label is what a person wrote. What
 * is around labelled groups is no name of what lies beside them in it.
 */
function chainsOf(curves: readonly DrawnCurve[]): string[][] {
  const named = curves.map(({ layers }) => layers.filter((name) => name !== ''));
  const labels = named.map((chain, i) => chain.filter((name) => !curves[i]!.ids.includes(name)));
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
