/** Things that use one another, each after those it uses. */

export interface Ordered {
  readonly order: readonly string[];
  /** What leads back to itself, each circle from the member met first; not part of `order`. */
  readonly circles: readonly (readonly string[])[];
}

/** A walk down the uses of each name, the names on the way kept in a list: a long chain needs no deep stack. */
export function orderByUse(names: readonly string[], usesOf: (name: string) => readonly string[]): Ordered {
  const order: string[] = [];
  const circles: string[][] = [];
  const uses = new Map(names.map((name) => [name, usesOf(name)]));
  const state = new Map<string, 'on the way' | 'done'>();
  const way: string[] = [];
  const finish = (done: readonly string[]) => {
    for (const name of done) state.set(name, 'done');
  };
  const step = (name: string) => {
    state.set(name, 'on the way');
    const next = uses.get(name)!.find((used) => uses.has(used) && state.get(used) !== 'done');
    if (next === undefined) {
      order.push(name);
      finish(way.splice(-1));
    } else if (state.get(next) === 'on the way') {
      const circle = way.splice(way.indexOf(next));
      circles.push(circle);
      finish(circle);
    } else way.push(next);
  };
  for (const root of names) {
    if (state.get(root) === 'done') continue;
    way.push(root);
    while (way.length > 0) step(way.at(-1)!);
  }
  return { order, circles };
}
