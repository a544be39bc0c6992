/** Debian’s python3-ezdxf asked what is drawn in a DXF file. */
import { spawnSync } from 'node:child_process';
import { ask, isAsked } from './debian-tool.js';

const script = 'tests/oracles/ezdxf_curves.py';

/** The one that Debian’s packages belong to may not be the first that is found. */
const pythons = ['python3', '/usr/bin/python3'];
const python = pythons.find((each) => spawnSync(each, [script, '--version']).status === 0);

export const isEzdxfAsked = python !== undefined || isAsked('python3 with ezdxf', 'python3-ezdxf');

/** A curve as ezdxf has it, in the drawing’s plane: sums of polygons taken to their limit. */
export interface JudgedCurve {
  readonly type: string;
  readonly length: number;
  readonly closed: boolean;
  /** Signed, positive counter-clockwise. */
  readonly area: number;
  /** ∫ x dA, ∫ y dA */
  readonly first: readonly [number, number];
  /** ∫ (x² + y²) dA */
  readonly polar: number;
  readonly ends: readonly [readonly [number, number], readonly [number, number]];
}

export const judgedCurves = (dxf: string): JudgedCurve[] =>
  JSON.parse(ask(python ?? 'python3', [script, 'curves'], dxf)) as JudgedCurve[];

/** With every entity that is read, and blocks in blocks. */
export const writtenByEzdxf = (seed: number): string =>
  ask(python ?? 'python3', [script, 'write', String(seed)], '');
