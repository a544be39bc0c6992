/** Small DXF drawings written out. */

/** Codes and values one after another. */
export type Tags = readonly (string | number)[];

const section = (name: string, ...contents: readonly Tags[]): Tags => [
  ...[0, 'SECTION', 2, name],
  ...contents.flat(),
  ...[0, 'ENDSEC'],
];

export interface Sections {
  readonly header?: Tags;
  readonly tables?: Tags;
  readonly blocks?: readonly Tags[];
}

/** One a line. */
export const dxf = (
  entities: readonly Tags[],
  { header = [], tables = [], blocks = [] }: Sections = {},
  newline = '\r\n',
): string =>
  [
    ...section('HEADER', header),
    ...section('TABLES', tables),
    ...section('BLOCKS', ...blocks),
    ...section('ENTITIES', ...entities),
    ...[0, 'EOF', ''],
  ].join(newline);

export const line = (x: number, y: number, x1: number, y1: number, ...more: Tags): Tags => [
  ...[0, 'LINE', 8, '0', 10, x, 20, y, 11, x1, 21, y1],
  ...more,
];

/** Angles in degrees. */
export const arc = (
  x: number,
  y: number,
  radius: number,
  start: number,
  end: number,
  ...more: Tags
): Tags => [...[0, 'ARC', 8, '0', 10, x, 20, y, 40, radius, 50, start, 51, end], ...more];

export const circle = (x: number, y: number, radius: number, ...more: Tags): Tags => [
  ...[0, 'CIRCLE', 8, '0', 10, x, 20, y, 40, radius],
  ...more,
];

/** Closed. */
export const polyline = (vertices: readonly (readonly [number, number, number?])[], ...more: Tags): Tags => [
  ...[0, 'LWPOLYLINE', 8, '0', 90, vertices.length, 70, 1],
  ...more,
  ...vertices.flatMap(([x, y, bulge = 0]) => [10, x, 20, y, 42, bulge]),
];

export const insert = (block: string, x: number, y: number, ...more: Tags): Tags => [
  ...[0, 'INSERT', 8, '0', 2, block, 10, x, 20, y],
  ...more,
];

export const block = (name: string, x: number, y: number, ...entities: readonly Tags[]): Tags => [
  ...[0, 'BLOCK', 8, '0', 2, name, 10, x, 20, y],
  ...entities.flat(),
  ...[0, 'ENDBLK'],
];
