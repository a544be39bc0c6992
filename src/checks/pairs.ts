/** Two lists set side by side by name. */
export type Pair<T> =
  | { readonly old: T; readonly new: T }
  | { readonly old: T; readonly new: null }
  | { readonly old: null; readonly new: T };

/**
 * The new list in its order, each with the old one of the same name, then what is gone. Of several of one name the
 * first belongs to the first, the second to the second.
 */
export function pairsOf<T>(old: readonly T[], now: readonly T[], nameOf: (one: T) => string): Pair<T>[] {
  const left = new Map<string, T[]>();
  for (const one of old) left.set(nameOf(one), [...(left.get(nameOf(one)) ?? []), one]);
  const kept = now.map((one): Pair<T> => {
    const partner = left.get(nameOf(one))?.shift();
    return partner === undefined ? { old: null, new: one } : { old: partner, new: one };
  });
  const gone = new Set([...left.values()].flat());
  return [...kept, ...old.filter((one) => gone.has(one)).map((one): Pair<T> => ({ old: one, new: null }))];
}
