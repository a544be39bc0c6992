/**
 * Two round rockers in space, rolled without slip: the lowest points of both circles stand still, so the body turns
 * about the line through them. Rotation matrices, small turns, second order; no formula for tilt or heading is used.
 * x forward, y up, z to the right; the left circle lies in the plane z = -w/2 of the body, the right in z = w/2.
 */
type Vector = readonly [number, number, number];
type Matrix = readonly [Vector, Vector, Vector];

export interface Disc {
  /** Height of its centre in the body, on the y axis. */
  readonly centre: number;
  readonly radius: number;
}

export interface Attitude {
  /** Turn of the line through both lowest points, from the left one to the right, counter-clockwise from above. */
  readonly lineTurn: number;
  /** Turn of the body's axis across. */
  readonly bodyTurn: number;
  /** How far the axis across points down to the right. */
  readonly tilt: number;
}

const across: Vector = [0, 0, 1];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const apply = (m: Matrix, v: Vector): Vector => [dot(m[0], v), dot(m[1], v), dot(m[2], v)];
const column = (m: Matrix, i: 0 | 1 | 2): Vector => [m[0][i], m[1][i], m[2][i]];
const product = (a: Matrix, b: Matrix): Matrix => {
  const columns = ([0, 1, 2] as const).map((i) => apply(a, column(b, i))) as [Vector, Vector, Vector];
  return [0, 1, 2].map((row) => columns.map((each) => each[row])) as unknown as Matrix;
};

/** Rodrigues' formula. */
function turnAbout([x, y, z]: Vector, angle: number): Matrix {
  const [c, s, t] = [Math.cos(angle), Math.sin(angle), 1 - Math.cos(angle)];
  return [
    [t * x * x + c, t * x * y - s * z, t * x * z + s * y],
    [t * x * y + s * z, t * y * y + c, t * y * z - s * x],
    [t * x * z - s * y, t * y * z + s * x, t * z * z + c],
  ];
}

/** From the lowest point of the left circle to that of the right, in floor axes but for one shift. */
function lineOfContacts(attitude: Matrix, discs: readonly [Disc, Disc], w: number): Vector {
  // Down in the plane of the circles, seen from the body.
  const [x, y] = [-attitude[1][0], -attitude[1][1]];
  const size = Math.hypot(x, y);
  const lowest = ({ centre, radius }: Disc, z: number): Vector =>
    apply(attitude, [(radius * x) / size, centre + (radius * y) / size, z]);
  const [left, right] = [lowest(discs[0], -w / 2), lowest(discs[1], w / 2)];
  return [right[0] - left[0], right[1] - left[1], right[2] - left[2]];
}

const unit = (v: Vector): Vector => {
  const size = Math.sqrt(dot(v, v));
  return [v[0] / size, v[1] / size, v[2] / size];
};

const headingOf = (v: Vector): number => Math.atan2(v[0], v[2]);

/** Leans back by `angle` about the line of contacts, from standing on both without lean. */
export function leanBack(
  discs: readonly [Disc, Disc],
  w: number,
  angle: number,
  steps: number,
): Attitude & { readonly gap: number } {
  const [left, right] = discs;
  // Equally low: (y₁ - y₂) cos τ + w sin τ = 0.
  const start = Math.atan((left.radius - left.centre - (right.radius - right.centre)) / w);
  let attitude = turnAbout([1, 0, 0], start);
  const before = headingOf(lineOfContacts(attitude, discs, w));
  const step = angle / steps;
  for (let i = 0; i < steps; i++) {
    const half = product(turnAbout(unit(lineOfContacts(attitude, discs, w)), step / 2), attitude);
    attitude = product(turnAbout(unit(lineOfContacts(half, discs, w)), step), attitude);
  }
  const line = lineOfContacts(attitude, discs, w);
  const axis = apply(attitude, across);
  return {
    lineTurn: headingOf(line) - before,
    bodyTurn: headingOf(axis),
    tilt: Math.asin(-axis[1]),
    gap: line[1],
  };
}
