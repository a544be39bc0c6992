/** Floors by name. */

export interface Floor {
  /** Static friction of the runners on it. */
  readonly friction: number;
  /** Arm of the rolling resistance, metres. */
  readonly rolling: number;
}

/**
 * Assumptions of this project: published ranges are wide and none was measured for runners on floors.
 * The first is the default.
 */
export const floors = {
  'bare boards': { friction: 0.4, rolling: 0.001 },
  'waxed boards': { friction: 0.25, rolling: 0.001 },
  tile: { friction: 0.3, rolling: 0.0008 },
  'porch boards': { friction: 0.4, rolling: 0.002 },
  'rug on boards': { friction: 0.5, rolling: 0.005 },
  'deep rug': { friction: 0.6, rolling: 0.012 },
} as const satisfies Readonly<Record<string, Floor>>;
export type FloorName = keyof typeof floors;
export const floorNames = Object.keys(floors) as FloorName[];
export const defaultFloor: FloorName = 'bare boards';
export const floorBasis = 'assumption of this project';
