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

/** What some curves have in common: a drawing has few, however many curves. */
type Names = Pick<DrawnCurve, 'layers' | 'labels' | 'ids'>;

export function namedGroups({ curves }: Drawn): NamedGroups {
  const known = new Map<string, Names>();
  const namesAt = curves.map(({ layers, labels, ids }) => {
    const text = JSON.stringify([layers, labels, ids]);
    const names = known.get(text) ?? { layers, labels, ids };
    known.set(text, names);
    return names;
  });
  const called = calledBy([...known.values()]);
  const wanted = new Map(
    [...called.values()].flatMap((name) => (name === null ? [] : [[keyOf(name), name]])),
  );
  if (wanted.size === 0) return { groups: [{ by: null, name: '', curves, shares: [] }], nameless: [] };
  const claims = new Map(
    [...called.keys()].map((names) => [names, claimsOf(names).filter((key) => wanted.has(key))]),
  );
  const members = new Map<string, DrawnCurve[]>([...wanted.keys()].map((key) => [key, []]));
  curves.forEach((curve, i) => {
    for (const key of claims.get(namesAt[i]!)!) members.get(key)!.push(curve);
  });
  const shares = sharesOf([...claims.values()]);
  const groups = [...wanted].map(([key, { by, name }]) => ({
    ...{ by, name, curves: members.get(key)! },
    shares: [...(shares.get(key) ?? [])].map((other) => wanted.get(other)!.name),
  }));
  return { groups, nameless: curves.filter((_, i) => called.get(namesAt[i]!) === null) };
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
const claimsOf = ({ layers, ids }: Names): string[] => [
  ...new Set([
    ...layers.map((name) => keyOf({ by: 'layer', name })),
    ...ids.map((name) => keyOf({ by: 'id', name })),
  ]),
];

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

/** For the names of a curve the layer that it is taken for, else its own id; null: it has neither. */
function calledBy(all: readonly Names[]): Map<Names, Name | null> {
  const chains = withoutWrapper(chainsOf(all));
  const shared = all.map(({ ids }) => ids[0]).every((id, _, [first]) => id === first);
  const around = new Set(all.map(({ ids }) => ids.at(-1)));
  const called = all.map((names, i): [Names, Name | null] => {
    const [layer] = chains[i]!;
    if (layer !== undefined) return [names, { by: 'layer', name: layer }];
    const [id = ''] = names.ids;
    // The id of the whole file, which each of its curves answers to, tells none from another.
    const ofAll = shared || (around.size === 1 && around.has(id));
    return [names, id === '' || ofAll ? null : { by: 'id', name: id }];
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
