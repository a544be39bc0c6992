/** A body turned and moved as it is: q' = R(turn) q + shift, turn counter-clockwise in radians. */
import type { AreaMoments } from './area-moments.js';
import { throughPlaces, type Loop, type Outline, type Piece } from './piece.js';
import { minus, plus, type Point } from './point.js';

export interface RigidMotion {
  readonly turn: number;
  readonly shift: Point;
}

export const atRest: RigidMotion = { turn: 0, shift: { x: 0, y: 0 } };

export const shifted = (shift: Point): RigidMotion => ({ turn: 0, shift });

/** About a place that stays where it is. */
export const turnedAbout = (place: Point, turn: number): RigidMotion => ({
  turn,
  shift: minus(place, turned(place, turn)),
});

/** The first, then the second. */
export const followedBy = (first: RigidMotion, second: RigidMotion): RigidMotion => ({
  turn: first.turn + second.turn,
  shift: movedPoint(first.shift, second),
});

function turned({ x, y }: Point, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: x * cos - y * sin, y: x * sin + y * cos };
}

export const movedPoint = (point: Point, { turn, shift }: RigidMotion): Point =>
  plus(turned(point, turn), shift);

export function movedPiece(piece: Piece, motion: RigidMotion): Piece {
  const at = (point: Point): Point => movedPoint(point, motion);
  switch (piece.kind) {
    case 'line':
    case 'cubic':
      return throughPlaces(piece, at);
    case 'arc':
      return { ...piece, centre: at(piece.centre), start: piece.start + motion.turn };
    case 'ellipse-arc':
      return {
        ...piece,
        centre: at(piece.centre),
        axisA: turned(piece.axisA, motion.turn),
        axisB: turned(piece.axisB, motion.turn),
      };
  }
}

export const movedLoop = (loop: Loop, motion: RigidMotion): Loop =>
  loop.map((piece) => movedPiece(piece, motion));

export const movedOutline = (outline: Outline, motion: RigidMotion): Outline =>
  outline.map(({ boundary, holes }) => ({
    boundary: movedLoop(boundary, motion),
    holes: holes.map((hole) => movedLoop(hole, motion)),
  }));

/** Area and polar second moment stay. */
export const movedMoments = (moments: AreaMoments, motion: RigidMotion): AreaMoments => ({
  ...moments,
  centroid: movedPoint(moments.centroid, motion),
});
