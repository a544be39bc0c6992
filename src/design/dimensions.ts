/** The named values of a design: each is read once, after those it is made of. */
import type { Dimension } from '../quantity/dimension.js';
import { compileExpression, namesIn, type Expression, type NameScope } from '../quantity/expression.js';
import { isWord, shown } from '../quantity/source-text.js';
import { isReservedName } from '../quantity/units.js';
import { orderByUse } from './order-by-use.js';
import { isBlock } from './plain-data.js';
import type { Finding, Words } from './places.js';

/** A value as it stands in the file. */
export type Source = string | number;

export interface NamedValue {
  readonly name: string;
  readonly source: Source;
  readonly dimension: Dimension;
  readonly expression: Expression;
  /** SI, as the design states it. */
  readonly value: number;
}

export interface NamedValues {
  /** Each after those it is made of. */
  readonly inOrder: readonly NamedValue[];
  readonly values: ReadonlyMap<string, number>;
  readonly scope: NameScope;
  /** Whether a text uses a name that could not be read itself: then nothing can be said of the text. */
  readonly isUnsure: (source: Source) => boolean;
  readonly findings: readonly Finding[];
}

export function readDimensions(data: unknown): NamedValues {
  const given = isBlock(data) ? data : {};
  const names = Object.keys(given);
  const strange = names.filter((name) => !isWord(name));
  const usedIn = (source: unknown) => namesUsed(source, strange);
  const { order, circles } = orderByUse(names, (name) => usedIn(given[name]));
  const findings = [...wrongNames(names), ...circles.map(aroundInACircle)];
  const broken = new Set([...findings.map(({ path }) => String(path[1])), ...circles.flat()]);
  const isUnsure = (source: Source) => broken.size > 0 && usedIn(source).some((name) => broken.has(name));

  const inOrder: NamedValue[] = [];
  const values = new Map<string, number>();
  const dimensions = new Map<string, Dimension>();
  const dimensionOf = (name: string) => dimensions.get(name);
  /** Nobody misspelt the name that is being given. */
  const scopeBut = (own: string): NameScope => ({
    dimensionOf,
    get known() {
      return names.filter((name) => name !== own);
    },
  });
  for (const name of order) {
    const source = given[name];
    // What is no scalar the schema tells of.
    const unsure = broken.has(name) || !isScalar(source) || isUnsure(source);
    const named = unsure ? null : readNamed(name, source, scopeBut(name), values);
    if (named && 'expression' in named) {
      inOrder.push(named);
      values.set(name, named.value);
      dimensions.set(name, named.dimension);
    } else {
      broken.add(name);
      if (named) findings.push(named);
    }
  }
  return { inOrder, values, scope: { dimensionOf, known: names }, isUnsure, findings };
}

const isScalar = (value: unknown): value is Source => typeof value === 'string' || typeof value === 'number';

/** What a text uses: words, and those of the strange names that stand in it. */
function namesUsed(source: unknown, strange: readonly string[]): readonly string[] {
  if (typeof source !== 'string') return [];
  return [...namesIn(source), ...strange.filter((name) => source.includes(name))];
}

function readNamed(
  name: string,
  source: Source,
  scope: NameScope,
  values: ReadonlyMap<string, number>,
): NamedValue | Finding {
  const path = ['dimensions', name];
  const reading = compileExpression(source, scope);
  if (!reading.ok) return { path, ...reading.mistake };
  const expression = reading.value;
  const value = expression.valueIn(values);
  if (!Number.isFinite(value)) return { path, ...notFinite(source) };
  return { name, source, dimension: expression.dimension, expression, value };
}

export function notFinite(source: Source): Words {
  return { expected: 'a finite number', found: `${shown(String(source))}, which has no finite value` };
}

function wrongNames(names: readonly string[]): Finding[] {
  return names.flatMap((name) => {
    const path = ['dimensions', name];
    const found = shown(name);
    if (!isWord(name)) {
      return { path, onKey: true, expected: 'a name of letters and digits, such as `noseLength`', found };
    }
    if (!isReservedName(name)) return [];
    const expected = 'a name that is no unit and no function';
    return { path, onKey: true, expected, found, hint: `call it another way, such as \`${name}Length\`` };
  });
}

function aroundInACircle(circle: readonly string[]): Finding {
  const [first] = circle;
  return {
    path: ['dimensions', first!],
    expected: 'dimensions that do not lead back to themselves',
    found: `the circle ${[...circle, first].join(' → ')}`,
  };
}
