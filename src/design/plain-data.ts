/** YAML's tree → plain data. */
import { isMap, isScalar, isSeq } from 'yaml';
import type { Pair, ParsedNode, Scalar, YAMLMap } from 'yaml';

/** From the whole file down to a value: keys, and places in lists from 0. */
export type Path = readonly (string | number)[];

/** Keys whose value is a name: taken as typed, so that `007` and `0` stay what they are. */
const nameKeys = new Set(['name', 'layer', 'id', 'file']);

export const keyOf = (pair: Pair): string => String(isScalar(pair.key) ? pair.key.value : pair.key);

export interface PlainData {
  /** Maps are objects without prototype: `__proto__` is a key like any other. A key given twice keeps its first value. */
  readonly data: unknown;
  /** Keys given again in the same map; keys without any value are at fault already. */
  readonly again: readonly Pair[];
}

export function plainData(root: ParsedNode | null): PlainData {
  const again: Pair[] = [];
  const plain = (node: unknown, key: string): unknown => {
    if (isMap(node)) return plainMap(node);
    if (isSeq(node)) return node.items.map((item) => plain(item, key));
    return isScalar(node) ? plainScalar(node, key) : null;
  };
  const plainMap = (map: YAMLMap) => {
    const data = Object.create(null) as Record<string, unknown>;
    for (const pair of map.items) {
      const key = keyOf(pair);
      const value = plain(pair.value, key);
      if (!(key in data)) data[key] = value;
      else if (value !== null || data[key] !== null) again.push(pair);
    }
    return data;
  };
  return { data: plain(root, ''), again };
}

function plainScalar(scalar: Scalar, key: string): unknown {
  const asTyped = nameKeys.has(key) && typeof scalar.value !== 'string' && scalar.source;
  return asTyped ? scalar.source : scalar.value;
}

/** Whether a value is a block of keys. */
export const isBlock = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The value at a path of plain data; undefined: there is none. */
export function valueAt(data: unknown, path: Path): unknown {
  let value = data;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}
