/** The schema that editors use. */
import { expect, it } from 'vitest';
import { designJsonSchema } from '../../src/design/json-schema.js';
import { loadIds, measureKeys, measures } from '../../src/names.js';

interface Schema {
  readonly $ref?: string;
  readonly type?: unknown;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: unknown;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
}

const schema = designJsonSchema() as Schema & {
  readonly $schema: string;
  readonly $defs: Record<string, Schema>;
};
const deref = (of: Schema | undefined): Schema =>
  of?.$ref === undefined ? of! : deref(schema.$defs[of.$ref.replace('#/$defs/', '')]);
const inside = (of: Schema, ...keys: readonly string[]): Schema =>
  keys.reduce((at, key) => deref(deref(at).properties?.[key]), of);

it('is of the draft that editors know and knows every key, no other', () => {
  expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  expect(schema.additionalProperties).toBe(false);
  expect(schema.required).toEqual(['trueroll', 'parts']);
  expect(Object.keys(schema.properties!)).toEqual([
    ...[
      'trueroll',
      'name',
      'kind',
      'units',
      'dimensions',
      'alterations',
      'keep',
      'floor',
      'room',
      'spacing',
      'sitters',
      'child',
    ],
    ...['parts', 'extras', 'seat', 'back', 'arms', 'loads', 'limits', 'errors'],
  ]);
});

it('says what a value looks like', () => {
  expect(inside(schema, 'spacing')).toMatchObject({
    type: ['number', 'string'],
    description: expect.stringContaining('1-3/4 in') as string,
  });
});

it('knows every load and every measure', () => {
  expect(Object.keys(inside(schema, 'loads').properties!)).toEqual(loadIds);
  const limits = Object.keys(inside(schema, 'limits').properties!);
  expect(new Set(limits)).toEqual(new Set([...measureKeys.map((key) => measures[key].limitKey), ...loadIds]));
  expect(inside(schema, 'limits', 'empty', 'restCount').description).toContain('a .. b');
  expect(Object.keys(inside(schema, 'limits', 'empty').properties!)).not.toContain('footReach');
});

it('does not hold a maker to one way of writing', () => {
  const part = deref(inside(schema, 'parts').items);
  expect(part.required).toEqual(['name', 'outline']);
  expect(Object.keys(part.properties!)).toContain('weight');
  expect(inside(part, 'outline').anyOf).toHaveLength(2);
});
