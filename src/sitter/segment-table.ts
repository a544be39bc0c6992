/**
 * Segments of the body: share of its mass, where the centre lies, radius of gyration.
 * Straight rigid segments of young grown people; a slumped back or a heavy belly is not in it.
 */
import type { Source } from './source.js';

export type Body = 'female' | 'male';

/** The ends of the segments in the side view, left and right as one. */
export type Joint =
  | ('hip' | 'shoulder' | 'neck' | 'vertex' | 'elbow' | 'wrist' | 'fingertip')
  | ('knee' | 'ankle' | 'heel' | 'toe');

/** `trunk`: what turns with the trunk about the hip. */
export type SegmentGroup = 'trunk' | 'thigh' | 'shank' | 'foot';

export interface SegmentRow {
  readonly name: string;
  /** How many of it a body has. */
  readonly number: 1 | 2;
  readonly group: SegmentGroup;
  /** The first-named end, from which the centre is counted, and the other. */
  readonly from: Joint;
  readonly to: Joint;
  /** Mass of one, as a fraction of the body's. */
  readonly mass: number;
  /** Distance of the centre from the first-named end, as a fraction of the length between the ends. */
  readonly centre: number;
  /** Radius of gyration about the transverse axis through the centre, the axis across the chair: the same fraction. */
  readonly gyration: number;
}

export const segmentSource: Source = {
  publication:
    'de Leva 1996, Adjustments to Zatsiorsky-Seluyanov’s segment inertia parameters, J. Biomechanics 29, ' +
    '1223-1230, table 4: trunk MIDS-MIDH, head VERT-CERV, hand WJC-MET3',
  mark: 'read second-hand',
};

type Numbers = Pick<SegmentRow, 'mass' | 'centre' | 'gyration'>;

const row = (mass: number, centre: number, gyration: number): Numbers => ({ mass, centre, gyration });

const printed = {
  female: {
    trunk: row(0.4257, 0.3782, 0.361),
    head: row(0.0668, 0.4841, 0.295),
    upperArm: row(0.0255, 0.5754, 0.26),
    forearm: row(0.0138, 0.4559, 0.257),
    hand: row(0.0056, 0.7474, 0.454),
    thigh: row(0.1478, 0.3612, 0.364),
    shank: row(0.0481, 0.4352, 0.263),
    foot: row(0.0129, 0.4014, 0.279),
  },
  male: {
    trunk: row(0.4346, 0.431, 0.358),
    head: row(0.0694, 0.5002, 0.315),
    upperArm: row(0.0271, 0.5772, 0.269),
    forearm: row(0.0162, 0.4574, 0.265),
    hand: row(0.0061, 0.79, 0.513),
    thigh: row(0.1416, 0.4095, 0.329),
    shank: row(0.0433, 0.4395, 0.246),
    foot: row(0.0137, 0.4415, 0.245),
  },
} as const satisfies Record<Body, Record<string, Numbers>>;

/** The table of one body, as printed. */
export function segmentRows(body: Body): readonly SegmentRow[] {
  const of = printed[body];
  return [
    { name: 'trunk', number: 1, group: 'trunk', from: 'shoulder', to: 'hip', ...of.trunk },
    { name: 'head', number: 1, group: 'trunk', from: 'vertex', to: 'neck', ...of.head },
    { name: 'upper arms', number: 2, group: 'trunk', from: 'shoulder', to: 'elbow', ...of.upperArm },
    { name: 'forearms', number: 2, group: 'trunk', from: 'elbow', to: 'wrist', ...of.forearm },
    { name: 'hands', number: 2, group: 'trunk', from: 'wrist', to: 'fingertip', ...of.hand },
    { name: 'thighs', number: 2, group: 'thigh', from: 'hip', to: 'knee', ...of.thigh },
    { name: 'shanks', number: 2, group: 'shank', from: 'knee', to: 'ankle', ...of.shank },
    { name: 'feet', number: 2, group: 'foot', from: 'heel', to: 'toe', ...of.foot },
  ];
}
