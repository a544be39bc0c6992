/** What was assumed, with its basis: what the file does not say and what tables say. */
import type { CheckResult } from '../check-design.js';
import { defaultFloor, floorBasis } from '../design/floors.js';
import { alterationNames, alterations } from '../names.js';
import { dimensionOf } from '../quantity/dimension.js';
import { standardSwing } from '../loads/load.js';
import type { Person } from '../loads/people.js';
import { shoe } from '../measures/seat-fit.js';
import { formatFeetAndInches, formatKilograms, formatLength, formatMillimetres } from '../quantity/print.js';
import { isImperial, type LengthUnit } from '../quantity/units.js';
import { hipSource, lengthSource } from '../sitter/body-lengths.js';
import type { ChildMass } from '../sitter/child-mass.js';
import { childInArmsSource } from '../sitter/riding.js';
import { segmentSource } from '../sitter/segment-table.js';
import type { Source } from '../sitter/source.js';
import { woodNamed } from '../wood/woods.js';
import { sayAlteration } from './alteration-words.js';
import { loadWords } from './measure-words.js';
import { movingAssumptions } from './moving-assumptions.js';
import type { Assumption } from './schema.js';
import { unitOf } from './variable-words.js';

export const assumptionsOf = (result: CheckResult): Assumption[] => [
  ...firstAssumptions(result),
  ...bodiesOf(result),
  ...movingAssumptions(result),
];

/** Those of the chair and the floor, which the first screen has room for. */
export const firstAssumptions = (result: CheckResult): Assumption[] => [
  ...woodsUsed(result),
  ...floorOf(result),
  ...swingsOf(result),
  ...alterationsIn(result),
];

/** What is not as drawn. */
function alterationsIn({ design: { alterations: changes, units } }: CheckResult): Assumption[] {
  return alterationNames
    .filter((name) => changes[name] !== 0)
    .map((name) => {
      const { unit, factor } = unitOf({ dimension: dimensionOf[alterations[name]] }, units);
      const value = sayAlteration(name, changes[name] / factor, unit);
      return { what: 'altered from the drawing', value, basis: 'the design’s own' };
    });
}

function woodsUsed({ design }: CheckResult): Assumption[] {
  const names = new Set(
    design.parts.flatMap(({ wood, mass }) => (wood !== null && mass === null ? [wood] : [])),
  );
  return [...names].flatMap((name) => {
    const wood = woodNamed(name);
    return wood
      ? [{ what: `density of ${wood.name}`, value: `${Math.round(wood.density)} kg/m³`, basis: wood.source }]
      : [];
  });
}

function floorOf({ design: { floor } }: CheckResult): Assumption[] {
  const basis =
    floor.name === null ? `the design’s own; what it does not say as ${defaultFloor}` : floorBasis;
  const called = floor.name ?? 'the floor';
  return [
    { what: `friction of ${called}`, value: String(floor.friction), basis },
    { what: `rolling arm of ${called}`, value: formatMillimetres(floor.rolling, 1), basis },
  ];
}

/** Loads are named where they do not all swing as far. */
function swingsOf({ loads }: CheckResult): Assumption[] {
  const loadsOf = new Map<number, Set<string>>();
  for (const { record } of loads) {
    const { id, swing, script } = record.load;
    if (script !== null) continue;
    loadsOf.set(swing, (loadsOf.get(swing) ?? new Set()).add(loadWords[id]));
  }
  return [...loadsOf].map(([swing, ids]) => ({
    what: `a rock, each way${loadsOf.size === 1 ? '' : `, ${[...ids].join(' and ')}`}`,
    value: `${Number(((swing * 180) / Math.PI).toPrecision(6))}°`,
    basis: swing === standardSwing ? 'assumption of this project: a gentle rock' : 'the design’s own',
  }));
}

/** Sizes that the design does not state, and how bodies are made of segments. */
function bodiesOf(result: CheckResult): Assumption[] {
  const {
    design,
    people: { persons, child },
  } = result;
  if (persons.length === 0) return [];
  const sizes = persons.flatMap((person) => sizesOf(person, design.units));
  const pose = [
    cited(
      'segments of the body',
      'masses (brought to a sum of 1), centres, radii of gyration',
      segmentSource,
    ),
    cited('lengths of the body', 'fractions of stature', lengthSource),
    cited('hip over seat and ahead of back', 'fractions of stature', hipSource),
  ];
  return [...standardOf(result), ...sizes, ...pose, shoes(design.units), ...(child ? held(child) : [])];
}

const shoes = (units: LengthUnit): Assumption => ({
  what: 'shoes, under the knee hollow',
  value: formatLength(shoe, units),
  basis: 'common practice, no source',
});

const held = ({ mass, basis }: ChildMass): Assumption[] => [
  ...(basis.from === 'age'
    ? [{ what: 'mass of the child', value: formatKilograms(mass), basis: basis.says }]
    : []),
  cited('a child in arms', `${formatKilograms(mass)}, before the chest`, childInArmsSource),
];

/** Who is meant by `sitters: standard`. */
function standardOf({ design, people: { persons } }: CheckResult): Assumption[] {
  if (design.sitters !== 'standard') return [];
  return persons.map(({ name, size: { body, stature, mass } }) => ({
    what: name,
    value: `${body}, ${sayStature(stature, design.units)}, ${formatKilograms(mass)}`,
    basis: `assumption of this project: a standard sitter for the kind ${design.kind}`,
  }));
}

const sayStature = (stature: number, units: LengthUnit): string =>
  isImperial(units) ? formatFeetAndInches(stature) : formatLength(stature, units);

function sizesOf({ name, size }: Person, units: LengthUnit): Assumption[] {
  const say = {
    stature: sayStature(size.stature, units),
    mass: formatKilograms(size.mass),
    kneeHollow: formatLength(size.kneeHollow, units),
    buttockToKneeHollow: formatLength(size.buttockToKneeHollow, units),
    elbowAboveSeat: formatLength(size.elbowAboveSeat, units),
  };
  const called = {
    stature: 'stature',
    mass: 'mass',
    kneeHollow: 'knee hollow over the floor, bare',
    buttockToKneeHollow: 'buttock to knee hollow',
    elbowAboveSeat: 'elbow over the seat',
  };
  return (Object.keys(say) as (keyof typeof say)[])
    .filter((key) => size.basis[key].from === 'ratio' || size.basis[key].from === 'percentile')
    .map((key) => ({ what: `${name}: ${called[key]}`, value: say[key], basis: size.basis[key].says }));
}

const cited = (what: string, value: string, { publication, mark }: Source): Assumption => ({
  what,
  value,
  basis: `${publication} (${mark})`,
});
