/** Bodies of people: published tables, and living people beside the model of them. */
import { combineMasses } from '../../src/mass.js';
import { childMass, month } from '../../src/sitter/child-mass.js';
import { bodyLengths } from '../../src/sitter/body-lengths.js';
import { massAtPercentile, statureAtPercentile } from '../../src/sitter/percentiles.js';
import { riding } from '../../src/sitter/riding.js';
import { segmentRows } from '../../src/sitter/segment-table.js';
import { sitterSize } from '../../src/sitter/sitter-size.js';
import { degrees, poseIn, present, sitterOf, uprightChair } from '../sitter/people-seated.js';
import { foldedMen, fromMemory, meanManFromMemory, seatedScan } from '../sitter/published/living-people.js';
import type { OutsideCheck } from './outside-check.js';

const deLeva = 'P. de Leva 1996, J. Biomechanics 29, 1223-1230, table 4 (read second-hand)';
const ansur = 'ANSUR II 2012, public data of 1986 women and 4082 men';
const who = 'WHO child growth standards, weight for age, LMS tables';
const drillis = 'Drillis and Contini 1966, NYU TR 1166.03 (read second-hand)';
const appendix = 'table A.2.1 of a body-dynamics textbook’s appendix: men on a compound pendulum';
const santschi = 'Santschi, DuBois, Omoto 1963, AMRL-TDR-63-36: means of 66 men';

const asPrinted = (half: number) => ({ within: half, why: 'printed to so many decimals' });

const massSum = (body: 'female' | 'male'): number =>
  segmentRows(body).reduce((total, { number, mass }) => total + number * mass, 0);
const rowNamed = (body: 'female' | 'male', name: string) =>
  segmentRows(body).find((row) => row.name === name)!;

/** A man against a plumb back, thighs raised by an angle, shanks hanging, forearms level. */
function manSitting(stature: number, mass: number, thighsRaisedDeg: number) {
  const seatSlope = degrees(thighsRaisedDeg);
  const pose = poseIn({ body: 'male', stature, mass }, { ...uprightChair, seatSlope });
  const { centre, inertia } = combineMasses(riding(pose, { feet: 'up', child: null }));
  return { ahead: centre.x, belowCrown: pose.joints.vertex.y - centre.y, inertia };
}

const centreClose = {
  within: 0.03,
  why: '30 mm: people of one size differ by as much, and they slump where the model’s trunk is straight',
};

export const people: readonly OutsideCheck[] = [
  {
    what: 'masses of a man’s segments together',
    source: deLeva,
    mark: 'READ',
    unit: 'of body mass',
    expected: 1,
    got: () => massSum('male'),
    ...asPrinted(1.001e-4),
  },
  {
    what: 'masses of a woman’s segments together',
    source: deLeva,
    mark: 'READ',
    unit: 'of body mass',
    expected: 0.9999,
    got: () => massSum('female'),
    ...asPrinted(1e-9),
  },
  {
    what: 'centre of a woman’s thigh from the hip',
    source: deLeva,
    mark: 'READ',
    unit: 'of its length',
    expected: 0.3612,
    got: () => rowNamed('female', 'thighs').centre,
    ...asPrinted(5e-5),
  },
  {
    what: 'transverse radius of gyration of a man’s trunk',
    source: deLeva,
    mark: 'READ',
    unit: 'of its length',
    expected: 0.358,
    got: () => rowNamed('male', 'trunk').gyration,
    ...asPrinted(5e-4),
  },
  {
    what: 'thigh of somebody 1.70 m tall',
    source: `${drillis}: 0.245 of stature`,
    mark: 'READ',
    unit: 'm',
    expected: 0.245 * 1.7,
    got: () => bodyLengths(1.7).thigh,
    ...asPrinted(1e-12),
  },
  {
    what: 'trunk, hip to shoulder, of the same',
    source: `${drillis}: 0.818 - 0.530 of stature`,
    mark: 'READ',
    unit: 'm',
    expected: 0.288 * 1.7,
    got: () => bodyLengths(1.7).trunk,
    ...asPrinted(1e-12),
  },
  ...(
    [
      ['stature of a woman at 5 %', 'm', 1.525, () => statureAtPercentile('female', 5)],
      ['stature of a man at 95 %', 'm', 1.87, () => statureAtPercentile('male', 95)],
      ['mass of a woman at 50 %', 'kg', 66.8, () => massAtPercentile('female', 50)],
      ['mass of a man at 99 %', 'kg', 124.2, () => massAtPercentile('male', 99)],
    ] as const
  ).map(([what, unit, expected, got]): OutsideCheck => ({
    what,
    source: ansur,
    mark: 'READ',
    unit,
    expected,
    got: () => present(got()),
    ...asPrinted(1e-9),
  })),
  {
    what: 'knee hollow of a woman of mean stature',
    source: `${ansur}: means`,
    mark: 'READ',
    unit: 'm',
    expected: 0.3882,
    got: () => present(sitterSize(sitterOf({ body: 'female', stature: 1.62847, mass: 60 }))).kneeHollow,
    within: 1e-4,
    why: 'the ratio to stature is kept to four decimals',
  },
  ...(
    [
      ['girl', 9, 8.2259],
      ['girl', 12, 8.9462],
      ['girl', 3, 5.8393],
    ] as const
  ).map(([body, months, expected]): OutsideCheck => ({
    what: `median mass of a ${body} of ${months} months`,
    source: who,
    mark: 'READ',
    unit: 'kg',
    expected,
    got: () => present(childMass({ body, age: months * month, mass: null })).mass,
    ...asPrinted(0.00501),
  })),
  {
    what: 'centre of gravity of a seated man of 77 kg, ahead of the back of the buttocks',
    source: 'UMTRI, laser scans of 315 seated men (abstract)',
    mark: 'READ',
    unit: 'm',
    expected: seatedScan.ahead,
    got: () => manSitting(1.755, seatedScan.mass, 0).ahead,
    ...centreClose,
  },
  ...foldedMen.map((man): OutsideCheck => ({
    what: `the same of a man of ${man.mass} kg, thighs raised`,
    source: appendix,
    mark: 'READ',
    unit: 'm',
    expected: man.ahead,
    got: () => manSitting(man.stature, man.mass, 50).ahead,
    ...centreClose,
  })),
  {
    what: 'pitch inertia of those three, in the mean',
    source: appendix,
    mark: 'READ',
    unit: 'kg m²',
    expected: (4.214 + 3.435 + 4.734) / 3,
    got: () =>
      foldedMen.reduce((sum, { stature, mass }) => sum + manSitting(stature, mass, 50).inertia, 0) / 3,
    within: 0.2,
    relative: true,
    why: '20 %: the angle of the thighs is inferred, 5° of it make 6 %',
  },
  ...fromMemory.flatMap(({ posture, thighsRaisedDeg, ahead, inertia }): OutsideCheck[] => {
    const model = () => manSitting(meanManFromMemory.stature, meanManFromMemory.mass, thighsRaisedDeg);
    const shown = { source: santschi, mark: 'MEMORY', within: 0, why: 'shown, not asserted' } as const;
    return [
      {
        what: `centre of gravity ahead of the back, ${posture}`,
        unit: 'm',
        expected: ahead,
        got: () => model().ahead,
        ...shown,
      },
      {
        what: `pitch inertia, ${posture}`,
        unit: 'kg m²',
        expected: inertia,
        got: () => model().inertia,
        ...shown,
      },
    ];
  }),
];
