/** Work that is not done again while it is asked of the very same things: what a sweep repeats ten thousand times. */

/** Of the same things, one by one, as the last time: what was made of them then. */
export type Kept<Made> = (of: readonly unknown[], make: () => Made) => Made;

export function keptWhileSame<Made>(): Kept<Made> {
  let last: { readonly of: readonly unknown[]; readonly made: Made } | undefined;
  return (of, make) => {
    if (!last || !areSame(last.of, of)) last = { of, made: make() };
    return last.made;
  };
}

/** Counted out: a sweep asks some forty times a design. */
function areSame(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** The same for each place of a list. */
export function keptByPlace<Made>(): (place: number, of: readonly unknown[], make: () => Made) => Made {
  const places: Kept<Made>[] = [];
  return (place, of, make) => (places[place] ??= keptWhileSame<Made>())(of, make);
}

/** What is asked for is worked out once, when it is asked for. */
export function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | null = null;
  return () => (done ??= { value: work() }).value;
}
