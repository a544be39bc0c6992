/**
 * Whom a chair is looked at with when the design says `sitters: standard`: assumptions of this project, small to large.
 * A chair is made for the first. Children are given the proportions of grown people: a stretch.
 */
import type { ChairKind } from '../names.js';
import { month, type Child } from './child-mass.js';
import type { Body } from './segment-table.js';
import type { Sitter } from './sitter-size.js';

export interface NamedSitter extends Sitter {
  readonly name: string;
}

export interface StandardSitters {
  readonly sitters: readonly NamedSitter[];
  /** In arms; null: none. */
  readonly child: Child | null;
}

/** Exact: metres and kilograms. */
const inch = 0.0254;
const pound = 0.45359237;

const sitter = (name: string, body: Body, inches: number, pounds: number): NamedSitter => ({
  name,
  body,
  stature: inches * inch,
  mass: pounds * pound,
  percentile: null,
  measured: { kneeHollow: null, buttockToKneeHollow: null, elbowAboveSeat: null },
});

const grown: StandardSitters = {
  sitters: [
    sitter('shortest', 'female', 60, 105),
    sitter('middle', 'female', 67, 160),
    sitter('tallest', 'male', 75, 250),
  ],
  child: null,
};

const ofKind: Readonly<Record<ChairKind, StandardSitters>> = {
  adult: grown,
  porch: grown,
  nursing: {
    sitters: [sitter('shortest', 'female', 62, 120), sitter('tallest', 'female', 69, 190)],
    // A younger one moves every result the same way by less.
    child: { body: 'boy', age: 18 * month, mass: 10.9 },
  },
  child: {
    sitters: [sitter('shortest', 'female', 40, 35), sitter('tallest', 'male', 50, 60)],
    child: null,
  },
};

export const standardSitters = (kind: ChairKind): StandardSitters => ofKind[kind];
